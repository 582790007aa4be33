import type { Language } from './language.ts'

const english = {
  gets: 'What the tools get',
  band: 'at the tool, worst hose to best',
  none: 'none',
  sag: 'compressor sags by',
  most: 'highest at the tool',
  fuel: 'diesel while hammering',
  water: 'water falling out',
  helps: 'What would help, best first',
  nothing: 'nothing here brings as much as 1 psi',
  atTool: 'at the tool',
  hammering: 'hammering',
  price: 'price',
  reach: 'How far it goes at',
  longest: 'longest hose',
  tools: 'most tools',
  highest: 'highest site',
  notEvenNow: 'not even with none',
  beyond: 'more than is asked about',
}
export type AirTableWords = { readonly [Key in keyof typeof english]: string }
const spanish: AirTableWords = {
  gets: 'Lo que reciben los topos',
  band: 'en el topo, de la peor manguera a la mejor',
  none: 'ninguna',
  sag: 'el compresor cae',
  most: 'lo más alto en el topo',
  fuel: 'diésel golpeando',
  water: 'agua que cae',
  helps: 'Qué ayudaría, lo mejor primero',
  nothing: 'nada de esto sube ni 1 psi',
  atTool: 'en el topo',
  hammering: 'golpeando',
  price: 'precio',
  reach: 'Hasta dónde alcanza con',
  longest: 'manguera más larga',
  tools: 'más topos',
  highest: 'sitio más alto',
  notEvenNow: 'ni siquiera sin ninguna',
  beyond: 'más de lo que se busca',
}
export const AIR_TABLE_WORDS: Readonly<Record<Language, AirTableWords>> = { en: english, es: spanish }
