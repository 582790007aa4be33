import { LEVELS_OF, QUALITY_SCHEMES } from '../../shared/core/digsafe/quality-levels.ts'
import { FOUND_ON_GROUND, PRIVATE_ANSWERS } from '../../shared/core/plan/asked-input.ts'
import type { Option } from '../fields/choice-field.tsx'
import { inPlanWords } from './option-words.ts'

export const lookMethods = inPlanWords('lookedBy', ['first-metre', 'seen', 'sonde', 'hose-wire', 'ear'])
export const utilityKinds = inPlanWords('utility', [
  'gas',
  'electric',
  'telecom',
  'water',
  'sewer',
  'storm',
  'reclaimed',
  'irrigation',
  'steam',
  'oil',
  'propane',
  'lighting',
  'septic',
  'other',
])
export const ANSWERS_OF_OWNERS: readonly string[] = [
  'marked',
  'clear',
  'unmarked',
  'not-present',
  'exposed',
  'met-on-site',
]
export const ownerAnswers = inPlanWords('ownerAnswer', ANSWERS_OF_OWNERS)
export const foundOnGround = inPlanWords('foundOnGround', FOUND_ON_GROUND)
export const privateAnswers = inPlanWords('privateAnswer', PRIVATE_ANSWERS)
export const qualitySchemes = inPlanWords('qualityScheme', QUALITY_SCHEMES)
/** As the standards write them. */
export const qualityLevels = (scheme: string): readonly Option[] =>
  [...(LEVELS_OF[QUALITY_SCHEMES.find((each) => each === scheme) ?? 'pas-128'] ?? [])].map((level) => [
    level,
    level,
  ])
/** As they are printed. */
export const MATERIALS_OF_LINES: readonly string[] = [
  'steel',
  'polyethylene',
  'PVC',
  'cast iron',
  'ductile iron',
  'copper',
  'concrete',
  'clay',
  'asbestos cement',
  'direct-buried cable',
  'cable in duct',
  'fiber',
]
