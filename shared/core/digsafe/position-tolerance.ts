import { PreconditionError } from '../outcome.ts'
import { relation } from '../relation.ts'
import { LEVELS_OF, QUALITY_SCHEMES, type QualityLevel, type QualityScheme } from './quality-levels.ts'

/** Half widths; a depth that is a share of the depth has a floor. */
type Tolerance = {
  readonly planM: number | null
  readonly depth: { readonly share: number; readonly leastM: number } | null
}
const NONE: Tolerance = { planM: null, depth: null }
const PAS: Readonly<Partial<Record<QualityLevel, Tolerance>>> = {
  A: { planM: 0.05, depth: { share: 0, leastM: 0.025 } },
  B1: { planM: 0.15, depth: { share: 0.15, leastM: 0.15 } },
  B2: { planM: 0.25, depth: { share: 0.4, leastM: 0.25 } },
  B3: { planM: 0.5, depth: null },
}
const AS: Readonly<Partial<Record<QualityLevel, Tolerance>>> = {
  A: { planM: 0.05, depth: { share: 0, leastM: 0.05 } },
  B: { planM: 0.3, depth: { share: 0, leastM: 0.5 } },
}
/** Exposed and surveyed at one point, and true there only. */
const ASCE: Readonly<Partial<Record<QualityLevel, Tolerance>>> = {
  A: { planM: 0.03, depth: { share: 0, leastM: 0.03 } },
}
const SCHEMES = { 'asce-38': ASCE, 'pas-128': PAS, 'as-5488': AS } as const

const toleranceOf = (scheme: QualityScheme, level: QualityLevel): Tolerance => {
  if (!LEVELS_OF[scheme].includes(level)) {
    throw new PreconditionError(`${scheme} has no level ${level}: ${LEVELS_OF[scheme].join(', ')}`)
  }
  return SCHEMES[scheme][level] ?? NONE
}

/** How far a line may lie from where evidence of a class puts it; nothing where the class promises nothing. */
export const positionTolerance = relation({
  id: 'position-tolerance',
  title: 'How well a class of evidence knows where a line is',
  formula:
    'PAS 128: B1 ±150 mm and ±15 % of depth, B2 ±250 mm and ±40 %, floors 150 and 250 mm; others by table',
  sources: ['Pas128', 'As5488', 'Asce38'],
  inputs: {
    scheme: { choices: QUALITY_SCHEMES, words: 'whose classes: United States, United Kingdom, Australia' },
    level: { choices: ['A', 'B', 'B1', 'B2', 'B3', 'B4', 'C', 'D'], words: 'class as the survey says it' },
    depth: {
      kind: 'depth',
      words: 'depth given for the line',
      range: { min: 0.1, max: 3, hardMin: 0, hardMax: 100 },
    },
  },
  outputs: {
    plan: { kind: 'length', orNull: true, words: 'either way in plan; none: the class promises nothing' },
    depthError: { kind: 'length', orNull: true, words: 'up or down; none: the class promises no depth' },
  },
  fn: ({ scheme, level, depthM }) => {
    const { planM, depth } = toleranceOf(scheme, level)
    return {
      planM,
      depthErrorM: depth === null ? null : Math.max(depth.leastM, depth.share * depthM),
    }
  },
  checks: ['position-tolerance'],
  remarks:
    'Paint and records are the lowest class: no position, no depth. Even the best class that is not exposed takes half of a 12 in clearance at 1 m. Every line in the path is exposed whatever its class.',
})
