import { PreconditionError } from '../outcome.ts'
import { studentTCdf, studentTQuantile } from '../statistics/student-t.ts'

/** Wear over one stretch of use: how much use, and how much was lost in it. */
export type WearInterval = { readonly useS: number; readonly wornM: number }

export type WearPrior = {
  /** Wear per time of use we would expect before any reading. */
  readonly rateMPerS: number
  /** How much use that expectation is worth. */
  readonly weightS: number
  /** Spread of the rate from tool to tool, as a share of the rate. */
  readonly spread: number
}

/** What is known about the rate of one part after its readings. */
export type WearRate = {
  readonly rateMPerS: number
  readonly experienceS: number
  readonly freedom: number
  /** Process variance of the wear, per time of use. */
  readonly varianceM2PerS: number
}

/** Shape of the prior of the variance: three gives the band its width before the first reading. */
const PRIOR_SHAPE = 3

/**
 * Wear modelled by its increments, y_i ~ N(r x_i, s² x_i), with the conjugate update of r and s². A line through
 * cumulated readings would take the same error again and again for new evidence and grow too sure of itself.
 * The variance of the prior follows from its weight: s² = weight × (spread × rate)².
 */
export function learnWearRate(prior: WearPrior, intervals: readonly WearInterval[]): WearRate {
  const { rateMPerS, weightS, spread } = prior
  for (const { useS, wornM } of intervals) {
    if (!(useS > 0 && Number.isFinite(wornM))) {
      throw new PreconditionError(`wear of ${wornM} m in ${useS} s of use is no reading`)
    }
  }
  const priorVariance = weightS * (spread * rateMPerS) ** 2
  const experienceS = intervals.reduce((sum, each) => sum + each.useS, weightS)
  const wornM = intervals.reduce((sum, each) => sum + each.wornM, rateMPerS * weightS)
  const mean = wornM / experienceS
  // The sum of squares about the new mean, taken term by term: their difference from a plain sum would cancel.
  const squares = intervals.reduce(
    (sum, each) => sum + (each.wornM - mean * each.useS) ** 2 / each.useS,
    weightS * (rateMPerS - mean) ** 2,
  )
  const shape = PRIOR_SHAPE + intervals.length / 2
  const scale = (PRIOR_SHAPE - 1) * priorVariance + squares / 2
  return { rateMPerS: mean, experienceS, freedom: 2 * shape, varianceM2PerS: scale / shape }
}

/**
 * Use after which the wear passes `remainingM` with chance p; null where no finite use does, which is an answer: the
 * readings do not yet show that the part wears at all.
 */
export function useToLimitS(known: WearRate, remainingM: number, p: number): number | null {
  if (remainingM <= 0) return 0
  const { rateMPerS: m, experienceS: experience, freedom, varianceM2PerS: variance } = known
  if (p === 0.5) return m > 0 ? remainingM / m : null
  const t = studentTQuantile(Math.min(p, 1 - p), freedom)
  const k = t * t * variance
  const lead = m * m - k / experience
  const half = 2 * remainingM * m + k
  const root = Math.sqrt(4 * remainingM * m * k + k * k + (4 * remainingM ** 2 * k) / experience)
  // Early root written so that it does not lose its digits, and so that it lives where the late one does not.
  if (p < 0.5) return half + root > 0 ? (2 * remainingM ** 2) / (half + root) : null
  return lead > 0 && m > 0 ? (half + root) / (2 * lead) : null
}

/** Chance that the limit has been passed after `useS` more of use. */
export function chanceLimitPassed(known: WearRate, remainingM: number, useS: number): number {
  if (remainingM <= 0) return 1
  if (useS <= 0) return 0
  const deviation = Math.sqrt(known.varianceM2PerS * (useS + useS ** 2 / known.experienceS))
  const margin = known.rateMPerS * useS - remainingM
  if (deviation === 0) return margin > 0 ? 1 : 0
  return studentTCdf(margin / deviation, known.freedom)
}
