import { planWord, type WordGroup } from '../../shared/text/plan-words.ts'
import type { Option } from '../fields/choice-field.tsx'
import { say } from '../state/unit-choice.ts'
import { spoken } from './spoken-words.ts'

export type OptionWords = Readonly<
  Record<'depthTo' | 'utilityDepthTo' | 'uscs' | 'evidence', readonly Option[]>
> & {
  /** What may be typed for the ground, as crews say it; read in either language whatever the page speaks. */
  readonly groundWords: readonly string[]
}

/** What the choices of a crossing file are called on the page, where the plan's own words do not say it as well. */
const EN_OPTIONS: OptionWords = {
  depthTo: [
    ['centre', '{center|centre} of the bore'],
    ['top', 'top of the pipe'],
    ['bottom', 'underside of the bore'],
    ['floor', 'floor of the pit'],
  ],
  utilityDepthTo: [
    ['top', 'its top'],
    ['centre', 'its {center|centre}'],
    ['bottom', 'its underside'],
  ],
  uscs: [
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
  ],
  evidence: [
    ['records', 'records only'],
    ['marked', 'marked on the ground'],
    ['detected', 'detected, depth read'],
    ['exposed', 'exposed, depth taped'],
    ['proved', 'proved another way'],
  ],
  groundWords: [
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
  ],
}

export const OPTIONS = spoken('options', EN_OPTIONS)

/** Choices that the plan's own words name. */
export const inPlanWords = (group: WordGroup, codes: readonly string[]) => (): readonly Option[] =>
  codes.map((code) => [code, planWord(group, code, say.value)])

export const ends = inPlanWords('end', ['pit', 'keyhole', 'bank', 'handhole', 'wall', 'inside'])
export const surfaces = inPlanWords('surface', [
  'lawn',
  'walk',
  'pavers',
  'drive',
  'slab',
  'road',
  'ditch',
  'other',
])
export const dug = inPlanWords('dug', ['easy', 'firm', 'bar', 'struggled'])
export const stones = inPlanWords('stones', ['none', 'few', 'many', 'cobbles'])
export const heads = inPlanWords('head', ['taper', 'stepped', 'chisel'])
export const pulls = inPlanWords('pull', ['push', 'cable', 'tow', 'reverse', 'expander'])
export const aimMethods = inPlanWords('aim', ['frame', 'eye'])
const CONSISTENCIES = [
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
]
/** A file says them with spaces, the plan with hyphens. */
export const consistencies = (): readonly Option[] =>
  CONSISTENCIES.map((word) => [
    word,
    // Of the ground itself: "suelo blando".
    planWord('ground', word.replaceAll(' ', '-'), say.value).replace('a/o', 'o'),
  ])

export const MATERIALS: readonly Option[] = [
  ['pe2708', 'PE2708'],
  ['pe3608', 'PE3608'],
  ['pe4710', 'PE4710'],
]
