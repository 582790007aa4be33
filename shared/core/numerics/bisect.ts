/** Where a function changes sign: `low` keeps the sign it had at the lower end, `high` the other one. */
export type Bracket = { readonly low: number; readonly high: number }

export type BisectionLimits = {
  /** Halvings at most; 60 take any bracket down to the spacing of doubles. */
  readonly steps?: number
  /** Stops once the bracket is this fraction of its larger end. */
  readonly relative?: number
}

/**
 * Halves [low, high] around a change of sign of `f`. Only the sign of `f` is used, so infinite values are welcome
 * (a choked hose is "far too much flow"); a value that is no number, or no change of sign, gives null.
 */
export function narrowToSignChange(
  f: (x: number) => number,
  low: number,
  high: number,
  { steps = 80, relative = 1e-14 }: BisectionLimits = {},
): Bracket | null {
  const atLow = f(low)
  const atHigh = f(high)
  if (Number.isNaN(atLow) || Number.isNaN(atHigh)) return null
  if (atLow === 0) return { low, high: low }
  if (atHigh === 0) return { low: high, high }
  if (atLow > 0 === atHigh > 0) return null
  let bottom = low
  let top = high
  for (let step = 0; step < steps; step++) {
    const middle = bottom + (top - bottom) / 2
    const done = Math.abs(top - bottom) <= relative * Math.max(Math.abs(bottom), Math.abs(top))
    if (done || middle === bottom || middle === top) break
    const value = f(middle)
    if (Number.isNaN(value)) return null
    if (value === 0) return { low: middle, high: middle }
    if (value > 0 === atLow > 0) bottom = middle
    else top = middle
  }
  return { low: bottom, high: top }
}

/** A root of `f` between `low` and `high`, or null when the ends do not bracket one. */
export function bisect(
  f: (x: number) => number,
  low: number,
  high: number,
  limits?: BisectionLimits,
): number | null {
  const bracket = narrowToSignChange(f, low, high, limits)
  return bracket === null ? null : bracket.low + (bracket.high - bracket.low) / 2
}
