/** What would help the air of a crossing; read beside the pressure, the minutes and the price it brings. */
export const EN_AIR_FIXES = {
  'next-hose': 'Hose of {boreM:diameter} in place of {fromM:diameter}.',
  'shorter-run': 'Compressor up to the pit: {lengthM:hoseRun} of hose in place of {fromM:length}.',
  'parallel-line': 'A second line beside the first, {lengthM:hoseRun}, as far as the pit.',
  'full-bore-couplings': 'Couplings with the full bore of the hose.',
  'other-compressor': 'The {name:text}: {freeAirM3PerS:volumeFlow} at {compressorGaugePa:gaugePressure}.',
  'other-compressor/usual':
    'A larger compressor: {freeAirM3PerS:volumeFlow} at {compressorGaugePa:gaugePressure}.',
  'one-tool': 'One tool at a time; the others wait.',
  'fit-regulator':
    'Regulate down to {compressorGaugePa:gaugePressure} at the machine: it rides too high unloaded.',
} as const
