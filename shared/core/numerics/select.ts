import { PreconditionError } from '../outcome.ts'

/**
 * Order statistic ⌈q·n⌉ of the first `count` values, by selection (Hoare): the array is partly reordered.
 * No interpolation: a quantile shown is one of the draws.
 */
export function quantileInPlace(values: Float64Array, q: number, count = values.length): number {
  if (count < 1 || count > values.length) throw new PreconditionError(`no quantile of ${count} values`)
  const rank = Math.min(count - 1, Math.max(0, Math.ceil(q * count) - 1))
  let low = 0
  let high = count - 1
  while (low < high) {
    const pivot = medianOfThree(at(values, low), at(values, (low + high) >>> 1), at(values, high))
    let i = low
    let j = high
    while (i <= j) {
      while (at(values, i) < pivot) i++
      while (at(values, j) > pivot) j--
      if (i <= j) {
        const swap = at(values, i)
        values[i] = at(values, j)
        values[j] = swap
        i++
        j--
      }
    }
    if (rank <= j) high = j
    else if (rank >= i) low = i
    else break
  }
  return at(values, rank)
}

const at = (values: Float64Array, index: number): number => values[index] as number

const medianOfThree = (a: number, b: number, c: number): number =>
  Math.max(Math.min(a, b), Math.min(Math.max(a, b), c))

/** P10, P50 and P90 in one go. */
export function spreadInPlace(
  values: Float64Array,
  count = values.length,
): { p10: number; p50: number; p90: number } {
  return {
    p10: quantileInPlace(values, 0.1, count),
    p50: quantileInPlace(values, 0.5, count),
    p90: quantileInPlace(values, 0.9, count),
  }
}
