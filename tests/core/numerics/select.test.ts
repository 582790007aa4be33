import fc from 'fast-check'
import { expect, test } from 'vitest'
import { quantileInPlace, spreadInPlace } from '../../../shared/core/numerics/select.ts'

const SEED = 20261124

test(`selection equals sorting, order statistic ⌈q·n⌉ (seed ${SEED})`, () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ noNaN: true }), { minLength: 1, maxLength: 300 }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (values, q) => {
        const sorted = [...values].sort((a, b) => a - b)
        const rank = Math.min(values.length - 1, Math.max(0, Math.ceil(q * values.length) - 1))
        expect(quantileInPlace(Float64Array.from(values), q)).toBe(sorted[rank])
      },
    ),
    { seed: SEED, numRuns: 400 },
  )
})

test('many equal values and infinities do not slow or spoil it', () => {
  const values = Float64Array.from({ length: 4096 }, (_, i) => (i % 3 === 0 ? Number.POSITIVE_INFINITY : 7))
  expect(spreadInPlace(values)).toEqual({ p10: 7, p50: 7, p90: Number.POSITIVE_INFINITY })
})

test('only the first `count` values are looked at', () => {
  expect(quantileInPlace(Float64Array.from([3, 1, 2, -100]), 0.5, 3)).toBe(2)
})
