import type { EN_VERDICT } from './en-verdict.ts'

/** El plan en una o dos líneas, como lo diría el jefe de cuadrilla. */
export const ES_VERDICT = {
  times:
    '{ground:text}. Lo probable: {hammerTimeS:duration} de golpeo, {boreTimeS:duration} para la perforación, {crossingTimeS:duration} para todo el cruce; {secondTry:odds} necesita un segundo intento.',
  'times/tenths':
    '{ground:text}. Lo probable: {hammerTimeS:duration} de golpeo, {boreTimeS:duration} para la perforación, {crossingTimeS:duration} para todo el cruce; {secondTry:odds} necesitan un segundo intento.',
  brief: 'Golpeo {hammerTimeS:duration}, {crossingTimeS:duration} en total; {secondTry:odds} se repite',
  'brief/no-times': 'Llegan muy pocas para dar un tiempo',
  'times/unlikely':
    '{ground:text}. Solo {arrives:odds} llega al primer intento. La que llega: lo probable es {hammerTimeS:duration} de golpeo, {boreTimeS:duration} para la perforación, {crossingTimeS:duration} para todo el cruce. Piense en otro topo, tiros más cortos u otro método.',
  'no-times':
    '{ground:text}. Llegan muy pocas perforaciones para dar un tiempo: llega {arrives:odds}. Otro topo, tiros más cortos u otro método.',
  clearance:
    '{kind:utility}: parte de arriba a {topM:tape}, fondo a {bottomM:tape}. Su perforación: arriba a {boreTopM:tape}, fondo a {boreBottomM:tape}.',
  'clearance/no-size':
    '{kind:utility}: {datum:datum} a {depthM:tape}, tamaño desconocido. Su perforación: arriba a {boreTopM:tape}, fondo a {boreBottomM:tape}.',
  'clearance/no-depth':
    '{kind:utility}: profundidad desconocida. Su perforación: arriba a {boreTopM:tape}, fondo a {boreBottomM:tape}.',
  'clearance/parallel':
    '{kind:utility}: al costado, a {offsetM:length} de centro a centro de la perforación. Su perforación: arriba a {boreTopM:tape}, fondo a {boreBottomM:tape}.',
  gap: 'Separación hasta la línea: {gapM:tapeDown}.',
  'gap/overlap': 'En papel, la perforación choca con ella.',
  deeper: 'Faltan {shortM:tapeUp}: baje la perforación esa medida.',
  'deeper-or-other-end':
    'Faltan {shortM:tapeUp}: baje la perforación esa medida; o lance desde el otro pozo, que ahorra desviación.',
  'deeper-other-end-short':
    'Faltan {shortM:tapeUp}: baje la perforación esa medida; lanzando desde el otro pozo bastan {otherEndShortM:tapeUp}.',
  shallower:
    'Faltan {shortM:tapeUp}: la perforación pasa por encima; súbala esa medida si el recubrimiento alcanza, o mueva el trazo.',
  'shallower-or-other-end':
    'Faltan {shortM:tapeUp}: la perforación pasa por encima; súbala esa medida si el recubrimiento alcanza, o lance desde el otro pozo, que ahorra desviación.',
  'shallower-other-end-short':
    'Faltan {shortM:tapeUp}: la perforación pasa por encima; súbala esa medida si el recubrimiento alcanza; lanzando desde el otro pozo bastan {otherEndShortM:tapeUp}.',
  sideways: 'Faltan {shortM:tapeUp}: aleje el trazo esa medida.',
  contact:
    'Probabilidad de contacto {probability:chance}, de las líneas que usted anotó; no dice nada de las demás ni quita ninguna regla.',
  'no-contact/depth-not-measured': 'No se da probabilidad de contacto: nadie ha medido su profundidad.',
  'no-contact/no-depth': 'No se da probabilidad de contacto: nadie ha dado su profundidad.',
  'no-contact/no-size': 'No se da probabilidad de contacto: nadie ha dado su tamaño.',
  'no-contact/parallel':
    'No se da probabilidad de contacto de una línea al costado hasta que se descubra y se midan su profundidad y tamaño.',
} as const satisfies Record<keyof typeof EN_VERDICT, string>
