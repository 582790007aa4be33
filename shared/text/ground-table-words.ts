import type { Language } from './language.ts'

const english = {
  said: 'What was said of the ground',
  matters: 'What matters most',
  badDay: 'bad day now',
  known: 'were it known',
  room: 'Shorter shots',
  tools: 'Which tool, best first',
  evidence: ['evidence', 'says', 'beside the plan'],
  source: 'knowing',
  gain: 'of the way from likely to bad day',
  columns: ['tool', 'verdict', 'cover', 'at the tool', 'arrives', 'in its window', 'hammering'],
}
export type GroundTableWords = {
  readonly [Key in keyof typeof english]: (typeof english)[Key] extends string ? string : readonly string[]
}
const spanish: GroundTableWords = {
  said: 'Lo que se dijo del terreno',
  matters: 'Lo que más importa',
  badDay: 'día malo ahora',
  known: 'si se supiera',
  room: 'Tiros más cortos',
  tools: 'Qué topo, el mejor primero',
  evidence: ['evidencia', 'dice', 'frente al plan'],
  source: 'saber',
  gain: 'la distancia de lo probable al día malo',
  columns: ['topo', 'veredicto', 'recubrimiento', 'en el topo', 'llega', 'en su ventana', 'golpeando'],
}
/** Headings of the ground as text and on the page. */
export const GROUND_TABLE_WORDS: Readonly<Record<Language, GroundTableWords>> = { en: english, es: spanish }
