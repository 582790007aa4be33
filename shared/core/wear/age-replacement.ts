import { bisect } from '../numerics/bisect.ts'
import { relation } from '../relation.ts'
import { logGamma, regularisedLowerGamma } from '../statistics/gamma-functions.ts'

/** Lives looked at: beyond this nearly nothing is left to replace in time. */
const LONGEST_IN_SCALES = 1e6

/** Mean time in service up to u scales: ∫₀ᵘ exp(−x^β) dx. */
const meanService = (u: number, shape: number): number =>
  (regularisedLowerGamma(1 / shape, u ** shape) * Math.exp(logGamma(1 / shape))) / shape

/**
 * Age at which replacing a sound part costs least in the long run. There is none where a failure costs no more than a
 * replacement in time, nor where the part does not wear out.
 */
export const ageReplacement = relation({
  id: 'age-replacement',
  title: 'Age at which to replace a part that still works',
  formula: 'min over t of (c_p R + c_f (1 − R))/∫₀ᵗ R; at the best age hazard × (c_f − c_p) = cost rate',
  sources: ['AgeReplacement'],
  inputs: {
    shape: {
      kind: 'ratio',
      words: 'shape β of its lives',
      range: { min: 1, max: 10, hardMin: 0.05, hardMax: 100 },
    },
    scale: {
      kind: 'ratio',
      words: 'scale η of its lives, in any unit of use',
      range: { hardMin: 1e-12, hardMax: 1e15 },
    },
    costRatio: {
      kind: 'ratio',
      words: 'cost of a failure over that of a replacement in time',
      range: { min: 1, max: 100, hardMin: 0, hardMax: 1e9 },
    },
  },
  outputs: {
    age: { kind: 'ratio', words: 'age to replace at, in the unit of η', orNull: true },
    costShare: { kind: 'ratio', words: 'cost in the long run, as a share of running to failure' },
    reason: {
      choices: ['replace-at-age', 'does-not-wear-out', 'failing-costs-no-more', 'hardly-ever-pays'],
      words: 'why there is such an age or none',
    },
  },
  fn: ({ shape, scale, costRatio }) => {
    if (costRatio <= 1) return { age: null, costShare: 1, reason: 'failing-costs-no-more' }
    if (shape <= 1) return { age: null, costShare: 1, reason: 'does-not-wear-out' }
    const survival = (u: number): number => Math.exp(-(u ** shape))
    const hazard = (u: number): number => shape * u ** (shape - 1)
    const cost = (u: number): number => survival(u) + costRatio * (1 - survival(u))
    const best = bisect(
      (u) => hazard(u) * (costRatio - 1) * meanService(u, shape) - cost(u),
      1e-12,
      LONGEST_IN_SCALES,
      { steps: 200 },
    )
    if (best === null) return { age: null, costShare: 1, reason: 'hardly-ever-pays' }
    const toFailure = costRatio / meanService(Number.POSITIVE_INFINITY, shape)
    return {
      age: best * scale,
      costShare: (hazard(best) * (costRatio - 1)) / toFailure,
      reason: 'replace-at-age',
    }
  },
  checks: ['lives'],
})
