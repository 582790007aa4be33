import { PreconditionError } from '../outcome.ts'

const SQRT_2_PI = 2.5066282746310002
const SQRT_32 = 5.656854249492381
/** Below this the centre formula is used; where the first tail formula takes over (Cody 1969). */
const CENTRE_LIMIT = 0.67448975
const CENTRE = {
  top: [161.02823106855587, 1067.6894854603709, 18154.98125334356],
  lead: 0.06568233791820745,
  first: 2.2352520354606837,
  bottom: [47.202581904688245, 976.0985517377767, 10260.932208618979, 45507.78933502673],
} as const
const NEAR_TAIL = {
  top: [
    0.39894151208813466, 8.883149794388377, 93.50665613217785, 597.2702763948002, 2494.5375852903726,
    6848.190450536283, 11602.65143764735, 9842.714838383978,
  ],
  lead: 1.0765576773720192e-8,
  bottom: [
    22.266688044328117, 235.387901782625, 1519.3775994075547, 6485.558298266761, 18615.571640885097,
    34900.95272114598, 38912.00328609327, 19685.429676859992,
  ],
} as const
const FAR_TAIL = {
  top: [
    0.215898534057957, 0.12740116116024736, 0.022235277870649807, 0.0014216191932278934,
    0.000029112874951168793,
  ],
  lead: 0.023073441764940174,
  bottom: [
    1.284260096144911, 0.4682382124808651, 0.06598813786892856, 0.0037823963320275824, 0.00007297515550839662,
  ],
} as const

/** lead·x^n + top[0]·x^(n−1) + …, by Horner's rule. */
const horner = (lead: number, rest: readonly number[], x: number): number =>
  rest.reduce((sum, coefficient) => sum * x + coefficient, lead)

/** Density φ(x) = e^(−x²/2)/√(2π) of the standard normal law. */
export const normalDensity = (x: number): number => Math.exp(-0.5 * x * x) / SQRT_2_PI

/** Mass above y > 0.67449. The exponential is split at a sixteenth so that no digit is lost for large y. */
function upperTail(y: number): number {
  const coarse = Math.trunc(y * 16) / 16
  const fine = (y - coarse) * (y + coarse)
  const exponential = Math.exp(-0.5 * coarse * coarse) * Math.exp(-0.5 * fine)
  if (y <= SQRT_32) {
    return (exponential * horner(NEAR_TAIL.lead, NEAR_TAIL.top, y)) / horner(1, NEAR_TAIL.bottom, y)
  }
  const inverseSquare = 1 / (y * y)
  const ratio =
    (inverseSquare * horner(FAR_TAIL.lead, FAR_TAIL.top, inverseSquare)) /
    horner(1, FAR_TAIL.bottom, inverseSquare)
  return (exponential * (1 / SQRT_2_PI - ratio)) / y
}

/**
 * Φ(x): chance that a standard normal value is at most x.
 * W. J. Cody, "Rational Chebyshev approximations for the error function", Math. Comp. 23 (1969): about 1e-15
 * relative, also far out in the lower tail, where 1 − Φ(−x) would have lost every digit.
 */
export function normalCdf(x: number): number {
  if (Number.isNaN(x)) throw new PreconditionError('normalCdf of NaN')
  const distance = Math.abs(x)
  if (distance > CENTRE_LIMIT) {
    const tail = distance > 40 ? 0 : upperTail(distance)
    return x > 0 ? 1 - tail : tail
  }
  const square = x * x
  const top = horner(CENTRE.lead, [CENTRE.first, ...CENTRE.top], square)
  return 0.5 + (x * top) / horner(1, CENTRE.bottom, square)
}

const QUANTILE_CENTRE = {
  top: [
    2509.0809287301227, 33430.57558358813, 67265.7709270087, 45921.95393154987, 13731.69376550946,
    1971.5909503065513, 133.14166789178438, 3.3871328727963665,
  ],
  bottom: [
    5226.495278852854, 28729.085735721943, 39307.89580009271, 21213.794301586597, 5394.196021424751,
    687.1870074920579, 42.31333070160091, 1,
  ],
} as const
const QUANTILE_NEAR = {
  top: [
    0.0007745450142783414, 0.022723844989269184, 0.2417807251774506, 1.2704582524523684, 3.6478483247632045,
    5.769497221460691, 4.630337846156546, 1.4234371107496835,
  ],
  bottom: [
    1.0507500716444169e-9, 0.0005475938084995345, 0.015198666563616457, 0.14810397642748008, 0.6897673349851,
    1.6763848301838038, 2.053191626637759, 1,
  ],
} as const
const QUANTILE_FAR = {
  top: [
    2.0103343992922881e-7, 0.000027115555687434876, 0.0012426609473880784, 0.026532189526576124,
    0.29656057182850487, 1.7848265399172913, 5.463784911164114, 6.657904643501103,
  ],
  bottom: [
    2.0442631033899397e-15, 1.421511758316446e-7, 0.000018463183175100548, 0.0007868691311456133,
    0.014875361290850615, 0.1369298809227358, 0.599832206555888, 1,
  ],
} as const

type Fraction = { readonly top: readonly number[]; readonly bottom: readonly number[] }
const fraction = (parts: Fraction, x: number): number => horner(0, parts.top, x) / horner(0, parts.bottom, x)

/**
 * Φ⁻¹(p) for 0 < p < 1: M. J. Wichura, Algorithm AS 241 (PPND16), Applied Statistics 37 (1988), about 1e-16 relative.
 */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) throw new PreconditionError(`normalQuantile needs 0 < p < 1, got ${p}`)
  const offset = p - 0.5
  if (Math.abs(offset) <= 0.425) return offset * fraction(QUANTILE_CENTRE, 0.180625 - offset * offset)
  const depth = Math.sqrt(-Math.log(offset < 0 ? p : 1 - p))
  const size = depth <= 5 ? fraction(QUANTILE_NEAR, depth - 1.6) : fraction(QUANTILE_FAR, depth - 5)
  return offset < 0 ? -size : size
}
