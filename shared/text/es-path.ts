import type { EN_PATH } from './en-path.ts'

export const ES_PATH: Readonly<Record<keyof typeof EN_PATH, string>> = {
  'propose/other-end': 'Perforación {shot:whole}: lance desde el otro pozo.',
  'propose/deeper': 'Perforación {shot:whole}: {moveM:tapeUp} más honda, de punta a punta.',
  'propose/shallower':
    'Perforación {shot:whole}: {moveM:tapeUp} menos honda, de punta a punta. Revise el recubrimiento que queda.',
  'propose/extra-pit': 'Perforación {shot:whole}: un pozo más en {stationM:length}.',
  'propose/enough':
    'Así a ninguna línea de profundidad conocida le falta espacio; ahora a la peor le faltan {shortM:tapeUp}.',
  'propose/left': 'Así a la peor le faltan todavía {shortAfterM:tapeUp}; ahora {shortM:tapeUp}.',
  'expose/unknown':
    'Línea {line:whole}, {kind:utility} en {atM:length}: profundidad desconocida. Nadie puede decir si hay espacio.',
  'expose/short':
    'Línea {line:whole}, {kind:utility} en {atM:length}: faltan {shortM:tapeUp} según lo dicho. Medida en una calicata necesita {savesM:tapeDown} menos.',
  'expose/room':
    'Línea {line:whole}, {kind:utility} en {atM:length}: tiene espacio según lo dicho, y nadie la ha medido.',
  'expose/more': 'Corre al costado: descúbrala también en: {list:text}.',
  'drift/launch': 'Desvío contado desde el lanzamiento en {stationM:length}.',
  'drift/hole': 'Desvío contado desde la calicata en {stationM:length}, donde se ve pasar el topo.',
  'drift/seen': 'Desvío contado desde donde se halló el topo: {by:lookedBy} en {stationM:length}.',
}
