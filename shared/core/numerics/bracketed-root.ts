export type RootLimits = {
  /** Evaluations at most. */
  readonly steps?: number
  /** Stops once the bracket is this fraction of the root. */
  readonly relative?: number
  /** `f` at the lower end where it is known already: each evaluation may be a root in itself. */
  readonly atLow?: number
}

/**
 * A root of `f` between `low` and `high`, by T. R. Chandrupatla's rule (Advances in Engineering Software 28, 1997): inverse
 * quadratic where three points allow it, halving where not, so never slower than twice a plain bisection and mostly ten
 * evaluations. Infinite values are welcome at either end (a choked hose is "far too much flow"); where `f` jumps over zero the
 * place of the jump is given. Null when a value is no number or the ends do not bracket a sign change.
 */
export function bracketedRoot(
  f: (x: number) => number,
  low: number,
  high: number,
  { steps = 120, relative = 1e-14, atLow }: RootLimits = {},
): number | null {
  let a = high
  let b = low
  let fa = f(a)
  let fb = atLow ?? f(b)
  if (Number.isNaN(fa) || Number.isNaN(fb)) return null
  if (fa === 0) return a
  if (fb === 0) return b
  if (fa > 0 === fb > 0) return null
  let share = 0.5
  for (let step = 0; step < steps; step++) {
    const x = a + share * (b - a)
    const fx = f(x)
    if (Number.isNaN(fx)) return null
    const staysOnSide = fx > 0 === fa > 0
    const c = staysOnSide ? a : b
    const fc = staysOnSide ? fa : fb
    if (!staysOnSide) {
      b = a
      fb = fa
    }
    a = x
    fa = fx
    const nearer = Math.abs(fa) < Math.abs(fb) ? a : b
    if (fa === 0) return a
    const least = (relative * Math.abs(nearer)) / Math.abs(b - a)
    if (!(least < 0.5)) return nearer
    share = Math.min(1 - least, Math.max(least, nextShare(a, b, c, fa, fb, fc)))
  }
  return Math.abs(fa) < Math.abs(fb) ? a : b
}

/** Where between a and b to look next: the inverse parabola where it is sound, else the middle. */
function nextShare(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  const xi = (a - b) / (c - b)
  const phi = (fa - fb) / (fc - fb)
  if (!Number.isFinite(phi) || !(phi ** 2 < xi && (1 - phi) ** 2 < 1 - xi)) return 0.5
  const share =
    (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb))
  return Number.isFinite(share) ? share : 0.5
}
