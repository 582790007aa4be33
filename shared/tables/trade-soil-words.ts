export type StonesWord = 'none' | 'few' | 'many' | 'cobbles'
export type OutsideWord = 'cemented' | 'rock' | 'cobbles' | 'rubble' | 'frozen'

export type SoilWord = {
  /** As said, lower case, one space between words. */
  readonly words: readonly string[]
  readonly uscs: string
  /** N where nothing else is known. */
  readonly n: number
  /** Sand that holds gravel enough to be driven as gravel. */
  readonly gravelly?: true
  /** At least these stones come with the word itself. */
  readonly stones?: StonesWord
  readonly fill?: true
  readonly wet?: true
  readonly outside?: OutsideWord
  /** Names hardly a soil by itself: gives way to any other soil named in the phrase. */
  readonly weak?: true
}

/** What crews call it, and the group and state each word is taken for: common practice and our judgement, all to be overridden. */
export const SOIL_WORDS: readonly SoilWord[] = [
  {
    words: ['clay', 'clays', 'lean clay', 'red clay', 'yellow clay', 'brown clay', 'grey clay'],
    uscs: 'CL',
    n: 8,
  },
  { words: ['fat clay', 'plastic clay', 'black clay', 'heavy clay'], uscs: 'CH', n: 8 },
  { words: ['gumbo', 'gumbo clay'], uscs: 'CH', n: 7 },
  { words: ['blue clay', 'marine clay', 'bay mud'], uscs: 'CH', n: 4 },
  { words: ['adobe', 'adobe clay'], uscs: 'CH', n: 18 },
  { words: ['sandy clay', 'clay sandy'], uscs: 'CL', n: 9 },
  { words: ['silty clay'], uscs: 'CL-ML', n: 7 },
  {
    words: ['gravelly clay', 'clay and gravel', 'clay with gravel', 'stony clay'],
    uscs: 'CL',
    n: 13,
    stones: 'many',
  },
  { words: ['clay loam', 'silty clay loam', 'sandy clay loam'], uscs: 'CL', n: 6 },
  { words: ['marl'], uscs: 'CL', n: 22 },
  { words: ['organic clay'], uscs: 'OH', n: 3 },
  { words: ['mud', 'muck', 'gyttja'], uscs: 'OH', n: 1, wet: true },
  { words: ['peat', 'turf', 'peaty soil', 'bog'], uscs: 'PT', n: 1 },
  { words: ['topsoil', 'top soil', 'black dirt', 'garden soil'], uscs: 'OL', n: 4 },
  { words: ['loam', 'loams', 'silt loam'], uscs: 'ML', n: 7 },
  { words: ['loess'], uscs: 'ML', n: 9 },
  { words: ['silt', 'silts', 'clayey silt', 'rock flour'], uscs: 'ML', n: 9 },
  { words: ['sandy silt'], uscs: 'ML', n: 10 },
  { words: ['elastic silt', 'plastic silt'], uscs: 'MH', n: 7 },
  { words: ['sandy loam', 'fine sandy loam', 'loamy sand'], uscs: 'SM', n: 10 },
  { words: ['silty sand', 'dirty sand'], uscs: 'SM', n: 15 },
  { words: ['clayey sand', 'clay sand', 'sand clay', 'sand and clay'], uscs: 'SC', n: 18 },
  { words: ['decomposed granite', 'dg'], uscs: 'SM', n: 45 },
  { words: ['sand', 'sands', 'fine sand', 'medium sand', 'clean sand', 'bank sand'], uscs: 'SP', n: 18 },
  { words: ['coarse sand', 'sharp sand', 'concrete sand', 'well graded sand'], uscs: 'SW', n: 20 },
  { words: ['sugar sand', 'beach sand', 'dune sand', 'blow sand', 'running sand'], uscs: 'SP', n: 7 },
  { words: ['quicksand'], uscs: 'SP', n: 3, wet: true },
  {
    words: ['gravelly sand', 'sandy gravel', 'sand and gravel', 'gravel and sand'],
    uscs: 'SW',
    n: 30,
    gravelly: true,
  },
  { words: ['gravel', 'gravels'], uscs: 'GW', n: 30 },
  { words: ['pea gravel', 'washed gravel'], uscs: 'GP', n: 12 },
  {
    words: ['bank run gravel', 'bank run', 'bank gravel', 'pit run', 'river gravel'],
    uscs: 'GW',
    n: 35,
    stones: 'many',
  },
  { words: ['silty gravel'], uscs: 'GM', n: 25 },
  { words: ['clayey gravel', 'clay gravel'], uscs: 'GC', n: 25 },
  {
    words: ['road base', 'crushed stone', 'crushed rock', 'crusher run', 'hardcore'],
    uscs: 'GW',
    n: 45,
    stones: 'many',
    fill: true,
  },
  { words: ['fill', 'made ground', 'fill dirt', 'dirt fill'], uscs: 'SM', n: 10, fill: true, weak: true },
  {
    words: ['old trench', 'trench', 'backfill', 'trench backfill', 'old backfill'],
    uscs: 'SM',
    n: 8,
    fill: true,
    weak: true,
  },
  {
    words: ['rubble', 'rubble fill', 'demolition fill', 'brick rubble'],
    uscs: 'GM',
    n: 25,
    stones: 'cobbles',
    fill: true,
    outside: 'rubble',
  },
  { words: ['till', 'glacial till', 'boulder clay', 'hard till'], uscs: 'CL', n: 40, stones: 'many' },
  { words: ['hardpan', 'hard pan', 'fragipan', 'claypan'], uscs: 'CL', n: 60, outside: 'cemented' },
  { words: ['caliche', 'calcrete', 'laterite'], uscs: 'CL', n: 80, outside: 'cemented' },
  { words: ['coquina', 'cemented sand', 'coral'], uscs: 'SM', n: 60, outside: 'cemented' },
  { words: ['shale', 'clay shale', 'mudstone', 'siltstone'], uscs: 'CL', n: 90, outside: 'rock' },
  { words: ['chalk'], uscs: 'ML', n: 40, outside: 'rock' },
  {
    words: ['rock', 'ledge', 'bedrock', 'sandstone', 'limestone', 'granite', 'basalt', 'slate'],
    uscs: 'GW',
    n: 100,
    stones: 'cobbles',
    outside: 'rock',
  },
  {
    words: ['cobbles', 'cobble', 'boulders', 'boulder', 'river rock'],
    uscs: 'GP',
    n: 45,
    stones: 'cobbles',
    outside: 'cobbles',
    weak: true,
  },
]

/** Words of state beside the soil's name; the code is of the scale they are usually said on. */
export const STATE_WORDS: readonly { readonly words: readonly string[]; readonly code: string }[] = [
  { words: ['very soft'], code: 'very-soft' },
  { words: ['soft', 'mushy', 'spongy'], code: 'soft' },
  { words: ['firm', 'medium stiff', 'medium', 'moderately firm'], code: 'medium-stiff' },
  { words: ['stiff', 'very firm', 'tough', 'tight'], code: 'stiff' },
  { words: ['very stiff'], code: 'very-stiff' },
  { words: ['hard', 'very hard', 'baked'], code: 'hard' },
  { words: ['very loose'], code: 'very-loose' },
  { words: ['loose', 'uncompacted', 'fluffy'], code: 'loose' },
  { words: ['medium dense', 'moderately dense'], code: 'medium-dense' },
  { words: ['dense', 'compact', 'compacted', 'packed', 'well compacted'], code: 'dense' },
  { words: ['very dense', 'hard packed'], code: 'very-dense' },
]

export type Moisture = 'dry' | 'moist' | 'wet'
export const MOISTURE_WORDS: Readonly<Record<string, Moisture>> = {
  dry: 'dry',
  desiccated: 'dry',
  moist: 'moist',
  damp: 'moist',
  wet: 'wet',
  saturated: 'wet',
  waterlogged: 'wet',
  flooded: 'wet',
  sloppy: 'wet',
}

export const STONES_WORDS: Readonly<Record<string, StonesWord>> = {
  'no stones': 'none',
  stoneless: 'none',
  'few stones': 'few',
  'some stones': 'few',
  'odd stone': 'few',
  'some gravel': 'few',
  'a little gravel': 'few',
  'trace gravel': 'few',
  'with roots': 'few',
  roots: 'few',
  stones: 'many',
  stony: 'many',
  rocky: 'many',
  rocks: 'many',
  'many stones': 'many',
  'with gravel': 'many',
  'some cobbles': 'cobbles',
  cobbly: 'cobbles',
  bouldery: 'cobbles',
}

/** Said beside a soil without changing what it is taken for. */
export const IDLE_WORDS: ReadonlySet<string> = new Set(
  (
    'a an and with of the some in over on to under o w mostly native natural undisturbed virgin ground soil soils dirt earth type good ' +
    'red brown grey gray blue yellow black white tan orange light dark old nice clean uniform typical usual fine coarse trace slightly ' +
    'mixed layer layers layered material deposit'
  ).split(' '),
)

/** Frozen ground behaves as hardpan. */
export const FROZEN_WORDS: ReadonlySet<string> = new Set(['frozen', 'frost'])
