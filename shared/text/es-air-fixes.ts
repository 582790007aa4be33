import type { EN_AIR_FIXES } from './en-air-fixes.ts'

/** Lo que ayudaría al aire de un cruce. */
export const ES_AIR_FIXES = {
  'next-hose': 'Manguera de {boreM:diameter} en lugar de {fromM:diameter}.',
  'shorter-run': 'El compresor junto al pozo: {lengthM:hoseRun} de manguera en lugar de {fromM:length}.',
  'parallel-line': 'Una segunda línea junto a la primera, {lengthM:hoseRun}, hasta el pozo.',
  'full-bore-couplings': 'Acoples con todo el interior de la manguera.',
  'other-compressor': 'El {name:text}: {freeAirM3PerS:volumeFlow} a {compressorGaugePa:gaugePressure}.',
  'other-compressor/usual':
    'Un compresor más grande: {freeAirM3PerS:volumeFlow} a {compressorGaugePa:gaugePressure}.',
  'one-tool': 'Un topo a la vez; los demás esperan.',
  'fit-regulator':
    'Baje el regulador a {compressorGaugePa:gaugePressure} en la máquina: sin carga sube demasiado.',
} as const satisfies Record<keyof typeof EN_AIR_FIXES, string>
