import { bisect } from '../numerics/bisect.ts'
import { PreconditionError, requirePositive } from '../outcome.ts'
import { regularisedBeta } from './gamma-functions.ts'

/** Chance that a value of Student's law with `freedom` degrees of freedom is at most t. */
export function studentTCdf(t: number, freedom: number): number {
  requirePositive('freedom', freedom)
  if (Number.isNaN(t)) throw new PreconditionError('studentTCdf of NaN')
  const square = t * t
  // Each half of the law has a form that keeps its digits: near the middle, and far out.
  const tail =
    square < freedom
      ? 0.5 - 0.5 * regularisedBeta(square / (freedom + square), 0.5, freedom / 2)
      : 0.5 * regularisedBeta(freedom / (freedom + square), freedom / 2, 0.5)
  return t > 0 ? 1 - tail : tail
}

/** Where the bracket stops being widened: 1e12 is past any t a probability of a double can name with a freedom of 1 or more. */
const FARTHEST = 1e12

/**
 * t with P(T ≤ t) = p, 0 < p < 1, by halving a bracket of the law itself: about 1e-13 relative, held against
 * 50-digit values and an independent library.
 */
export function studentTQuantile(p: number, freedom: number): number {
  if (!(p > 0 && p < 1)) throw new PreconditionError(`studentTQuantile needs 0 < p < 1, got ${p}`)
  if (p === 0.5) return 0
  if (p > 0.5) return -studentTQuantile(1 - p, freedom)
  let far = 1
  while (far < FARTHEST && studentTCdf(-far, freedom) > p) far *= 2
  const found = bisect((t) => studentTCdf(t, freedom) - p, -far, 0, { relative: 1e-15, steps: 120 })
  if (found === null) throw new PreconditionError(`no t for p = ${p} with ${freedom} degrees of freedom`)
  return found
}
