import type { EN_GROUND_PANEL } from './ground-words.ts'

export const ES_GROUND_PANEL: typeof EN_GROUND_PANEL = {
  heading: 'Qué tan seguro es el terreno',
  single: 'una sola evidencia',
  agree: 'lo dicho concuerda',
  disagree: 'lo dicho no concuerda',
  working: 'Calculando',
  tools: 'Cuál de mis topos',
  ask: 'Ordenar los topos del taller para esta perforación',
  asking: 'Preguntando al taller',
  noTools: 'El taller no tiene topos, o no se puede alcanzar.',
}
