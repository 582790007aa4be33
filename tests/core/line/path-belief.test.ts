import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { observedDeviation } from '../../../shared/core/line/observed-deviation.ts'
import { believed, pathBelief, type Reading } from '../../../shared/core/line/path-belief.ts'
import {
  AIM_DEFAULT_RAD,
  DRIFT_DEFAULT_RAD_PER_SQRT_M,
  pathCovarianceM2,
} from '../../../shared/core/line/path-covariance.ts'
import { choleskyFactor } from '../../../shared/core/numerics/cholesky.ts'
import { chanceWithin, offByM } from '../../../shared/core/statistics/off-by.ts'

const wander = { aimRad: AIM_DEFAULT_RAD, driftRadPerSqrtM: DRIFT_DEFAULT_RAD_PER_SQRT_M }
const reading = (stationM: number, offsetM: number, sigmaM: number, isSeen = true): Reading => ({
  stationM,
  offsetM,
  sigmaM,
  isSeen,
})
const station = fc.double({ min: 0.5, max: 20, noNaN: true })
const offset = fc.double({ min: -0.3, max: 0.3, noNaN: true })
const sigma = fc.double({ min: 0.005, max: 0.2, noNaN: true })
const anyReading = fc.tuple(station, offset, sigma, fc.boolean()).map((each) => reading(...each))

describe('a path nobody has seen', () => {
  const belief = pathBelief(wander, [])
  it('has no mean, the plain spread and no widening', () => {
    expect(belief.meanM(9)).toBe(0)
    expect(belief.sigmaM(9)).toBeCloseTo(Math.sqrt(pathCovarianceM2(wander, 9, 9)), 15)
    expect(belief.widening).toBe(1)
  })
})

describe('one look at the tool', () => {
  it('leaves the doubt worked out by hand: 78.61 mm at 15 m after a look at 8 m good to 10 mm', () => {
    const belief = pathBelief({ ...wander, aimRad: 0.005 / 1.2 }, [reading(8, 0, 0.01)])
    expect(belief.sigmaM(15) * 1000).toBeCloseTo(78.61, 2)
    const one = observedDeviation.fn({ stationM: 15, sightingM: 8, sightingErrorM: 0.01, ...wander })
    expect(pathBelief(wander, [reading(8, 0, 0.01)]).sigmaM(15)).toBeCloseTo(one.sigmaM, 12)
  })
  it('moves the rest of the path its way, and more the farther it goes', () => {
    const belief = pathBelief(wander, [reading(2, 0.02, 0.005)])
    expect(belief.meanM(2)).toBeGreaterThan(0.012)
    expect(belief.meanM(2)).toBeLessThan(0.02)
    expect(belief.meanM(6)).toBeGreaterThan(2 * belief.meanM(2))
  })
})

describe('several looks', () => {
  it('that fit together leave no more doubt than one alone', () => {
    fc.assert(
      fc.property(station, station, station, sigma, (at, first, second, error) => {
        const one = pathBelief(wander, [reading(first, 0, error)])
        const both = pathBelief(wander, [reading(first, 0, error), reading(second, 0, error)])
        expect(both.widening).toBe(1)
        expect(both.sigmaM(at)).toBeLessThanOrEqual(one.sigmaM(at) * (1 + 1e-9) + 1e-9)
      }),
    )
  })
  it('that disagree widen every doubt', () => {
    const agree = pathBelief(wander, [reading(8, 0.01, 0.026, false), reading(8, 0.01, 0.026, false)])
    const not = pathBelief(wander, [reading(8, -0.1, 0.026, false), reading(8, 0.1, 0.026, false)])
    expect(agree.widening).toBe(1)
    expect(not.widening).toBeGreaterThan(2)
    expect(not.sigmaM(12)).toBeCloseTo(agree.sigmaM(12) * not.widening, 9)
  })
  it('the farther apart they are, the wider', () => {
    fc.assert(
      fc.property(offset, sigma, (apart, error) => {
        const widening = (times: number) =>
          pathBelief(wander, [reading(8, -times * apart, error), reading(8.5, times * apart, error)]).widening
        expect(widening(2)).toBeGreaterThanOrEqual(widening(1))
      }),
    )
  })
  it('a tool seen in a hole beats an instrument: the path is the seen one, the doubt says they disagree', () => {
    const seen = reading(8, 0, 0.015)
    const sonde = reading(8.2, 0.2, 0.03, false)
    const belief = pathBelief(wander, [seen, sonde])
    expect(believed([seen, sonde])).toEqual([seen])
    expect(belief.meanM(12)).toBe(pathBelief(wander, [seen]).meanM(12))
    expect(belief.widening).toBeGreaterThan(1.5)
    expect(believed([seen, { ...sonde, stationM: 9 }])).toHaveLength(2)
  })
  it('never give a negative or broken doubt', () => {
    fc.assert(
      fc.property(fc.array(anyReading, { maxLength: 12 }), station, (readings, at) => {
        const belief = pathBelief(wander, readings)
        expect(belief.sigmaM(at)).toBeGreaterThanOrEqual(0)
        expect(Number.isFinite(belief.meanM(at))).toBe(true)
        expect(belief.widening).toBeGreaterThanOrEqual(1)
      }),
    )
  })
  it('in any order give the same path', () => {
    fc.assert(
      fc.property(fc.array(anyReading, { minLength: 2, maxLength: 6 }), station, (readings, at) => {
        const forward = pathBelief(wander, readings)
        const back = pathBelief(wander, [...readings].reverse())
        expect(back.meanM(at)).toBeCloseTo(forward.meanM(at), 8)
        expect(back.sigmaM(at)).toBeCloseTo(forward.sigmaM(at), 8)
      }),
    )
  })
})

it('how far off: about zero it is the plain quantile, else what the chance within it says', () => {
  expect(offByM(0, 0.1, 0.9)).toBeCloseTo(0.16449, 5)
  fc.assert(
    fc.property(offset, sigma, fc.constantFrom(0.5, 0.9), (mean, error, share) => {
      expect(chanceWithin(mean, error, offByM(mean, error, share))).toBeCloseTo(share, 9)
      expect(offByM(mean, error, share)).toBeCloseTo(offByM(-mean, error, share), 9)
    }),
  )
  expect(offByM(0.03, 0, 0.9)).toBe(0.03)
  expect(chanceWithin(0.03, 0, 0.02)).toBe(0)
})

it('a factor multiplies back, and a matrix that is no covariance is our mistake', () => {
  const lower = choleskyFactor([
    [4, 2],
    [2, 5],
  ])
  expect(lower).toEqual([[2], [1, 2]])
  expect(() => choleskyFactor([[0]])).toThrow('not positive definite')
})
