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
  past: 'Perforaciones pasadas',
  pastNone: 'ninguna anotada',
  pastSome: (count) => (count === 1 ? '1 anotada' : `${count} anotadas`),
  pastHint:
    'Perforaciones hechas en este tipo de suelo con este topo. Entre dos marcas de la manguera: cuánto avanzó y cuánto golpeó. Las que se atoraron también cuentan, o solo se aprende de la suerte.',
  bore: 'Perforación pasada',
  addBore: 'Agregar una perforación pasada',
  family: 'Suelo',
  length: 'Manguera de marca a marca',
  time: 'Golpeo entre ellas',
  pressure: 'Presión en el topo',
  pressureHint: 'si no se dice: la presión de trabajo del topo',
  stalled: 'Se atoró',
  excluded: 'Dejarla fuera',
  note: 'Dónde, cuándo, quién',
  noTools: 'El taller no tiene topos, o no se puede alcanzar.',
}
