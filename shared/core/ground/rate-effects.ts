import { PreconditionError } from '../outcome.ts'
import { normalCdf, normalDensity } from '../statistics/normal.ts'

/** Spread of ln(rate) before any bore was seen: what the model's own factors leave open. */
export const PRIOR_SPREAD = 0.43
/** Spread of ln(rate) from one bore to the next in ground called the same. */
export const BORE_SPREAD = 0.35

/**
 * What past bores say about the rate: the logarithm of "observed over planned" is the sum of what the ground, the tool
 * and the crew add, and of what differs from bore to bore. Each adds a normal unknown, so the update is a closed form.
 */
export type RateEffects = {
  /** Names of the unknowns, in the order of the means and of the rows of the covariance. */
  readonly names: readonly string[]
  readonly mean: readonly number[]
  readonly covariance: readonly (readonly number[])[]
}

/** One past bore: which unknowns it speaks of, and ln(observed/planned); or, where it stalled, that it was below that. */
export type RateMark = {
  readonly effects: readonly string[]
  readonly logRatio: number
  readonly stalled: boolean
}

/** Nothing seen yet: every unknown about zero, with its own standard deviation. */
export function unseenEffects(deviations: Readonly<Record<string, number>>): RateEffects {
  const names = Object.keys(deviations)
  return {
    names,
    mean: names.map(() => 0),
    covariance: names.map((row) => names.map((column) => (row === column ? (deviations[row] ?? 0) ** 2 : 0))),
  }
}

const indexOf = (known: RateEffects, name: string): number => {
  const index = known.names.indexOf(name)
  if (index < 0) throw new PreconditionError(`no effect is called ${name}`)
  return index
}

/** Mean and variance of the sum of some unknowns. */
export function sumOfEffects(
  known: RateEffects,
  effects: readonly string[],
): { readonly mean: number; readonly variance: number } {
  const at = effects.map((name) => indexOf(known, name))
  return {
    mean: at.reduce((sum, i) => sum + (known.mean[i] ?? 0), 0),
    variance: at.reduce(
      (sum, i) => sum + at.reduce((inner, j) => inner + (known.covariance[i]?.[j] ?? 0), 0),
      0,
    ),
  }
}

/** How far a mark moves the sum, and how much of the sum's variance it takes away, each per unit of that variance. */
type Pull = { readonly shift: number; readonly shrink: number }

const pullOfReading = (error: number, total: number): Pull => ({ shift: error / total, shrink: 1 / total })

/**
 * A stalled bore says only "slower than this". Its likelihood is Φ((c − θ)/σ); the normal law with the same mean and
 * variance as the true posterior has a closed form. Leaving stalls out would teach from the lucky bores alone.
 */
function pullOfStall(error: number, total: number): Pull {
  const deviation = Math.sqrt(total)
  const z = error / deviation
  // Far below the limit φ/Φ nears −z; past −30 the quotient of two vanishing numbers is replaced by that.
  const mills = z < -30 ? -z : normalDensity(z) / normalCdf(z)
  return { shift: -mills / deviation, shrink: (mills * (z + mills)) / total }
}

/** Takes one mark in; `boreSpread` is the standard deviation of ln(rate) from one bore to the next. */
export function learnFromBore(known: RateEffects, mark: RateMark, boreSpread: number): RateEffects {
  const { mean, variance } = sumOfEffects(known, mark.effects)
  const total = variance + boreSpread ** 2
  const error = mark.logRatio - mean
  const { shift, shrink } = mark.stalled ? pullOfStall(error, total) : pullOfReading(error, total)
  const at = mark.effects.map((name) => indexOf(known, name))
  // Covariance of each unknown with the sum the mark is about.
  const along = known.names.map((_, i) => at.reduce((sum, j) => sum + (known.covariance[i]?.[j] ?? 0), 0))
  return {
    names: known.names,
    mean: known.mean.map((each, i) => each + (along[i] ?? 0) * shift),
    covariance: known.covariance.map((row, i) =>
      row.map((each, j) => each - (along[i] ?? 0) * (along[j] ?? 0) * shrink),
    ),
  }
}

/** Readings first, stalls last: the order of readings does not matter, and a stall is judged by what they taught. */
export function learnFromBores(
  start: RateEffects,
  marks: readonly RateMark[],
  boreSpread: number,
): RateEffects {
  const inOrder = [...marks.filter((mark) => !mark.stalled), ...marks.filter((mark) => mark.stalled)]
  return inOrder.reduce((known, mark) => learnFromBore(known, mark, boreSpread), start)
}
