import type { Option } from '../fields/choice-field.tsx'

/** What the choices of a crossing file are called on the page. */
export const DEPTH_TO: readonly Option[] = [
  ['centre', 'centre of the bore'],
  ['top', 'top of the pipe'],
  ['bottom', 'underside of the bore'],
  ['floor', 'floor of the pit'],
]
export const ENDS: readonly Option[] = [
  ['pit', 'pit'],
  ['keyhole', 'keyhole'],
  ['bank', 'open bank'],
  ['handhole', 'handhole'],
  ['wall', 'building wall'],
  ['inside', 'inside a building'],
]
export const SURFACES: readonly Option[] = [
  ['lawn', 'lawn'],
  ['walk', 'walk'],
  ['pavers', 'pavers'],
  ['drive', 'drive'],
  ['slab', 'slab'],
  ['road', 'road'],
  ['ditch', 'ditch'],
  ['other', 'other'],
]
export const USCS: readonly Option[] = [
  ['CL', 'CL lean clay'],
  ['CH', 'CH fat clay'],
  ['ML', 'ML silt'],
  ['MH', 'MH elastic silt'],
  ['SM', 'SM silty sand'],
  ['SC', 'SC clayey sand'],
  ['SP', 'SP sand, one size'],
  ['SW', 'SW sand, all sizes'],
  ['GM', 'GM silty gravel'],
  ['GC', 'GC clayey gravel'],
  ['GP', 'GP gravel, one size'],
  ['GW', 'GW gravel, all sizes'],
  ['OL', 'OL organic silt'],
  ['OH', 'OH organic clay'],
  ['PT', 'PT peat'],
]
export const CONSISTENCIES: readonly Option[] = [
  'very soft',
  'soft',
  'firm',
  'medium stiff',
  'stiff',
  'very stiff',
  'hard',
  'very loose',
  'loose',
  'medium dense',
  'dense',
  'very dense',
].map((word) => [word, word] as const)
export const GROUND_WORDS: readonly string[] = [
  'clay',
  'sandy clay',
  'gumbo',
  'clay loam',
  'loam',
  'sandy loam',
  'silt',
  'sugar sand',
  'bank-run gravel',
  'hardpan',
  'caliche',
  'shale',
  'chalk',
  'boulder clay',
  'fill',
  'old trench',
]
export const DUG: readonly Option[] = [
  ['easy', 'easy'],
  ['firm', 'firm'],
  ['bar', 'needed the bar'],
  ['struggled', 'machine struggled'],
]
export const STONES: readonly Option[] = [
  ['none', 'none'],
  ['few', 'few'],
  ['many', 'many'],
  ['cobbles', 'cobbles'],
]
export const HEADS: readonly Option[] = [
  ['taper', 'tapered'],
  ['stepped', 'stepped'],
  ['chisel', 'chisel'],
]
export const PULL: readonly Option[] = [
  ['push', 'push through the open hole'],
  ['cable', 'pull back on a cable'],
  ['tow', 'tow behind the tool'],
  ['reverse', 'reverse the tool home, pulling it'],
  ['expander', 'expander on a second pass'],
]
export const UTILITIES: readonly Option[] = [
  ['gas', 'gas'],
  ['electric', 'electric'],
  ['telecom', 'telecom'],
  ['water', 'water'],
  ['sewer', 'sewer'],
  ['storm', 'storm drain'],
  ['reclaimed', 'reclaimed water'],
  ['irrigation', 'irrigation'],
  ['steam', 'steam'],
  ['oil', 'oil'],
  ['propane', 'propane'],
  ['lighting', 'lighting'],
  ['septic', 'septic'],
  ['other', 'other'],
]
export const EVIDENCE: readonly Option[] = [
  ['records', 'records only'],
  ['marked', 'marked on the ground'],
  ['detected', 'detected, depth read'],
  ['exposed', 'exposed, depth taped'],
  ['proved', 'proved another way'],
]
export const UTILITY_DEPTH_TO: readonly Option[] = [
  ['top', 'its top'],
  ['centre', 'its centre'],
  ['bottom', 'its underside'],
]
export const MATERIALS: readonly Option[] = [
  ['pe2708', 'PE2708'],
  ['pe3608', 'PE3608'],
  ['pe4710', 'PE4710'],
]
export const ANSWERS_OF_OWNERS: readonly string[] = [
  'marked',
  'clear',
  'unmarked',
  'not-present',
  'exposed',
  'met-on-site',
]
