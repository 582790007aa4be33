import { PreconditionError, requirePositive } from '../outcome.ts'

/** Lanczos' approximation with g = 7 and nine terms: about 1e-15 for arguments above a half. */
const LANCZOS_G = 7
const LANCZOS_FIRST = 0.99999999999980993
const LANCZOS_REST: readonly number[] = [
  676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059, 12.507343278686905,
  -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
]
const HALF_LOG_TWO_PI = 0.9189385332046728
/** Terms at most; both expansions below end after a few dozen where they are used. */
const MOST_TERMS = 500
const CLOSE = 1e-16
/** Keeps a continued fraction from dividing by zero (Lentz). */
const TINY = 1e-300

/** ln Γ(x) for x > 0. C. Lanczos, J. SIAM Numer. Anal. B 1 (1964). */
export function logGamma(x: number): number {
  requirePositive('x', x)
  // The series is good above a half; the recurrence leads there.
  if (x < 0.5) return logGamma(x + 1) - Math.log(x)
  const sum = LANCZOS_REST.reduce(
    (total, coefficient, index) => total + coefficient / (x + index),
    LANCZOS_FIRST,
  )
  const shifted = x + LANCZOS_G - 0.5
  return HALF_LOG_TWO_PI + (x - 0.5) * Math.log(shifted) - shifted + Math.log(sum)
}

/** P(a, x) = γ(a, x)/Γ(a): the regularised lower incomplete gamma function, 0 to 1, for a > 0 and x ≥ 0. */
export function regularisedLowerGamma(a: number, x: number): number {
  requirePositive('a', a)
  if (!(x >= 0)) throw new PreconditionError(`the incomplete gamma function needs x ≥ 0, got ${x}`)
  if (x === 0) return 0
  if (x === Number.POSITIVE_INFINITY) return 1
  const lead = Math.exp(a * Math.log(x) - x - logGamma(a))
  return x < a + 1 ? lead * lowerSeries(a, x) : 1 - lead * upperFraction(a, x)
}

function lowerSeries(a: number, x: number): number {
  let term = 1 / a
  let sum = term
  for (let n = 1; n < MOST_TERMS && term > sum * CLOSE; n++) {
    term *= x / (a + n)
    sum += term
  }
  return sum
}

function upperFraction(a: number, x: number): number {
  let b = x + 1 - a
  let c = 1 / TINY
  let d = 1 / b
  let value = d
  for (let n = 1; n < MOST_TERMS; n++) {
    const numerator = -n * (n - a)
    b += 2
    d = 1 / notZero(numerator * d + b)
    c = notZero(b + numerator / c)
    value *= d * c
    if (Math.abs(d * c - 1) < CLOSE) break
  }
  return value
}

const notZero = (x: number): number => (Math.abs(x) < TINY ? TINY : x)

/** I_x(a, b): the regularised incomplete beta function, for a, b > 0 and 0 ≤ x ≤ 1, by Lentz' continued fraction. */
export function regularisedBeta(x: number, a: number, b: number): number {
  requirePositive('a', a)
  requirePositive('b', b)
  if (!(x >= 0 && x <= 1))
    throw new PreconditionError(`the incomplete beta function needs 0 ≤ x ≤ 1, got ${x}`)
  if (x === 0 || x === 1) return x
  // The fraction converges fast below this point; above it the symmetry is used.
  if (x > (a + 1) / (a + b + 2)) return 1 - regularisedBeta(1 - x, b, a)
  const lead = Math.exp(a * Math.log(x) + b * Math.log1p(-x) + logGamma(a + b) - logGamma(a) - logGamma(b))
  return (lead * betaFraction(x, a, b)) / a
}

function betaFraction(x: number, a: number, b: number): number {
  let c = 1
  let d = 1 / notZero(1 - ((a + b) * x) / (a + 1))
  let value = d
  for (let m = 1; m < MOST_TERMS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m))
    d = 1 / notZero(1 + even * d)
    c = notZero(1 + even / c)
    value *= d * c
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1))
    d = 1 / notZero(1 + odd * d)
    c = notZero(1 + odd / c)
    value *= d * c
    if (Math.abs(d * c - 1) < CLOSE) break
  }
  return value
}
