import type { Moisture, StonesWord } from './trade-soil-words.ts'

/**
 * What Spanish-speaking crews call it, each by the English word of the trade it is taken for: group, hardness and stones
 * are that word's. Common practice, no source; without accents, as they are compared.
 */
export const SPANISH_SOIL_WORDS: Readonly<Record<string, readonly string[]>> = {
  clay: ['arcilla', 'arcillas', 'greda', 'arcilla magra'],
  'fat clay': ['arcilla plastica', 'arcilla gorda', 'arcilla grasa', 'arcilla expansiva', 'arcilla pesada'],
  'marine clay': ['arcilla marina', 'arcilla azul'],
  'sandy clay': ['arcilla arenosa', 'arcilla con arena'],
  'silty clay': ['arcilla limosa', 'arcilla con limo'],
  'gravelly clay': ['arcilla con grava', 'arcilla gravosa'],
  'clay loam': ['franco arcilloso', 'migajon arcilloso'],
  marl: ['marga'],
  'organic clay': ['arcilla organica'],
  mud: ['lodo', 'fango', 'cieno'],
  peat: ['turba'],
  topsoil: ['tierra vegetal', 'capa vegetal', 'tierra negra', 'tierra de jardin'],
  loam: ['franco', 'migajon', 'suelo franco'],
  loess: ['loes'],
  silt: ['limo', 'limos', 'limo arcilloso'],
  'sandy silt': ['limo arenoso', 'limo con arena'],
  'elastic silt': ['limo elastico', 'limo plastico'],
  'sandy loam': ['franco arenoso', 'migajon arenoso'],
  'silty sand': ['arena limosa', 'arena con limo'],
  'clayey sand': ['arena arcillosa', 'arena con arcilla'],
  'decomposed granite': ['granito descompuesto', 'maicillo'],
  sand: ['arena', 'arenas', 'arena fina', 'arena media', 'arena limpia'],
  'coarse sand': ['arena gruesa'],
  'beach sand': ['arena de playa', 'arena de mar', 'arena de medano', 'arena de duna'],
  quicksand: ['arena movediza'],
  'gravelly sand': ['arena con grava', 'arena gravosa', 'arena y grava', 'grava y arena', 'grava arenosa'],
  gravel: ['grava', 'gravas'],
  'pea gravel': ['gravilla', 'grava fina'],
  'bank run gravel': ['grava de mina', 'grava de banco', 'grava de rio', 'grava en grena'],
  'silty gravel': ['grava limosa'],
  'clayey gravel': ['grava arcillosa'],
  'road base': ['base hidraulica', 'base de calle', 'balasto'],
  'crushed stone': ['piedra triturada', 'grava triturada'],
  fill: ['relleno', 'terraplen'],
  'old trench': ['zanja vieja', 'relleno de zanja', 'zanja rellena'],
  rubble: ['escombro', 'escombros'],
  till: ['morrena', 'till glacial'],
  hardpan: ['tepetate', 'talpetate'],
  caliche: ['calcreta', 'laterita'],
  shale: ['lutita', 'esquisto'],
  chalk: ['creta'],
  rock: ['roca', 'pena', 'arenisca', 'caliza', 'granito', 'basalto', 'pizarra'],
  cobbles: ['bolos', 'boleos', 'bolones', 'boleo'],
}

/** Mean one thing here and another there: asked, with what they may be. `weak` gives way to any soil named beside it. */
export const SPANISH_OPEN_WORDS: Readonly<
  Record<string, { readonly candidates: readonly string[]; readonly weak?: true }>
> = {
  barro: { candidates: ['arcilla', 'lodo'] },
  cascajo: { candidates: ['grava', 'escombro'] },
  ripio: { candidates: ['grava', 'escombro'] },
  tosca: { candidates: ['caliche', 'roca'] },
  tierra: { candidates: ['tierra vegetal', 'arcilla', 'limo', 'relleno'], weak: true },
}

/** States by the code of the English scale, in both genders. */
export const SPANISH_STATE_WORDS: Readonly<Record<string, readonly string[]>> = {
  'very-soft': ['muy blanda', 'muy blando'],
  soft: ['blanda', 'blando', 'aguada', 'aguado'],
  'medium-stiff': ['firme', 'media', 'medio', 'de rigidez media', 'medianamente firme'],
  stiff: ['rigida', 'rigido', 'muy firme', 'tiesa', 'tieso'],
  'very-stiff': ['muy rigida', 'muy rigido'],
  hard: ['dura', 'duro', 'muy dura', 'muy duro'],
  'very-loose': ['muy suelta', 'muy suelto'],
  loose: ['suelta', 'suelto', 'sin compactar', 'floja', 'flojo'],
  'medium-dense': ['de densidad media', 'medianamente densa', 'medianamente denso'],
  dense: ['densa', 'denso', 'compacta', 'compacto', 'compactada', 'compactado', 'apretada', 'apretado'],
  'very-dense': ['muy densa', 'muy denso', 'muy compacta', 'muy compacto'],
}

export const SPANISH_MOISTURE_WORDS: Readonly<Record<Moisture, readonly string[]>> = {
  dry: ['seca', 'seco', 'reseca', 'reseco'],
  moist: ['humeda', 'humedo'],
  wet: ['mojada', 'mojado', 'saturada', 'saturado', 'con agua', 'inundada', 'inundado'],
}

export const SPANISH_STONES_WORDS: Readonly<Record<StonesWord, readonly string[]>> = {
  none: ['sin piedras', 'sin piedra'],
  few: [
    'pocas piedras',
    'con pocas piedras',
    'algunas piedras',
    'algo de grava',
    'poca grava',
    'raices',
    'con raices',
  ],
  many: [
    'con piedras',
    'piedras',
    'muchas piedras',
    'con muchas piedras',
    'pedregosa',
    'pedregoso',
    'con grava',
  ],
  cobbles: ['con bolos', 'con boleos', 'con bolones'],
}

/** Said beside a soil without changing what it is taken for. */
export const SPANISH_IDLE_WORDS: readonly string[] = (
  'de del con y en el la los las un una sobre bajo encima abajo suelo terreno nativo natural ' +
  'roja rojo cafe gris amarilla amarillo negra negro blanca blanco clara claro oscura oscuro ' +
  'vieja viejo limpia limpio mezclada mezclado capa capas fina fino gruesa grueso tipo casi puro pura'
).split(' ')

export const SPANISH_FROZEN_WORDS: readonly string[] = ['congelada', 'congelado', 'helada', 'helado']
