import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  learnFromBores,
  type RateMark,
  sumOfEffects,
  unseenEffects,
} from '../../../shared/core/ground/rate-effects.ts'
import { normalCdf, normalQuantile } from '../../../shared/core/statistics/normal.ts'
import '../../support/one-seed.ts'

const TAU = 0.43
const SIGMA = 0.35
const mark = (ratio: number, stalled = false): RateMark => ({
  effects: ['ground'],
  logRatio: Math.log(ratio),
  stalled,
})

/** Mean and deviation of θ by plain summation over a grid: no closed form, nothing of ours but Φ. */
function byGrid(readings: readonly number[], stalls: readonly number[]) {
  let weight = 0
  let first = 0
  let second = 0
  for (let i = -30_000; i <= 30_000; i++) {
    const theta = i / 5000
    const log = readings.reduce(
      (sum, ratio) => sum - (Math.log(ratio) - theta) ** 2 / (2 * SIGMA ** 2),
      -(theta ** 2) / (2 * TAU ** 2),
    )
    const chance = stalls.reduce(
      (product, c) => product * normalCdf((Math.log(c) - theta) / SIGMA),
      Math.exp(log),
    )
    weight += chance
    first += chance * theta
    second += chance * theta ** 2
  }
  const mean = first / weight
  return { mean, deviation: Math.sqrt(second / weight - mean ** 2) }
}

describe('learning the rate from bores', () => {
  it.each([
    { readings: [1.4, 0.9], stalls: [] },
    { readings: [0.5], stalls: [0.3] },
    { readings: [1.3, 0.8, 1.1], stalls: [0.2, 0.15, 0.2] },
    { readings: [], stalls: [0.1, 0.1] },
  ])('agrees with a grid: $readings, stalled below $stalls', ({ readings, stalls }) => {
    const known = learnFromBores(
      unseenEffects({ ground: TAU }),
      [...readings.map((ratio) => mark(ratio)), ...stalls.map((ratio) => mark(ratio, true))],
      SIGMA,
    )
    const found = sumOfEffects(known, ['ground'])
    const wanted = byGrid(readings, stalls)
    // Exact to rounding with one stall at most; several are matched one after another, which costs a little.
    const close = stalls.length > 1 ? 0.02 : 1e-6
    expect(Math.abs(found.mean - wanted.mean)).toBeLessThan(close)
    expect(Math.abs(Math.sqrt(found.variance) - wanted.deviation)).toBeLessThan(close)
  })

  it('shares what it learns between ground, tool and crew, and leaves strangers alone', () => {
    const start = unseenEffects({ clay: 0.35, sand: 0.35, 'tool 1': 0.2, 'crew 1': 0.15 })
    const known = learnFromBores(
      start,
      [{ effects: ['clay', 'tool 1', 'crew 1'], logRatio: Math.log(2), stalled: false }],
      SIGMA,
    )
    const sum = sumOfEffects(known, ['clay', 'tool 1', 'crew 1'])
    // By hand: the sum of three has variance 0.185, a reading of variance 0.1225 takes 0.185/0.3075 of the error.
    expect(sum.mean).toBeCloseTo((0.185 / (0.185 + SIGMA ** 2)) * Math.log(2), 12)
    expect(sumOfEffects(known, ['sand']).mean).toBe(0)
    expect(sumOfEffects(known, ['sand']).variance).toBeCloseTo(0.35 ** 2, 15)
    expect(sumOfEffects(known, ['sand', 'tool 1']).mean).toBeGreaterThan(0)
  })

  it('does not depend on the order of readings, and no reading widens what is known', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.1, max: 8, noNaN: true }), { minLength: 1, maxLength: 8 }),
        (ratios) => {
          const start = unseenEffects({ ground: TAU })
          const forth = sumOfEffects(
            learnFromBores(
              start,
              ratios.map((r) => mark(r)),
              SIGMA,
            ),
            ['ground'],
          )
          const back = sumOfEffects(
            learnFromBores(
              start,
              ratios.toReversed().map((r) => mark(r)),
              SIGMA,
            ),
            ['ground'],
          )
          expect(forth.mean).toBeCloseTo(back.mean, 10)
          const fewer = sumOfEffects(
            learnFromBores(
              start,
              ratios.slice(1).map((r) => mark(r)),
              SIGMA,
            ),
            ['ground'],
          )
          expect(forth.variance).toBeLessThan(fewer.variance)
        },
      ),
    )
  })

  it('a stall never makes the ground faster', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.1, max: 4, noNaN: true }), { maxLength: 5 }),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (ratios, limit) => {
          const known = learnFromBores(
            unseenEffects({ ground: TAU }),
            ratios.map((r) => mark(r)),
            SIGMA,
          )
          const after = learnFromBores(known, [mark(limit, true)], SIGMA)
          expect(sumOfEffects(after, ['ground']).mean).toBeLessThanOrEqual(
            sumOfEffects(known, ['ground']).mean,
          )
          expect(sumOfEffects(after, ['ground']).variance).toBeGreaterThan(0)
        },
      ),
    )
  })

  it('covers what it says: the band of 2,000 simulated crews, stalls among them', () => {
    // Deterministic normal scores: a fresh stream of our own, not the one of the plan.
    let state = 1
    const uniform = () => {
      state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
      return (state + 0.5) / 2 ** 32
    }
    const normal = () => normalQuantile(uniform())
    const z = normalQuantile(0.9)
    const stall = Math.log(0.4)
    let covered = 0
    for (let crew = 0; crew < 2000; crew++) {
      const truth = TAU * normal()
      const marks = Array.from({ length: crew % 7 }, (): RateMark => {
        const logRatio = truth + SIGMA * normal()
        return { effects: ['ground'], logRatio: Math.max(stall, logRatio), stalled: logRatio < stall }
      })
      const { mean, variance } = sumOfEffects(learnFromBores(unseenEffects({ ground: TAU }), marks, SIGMA), [
        'ground',
      ])
      if (Math.abs(truth - mean) <= z * Math.sqrt(variance)) covered++
    }
    expect(covered / 2000).toBeGreaterThan(0.764)
    expect(covered / 2000).toBeLessThan(0.836)
  })
})
