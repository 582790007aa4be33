import type { Language } from './language.ts'

/** Templates for `fill`: what stands in and beside the pictures of the air. */
const english = {
  supplyTitle: 'What the line leaves and what the tool takes',
  supplyDesc:
    'They meet at {gaugePa:gaugePressure} and {flowM3PerS:volumeFlow}. The table gives the same figures.',
  supply: 'left at the tool',
  demand: 'tool takes',
  meet: '{gaugePa:gaugePressure}, {flowM3PerS:volumeFlow}',
  flow: 'free air',
  pressure: 'at the tool',
  marginTitle: 'Air there is over air wanted, by altitude and warmth',
  marginDesc: 'Under 1 the compressor sags. The table gives the same figures.',
  margin: 'times what is wanted',
  altitude: 'altitude',
  hoseTitle: '{boreM:diameter} hose',
  hoseTitleOurs: '{boreM:diameter} hose: yours',
  hoseDesc: 'Pressure at the tool by length of hose, with its band. The table gives the same figures.',
  length: 'length',
  likely: 'likely',
  worst: 'worst hose',
  best: 'best hose',
}
export type AirPictureWords = { readonly [Key in keyof typeof english]: string }

const spanish: AirPictureWords = {
  supplyTitle: 'Lo que deja la línea y lo que toma el topo',
  supplyDesc: 'Se cruzan a {gaugePa:gaugePressure} y {flowM3PerS:volumeFlow}. La tabla da las mismas cifras.',
  supply: 'queda en el topo',
  demand: 'toma el topo',
  meet: '{gaugePa:gaugePressure}, {flowM3PerS:volumeFlow}',
  flow: 'aire libre',
  pressure: 'en el topo',
  marginTitle: 'Aire que hay sobre aire que se pide, según altitud y calor',
  marginDesc: 'Con menos de 1 el compresor cae. La tabla da las mismas cifras.',
  margin: 'veces lo que se pide',
  altitude: 'altitud',
  hoseTitle: 'Manguera de {boreM:diameter}',
  hoseTitleOurs: 'Manguera de {boreM:diameter}: la suya',
  hoseDesc: 'Presión en el topo según el largo de manguera, con su margen. La tabla da las mismas cifras.',
  length: 'largo',
  likely: 'probable',
  worst: 'la peor manguera',
  best: 'la mejor manguera',
}

export const AIR_PICTURE_WORDS: Readonly<Record<Language, AirPictureWords>> = { en: english, es: spanish }
