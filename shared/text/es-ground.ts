import type { EN_GROUND } from './en-ground.ts'

/** El terreno según lo dicho, lo que más importa y qué topo. */
export const ES_GROUND: Readonly<Record<keyof typeof EN_GROUND, string>> = {
  'evidence/undrained-strength': 'resistencia al corte medida',
  'evidence/vane': 'veleta de corte',
  'evidence/relative-density': 'densidad relativa',
  'evidence/friction-angle': 'ángulo de fricción',
  'evidence/pocket-penetrometer': 'penetrómetro de bolsillo',
  'evidence/dcp': 'cono de mano',
  'evidence/spt': 'número de golpes',
  'evidence/consistency': 'consistencia, en palabras',
  'evidence/digging': 'cómo se excavó el pozo',
  'evidence/word': 'la palabra que se usó',
  'evidence/group': 'solo el grupo de suelo',
  'agreement/used': 'se planea con esto',
  'agreement/agrees': 'concuerda',
  'agreement/harder': 'dice más duro',
  'agreement/softer': 'dice más blando',
  ground: 'Tramo {number:whole}: {soil:text}',
  disputed:
    'Lo que se dijo de él no concuerda. El plan toma lo más directo; vuelva a mirar antes de cotizar.',
  'as-blows': '{n:whole} golpes',
  'correction/overburden':
    'Un conteo sin corregir de {fromN:whole} a esta profundidad sería {toN:whole} (N1,60, factor {factor:twoDecimals}). El plan toma el conteo como se da: corríjalo usted si está sin corregir.',
  'correction/fine-sand':
    'Bajo agua, un conteo de {fromN:whole} en arena fina equivale a {toN:whole}. El plan toma el conteo como se da.',
  'matter/model':
    'cómo se porta este suelo con este tipo de topo: mida el tiempo de los primeros {6 a 10 ft|2 a 3 m}, o anote perforaciones pasadas',
  'matter/strength': 'qué tan duro es el suelo: un cono de mano, una veleta o un conteo lo resuelve',
  'matter/rate': 'cuánto más cuesta hincar rápido que despacio',
  'matter/shaft': 'la fricción a lo largo del topo',
  'matter/energy': 'lo que da un golpe de este topo: su hoja de datos',
  'matter/efficiency': 'lo que del golpe llega al suelo',
  'matter/rigidity': 'qué tan rígido es el suelo para su resistencia',
  'matter/quake': 'cuánto rebota el suelo',
  'matter/frictionAngle': 'el ángulo de fricción',
  'takes/half': 'la deja a la mitad',
  'takes/most': 'la quita casi toda: {share:chance}',
  'takes/some': 'quita {share:chance} de ella',
  'no-matters': 'Se atoran demasiadas para decir qué importa más.',
  error:
    'Otro juego de sorteos movería el día malo unos {errorS:duration}: use más sorteos antes de cotizar.',
  'not-validated':
    'El modelo de avance es verosímil, no está validado: no se pudo leer ningún avance publicado de este tipo de topo por suelo. Sus propias perforaciones cronometradas lo hacen suyo.',
  shorter:
    'Llega a su ventana {hitNow:chance} de las veces. Con un pozo en {pits:text} ningún tiro pasa de {longestM:length}, y llega {hitProbability:chance} de las veces.',
  'family/clay': 'arcilla',
  'family/frictional': 'limo, suelo arcilloso y limoso',
  'family/sand': 'arena y grava limpias',
  'learned/bores':
    'Perforaciones pasadas en {family:text}: {bores:whole} contadas, {stalled:whole} de ellas atoradas, {excluded:whole} dejadas fuera. Dicen {multiplier:twoDecimals} veces el avance del modelo, ocho de diez entre {multiplierP10:twoDecimals} y {multiplierP90:twoDecimals}. El plan ya lo incluye.',
  'learned/file':
    'Su propio dato para {family:text}, de {bores:whole} perforaciones{scope:text}: {multiplier:twoDecimals} veces el avance del modelo, ocho de diez entre {multiplierP10:twoDecimals} y {multiplierP90:twoDecimals}. El plan ya lo incluye.',
  'tool/none': 'nada en contra',
  'tool/check': 'vea',
  'tool/hold': 'una regla está en contra',
  'tool/no': 'no para esta perforación',
  'tool/withdrawn': 'Fuera de uso: {why:text}.',
}
