import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ageReplacement } from '../../../shared/core/wear/age-replacement.ts'
import { archardWear } from '../../../shared/core/wear/archard-wear.ts'
import { fitWeibull } from '../../../shared/core/wear/weibull-likelihood.ts'

/** Long-run cost of replacing at age t by plain summation, independent of the gamma functions. */
function costByHand(t: number, shape: number, ratio: number): number {
  const steps = 20_000
  let service = 0
  for (let i = 0; i < steps; i++) service += Math.exp(-((((i + 0.5) * t) / steps) ** shape)) * (t / steps)
  const alive = Math.exp(-(t ** shape))
  return (alive + ratio * (1 - alive)) / service
}

describe('age replacement', () => {
  it('costs least at the age it names', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1.5, max: 5, noNaN: true }),
        fc.double({ min: 3, max: 30, noNaN: true }),
        (shape, costRatio) => {
          const { age } = ageReplacement.fn({ shape, scale: 1, costRatio })
          const best = age ?? Number.NaN
          const least = costByHand(best, shape, costRatio)
          expect(costByHand(best * 1.05, shape, costRatio)).toBeGreaterThan(least)
          expect(costByHand(best * 0.95, shape, costRatio)).toBeGreaterThan(least)
        },
      ),
      { numRuns: 25 },
    )
  })

  it('has no age where failing costs no more, or nothing wears', () => {
    expect(ageReplacement.fn({ shape: 3, scale: 9, costRatio: 1 }).reason).toBe('failing-costs-no-more')
    expect(ageReplacement.fn({ shape: 0.8, scale: 9, costRatio: 9 })).toEqual({
      age: null,
      costShare: 1,
      reason: 'does-not-wear-out',
    })
  })
})

describe('lives', () => {
  it('scale with their unit and keep their shape', () => {
    const lives = [54, 187, 216, 240]
    const one = fitWeibull(lives, [500])
    const other = fitWeibull(
      lives.map((each) => each * 3600),
      [500 * 3600],
    )
    expect(other.shape / one.shape).toBeCloseTo(1, 10)
    expect(other.scale / one.scale / 3600).toBeCloseTo(1, 10)
  })

  it('need two different ages', () => {
    expect(() => fitWeibull([5, 5], [])).toThrow('two failures at different ages')
    expect(() => fitWeibull([], [5])).toThrow('at least one failure')
  })
})

describe('Archard', () => {
  it('differs by three between its two forms', () => {
    const given = { coefficient: 1e-4, loadN: 10, distanceM: 5, hardnessPa: 1e9 }
    expect(archardWear.fn({ ...given, form: 'kfsh' }).volumeM3).toBe(
      3 * archardWear.fn({ ...given, form: 'kfs3h' }).volumeM3,
    )
  })
})
