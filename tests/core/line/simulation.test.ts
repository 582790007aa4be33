import { describe, expect, test } from 'vitest'
import { contactChance } from '../../../shared/core/line/contact-chance.ts'
import { parallelContact } from '../../../shared/core/line/parallel-contact.ts'
import { pathBelief } from '../../../shared/core/line/path-belief.ts'
import { pathCovarianceM2 } from '../../../shared/core/line/path-covariance.ts'
import { normals, walk } from './simulated-paths.ts'

/** Independent judge: bores walked step by step, a million of them in the long form. */
const PATHS = process.env.UNDERLANE_SLOW === '1' ? 1_000_000 : 40_000
/** What is left of chance in a count of so many, six times over in the long form's favour. */
const PATIENCE_MS = 300_000
const SLACK = 6 / Math.sqrt(PATHS)
const AIM = 0.005 / 1.2
const DRIFT = 5.1e-3
const wander = { aimRad: AIM, driftRadPerSqrtM: DRIFT }
const LENGTH_M = 15
const STEPS = 30

const normal = normals(20261124)
const at = (stationM: number) => Math.round((stationM * STEPS) / LENGTH_M)

type Sums = { n: number; x: number; xx: number }
const sums = (): Sums => ({ n: 0, x: 0, xx: 0 })
const add = (to: Sums, x: number) => {
  to.n += 1
  to.x += x
  to.xx += x * x
}
const sigmaOf = ({ n, x, xx }: Sums) => Math.sqrt(xx / n - (x / n) ** 2)
const meanOf = ({ n, x }: Sums) => x / n

function simulate() {
  const at5 = sums()
  const at15 = sums()
  const product = sums()
  const seenOnLine = sums()
  const seenOff = sums()
  let touched = 0
  for (let path = 0; path < PATHS; path++) {
    const y = walk(normal, AIM, DRIFT, LENGTH_M, STEPS)
    const y5 = y[at(5)] ?? 0
    const y15 = y[at(15)] ?? 0
    const y6 = y[at(6)] ?? 0
    const read8 = (y[at(8)] ?? 0) + 0.01 * normal()
    add(at5, y5)
    add(at15, y15)
    add(product, y5 * y15)
    // A window about a reading stands for the reading itself: 6 mm beside 76 mm of spread.
    if (Math.abs(read8) < 0.006) add(seenOnLine, y15)
    if (Math.abs(read8 - 0.08) < 0.006) add(seenOff, y15)
    if (Math.abs(y6 + 0.0152 * normal() - 0.12) < 0.06765) touched += 1
  }
  return { at5, at15, product, seenOnLine, seenOff, touched: touched / PATHS }
}

describe('walked bores agree with the formulas', () => {
  const judged = simulate()
  test('spread at 5 m and at 15 m', () => {
    const belief = pathBelief(wander, [])
    expect(Math.abs(sigmaOf(judged.at5) / belief.sigmaM(5) - 1)).toBeLessThan(SLACK)
    expect(Math.abs(sigmaOf(judged.at15) / belief.sigmaM(15) - 1)).toBeLessThan(SLACK)
    expect(Math.abs(sigmaOf(judged.at15) * 1000 - 182.12)).toBeLessThan(182.12 * SLACK)
  })
  test('how 5 m and 15 m go together: 0.005637 m²', () => {
    const shared = meanOf(judged.product)
    expect(Math.abs(shared - pathCovarianceM2(wander, 5, 15))).toBeLessThan(0.01 * SLACK)
    expect(Math.abs(shared - 0.005637)).toBeLessThan(0.01 * SLACK)
  })
  test('what a look at 8 m good to 10 mm leaves at 15 m: 78.61 mm, and where it then lies', () => {
    const kept = 6 / Math.sqrt(judged.seenOnLine.n)
    expect(Math.abs(sigmaOf(judged.seenOnLine) * 1000 - 78.61)).toBeLessThan(78.61 * (kept + 0.005))
    const belief = pathBelief(wander, [{ stationM: 8, offsetM: 0.08, sigmaM: 0.01, isSeen: true }])
    const off = 6 / Math.sqrt(judged.seenOff.n)
    expect(Math.abs(meanOf(judged.seenOff) - belief.meanM(15))).toBeLessThan(0.0786 * off + 0.003)
  })
  test('how often a line at 6 m is touched', () => {
    const sigma6 = Math.sqrt(pathCovarianceM2(wander, 6, 6))
    const { probability } = contactChance.fn({
      separationM: 0.12,
      reachM: 0.06765,
      sigmaM: Math.hypot(sigma6, 0.0152),
    })
    expect(probability).toBeGreaterThan(0.1)
    expect(Math.abs(judged.touched - probability)).toBeLessThan(SLACK)
  })
})

describe('a line alongside', () => {
  const base = {
    sideways: pathBelief(wander, []),
    vertical: pathBelief(wander, []),
    lengthM: LENGTH_M,
    fromM: 0,
    toM: LENGTH_M,
    offsetM: 0.3,
    belowM: () => 0.05,
    reachM: 0.08,
    lineSigmaM: 0.0153,
    seed: 1,
    draws: 4096,
  }
  test(
    'is touched as often as in walked bores',
    () => {
      const count = PATHS / 4
      let touched = 0
      for (let path = 0; path < count; path++) {
        const x = walk(normal, AIM, DRIFT, LENGTH_M, 4 * STEPS)
        const z = walk(normal, AIM, DRIFT, LENGTH_M, 4 * STEPS)
        const right = base.offsetM + base.lineSigmaM * normal()
        const below = base.belowM() + base.lineSigmaM * normal()
        if (x.some((each, step) => Math.hypot(each - right, (z[step] ?? 0) - below) < base.reachM))
          touched += 1
      }
      const found = parallelContact(base)
      expect(found.probability).toBeGreaterThan(0.02)
      expect(Math.abs(found.probability - touched / count)).toBeLessThan(0.006)
      expect(found.probability).toBeGreaterThanOrEqual(found.atOneStation)
    },
    PATIENCE_MS,
  )
  test('the same seed gives the same figure; farther off is touched less; two planes count, not one', () => {
    const chance = (change: Partial<typeof base>) => parallelContact({ ...base, ...change }).probability
    expect(chance({})).toBe(chance({}))
    expect(chance({ toM: 6 })).toBeLessThan(chance({}))
    expect(chance({ offsetM: 0.6 })).toBeLessThan(chance({}))
    expect(chance({ offsetM: -0.3 })).toBeCloseTo(chance({}), 1)
    expect(chance({ belowM: () => 0.6 })).toBeLessThan(chance({}))
    expect(chance({ offsetM: 0, belowM: () => 0 })).toBe(1)
  })
})
