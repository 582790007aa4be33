import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { degradationForecast } from '../../../shared/core/wear/degradation-forecast.ts'
import {
  chanceLimitPassed,
  learnWearRate,
  useToLimitS,
  type WearInterval,
} from '../../../shared/core/wear/wear-increments.ts'

const H = 3600
const MM = 1e-3
const PRIOR = { rateMPerS: (0.01 * MM) / H, weightS: 10 * H, spread: Math.sqrt(0.15) }
const READINGS: readonly WearInterval[] = [
  { useS: 20 * H, wornM: 0.25 * MM },
  { useS: 35 * H, wornM: 0.41 * MM },
  { useS: 25 * H, wornM: 0.33 * MM },
]
const interval = fc.record({
  useS: fc.double({ min: H, max: 200 * H, noNaN: true }),
  wornM: fc.double({ min: 0, max: 2 * MM, noNaN: true }),
})

describe('wear learned from increments', () => {
  it('is the worked example of exact fractions', () => {
    const known = learnWearRate(PRIOR, READINGS)
    // m = 109/9000 mm/h, b = 43013/126000000, a = 4.5: by hand, in fractions.
    expect((known.rateMPerS * H) / MM / (109 / 9000)).toBeCloseTo(1, 14)
    expect(known.freedom).toBe(9)
    expect((known.varianceM2PerS * H) / MM ** 2 / (43_013 / 126_000_000 / 4.5)).toBeCloseTo(1, 13)
  })

  it('gives the chance after each planned bore', () => {
    const known = learnWearRate(PRIOR, READINGS)
    // 12, 9, 15, 8, 11 hours one after another; 4 million Monte Carlo draws, printed with four decimals.
    const wanted = [0, 0, 0.0101, 0.1512, 0.7445]
    let usedS = 0
    ;[12, 9, 15, 8, 11].forEach((hours, index) => {
      usedS += hours * H
      expect(Math.abs(chanceLimitPassed(known, 0.61 * MM, usedS) - (wanted[index] ?? 0))).toBeLessThan(6e-5)
    })
  })

  it('reads its own quantiles back as chances', () => {
    fc.assert(
      fc.property(
        fc.array(interval, { maxLength: 6 }),
        fc.double({ min: 1e-5, max: 5e-3, noNaN: true }),
        (readings, leftM) => {
          const known = learnWearRate(PRIOR, readings)
          for (const p of [0.1, 0.5, 0.9]) {
            const useS = useToLimitS(known, leftM, p)
            if (useS !== null) expect(chanceLimitPassed(known, leftM, useS)).toBeCloseTo(p, 8)
          }
        },
      ),
    )
  })

  it('never gives more life for more wear', () => {
    fc.assert(
      fc.property(
        fc.array(interval, { minLength: 1, maxLength: 5 }),
        fc.double({ min: 1e-6, max: 1e-3, noNaN: true }),
        fc.double({ min: 1e-4, max: 5e-3, noNaN: true }),
        (readings, moreM, leftM) => {
          const before = learnWearRate(PRIOR, readings)
          // All intervals worn faster in proportion to their use: the rate rises, the scatter about it stays.
          const extra = moreM / readings.reduce((sum, each) => sum + each.useS, 0)
          const after = learnWearRate(
            { ...PRIOR, rateMPerS: PRIOR.rateMPerS },
            readings.map((each) => ({ ...each, wornM: each.wornM + extra * each.useS })),
          )
          const likely = useToLimitS(before, leftM, 0.5) ?? Number.POSITIVE_INFINITY
          expect(useToLimitS(after, leftM, 0.5) ?? Number.POSITIVE_INFINITY).toBeLessThanOrEqual(likely)
          expect(useToLimitS(before, leftM / 2, 0.1) ?? 0).toBeLessThanOrEqual(
            useToLimitS(before, leftM, 0.1) ?? Number.POSITIVE_INFINITY,
          )
        },
      ),
    )
  })

  it('says that there is no bound yet instead of inventing one', () => {
    const found = degradationForecast.fn({
      priorRateMPerS: PRIOR.rateMPerS,
      priorWeightS: H,
      readings: [],
      remainingM: MM,
      // Nobody knows this part, to a factor of several: it may last for ever.
      spread: 3,
    })
    expect(found).toMatchObject({ p90S: null, bound: 'none-yet' })
    expect(found.p10S).toBeGreaterThan(0)
  })

  it('is due at once when nothing is left', () => {
    const known = learnWearRate(PRIOR, [])
    expect(useToLimitS(known, 0, 0.9)).toBe(0)
    expect(chanceLimitPassed(known, -MM, 0)).toBe(1)
  })
})
