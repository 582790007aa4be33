import { SLOW_SHARE } from '../../tables/shop-house-values.ts'

export type AdvanceSeen = {
  readonly advanceMPerS: number
  /** Likely advance of its plan; null where the ground was not known. */
  readonly expectedMPerS: number | null
  /** Pressure at the tool over its rated one; null where nobody read it. */
  readonly pressureRatio: number | null
}

/** At less than this the air is the likelier story. */
const NORMAL_PRESSURE = 0.9
/** One slow bore is a stone; three in a row of those that can be compared are not. */
const BORES_LOOKED_AT = 3

/**
 * Slow advance at normal pressure in known ground: a reason to look at the rings, never a verdict. null: nothing to say,
 * which is not a clean bill.
 */
export function slowAdvance(newestLast: readonly AdvanceSeen[]): { readonly share: number } | null {
  const comparable = newestLast.flatMap(({ advanceMPerS, expectedMPerS, pressureRatio }) =>
    expectedMPerS !== null && expectedMPerS > 0 && pressureRatio !== null && pressureRatio >= NORMAL_PRESSURE
      ? [advanceMPerS / expectedMPerS]
      : [],
  )
  const last = comparable.slice(-BORES_LOOKED_AT)
  if (last.length < BORES_LOOKED_AT || last.some((share) => share >= SLOW_SHARE)) return null
  return { share: last.reduce((sum, each) => sum + each, 0) / last.length }
}
