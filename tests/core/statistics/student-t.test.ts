import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  logGamma,
  regularisedBeta,
  regularisedLowerGamma,
} from '../../../shared/core/statistics/gamma-functions.ts'
import { normalQuantile } from '../../../shared/core/statistics/normal.ts'
import { studentTCdf, studentTQuantile } from '../../../shared/core/statistics/student-t.ts'

const relative = (found: number, wanted: number): number => Math.abs(found / wanted - 1)

/** Inverted from the incomplete beta function with 50 digits, independent of this code. */
const QUANTILES = [
  [0.95, 1, 6.313751514675043],
  [0.975, 2, 4.302652729749464],
  [0.975, 5, 2.5705818356363155],
  [0.95, 7, 1.8945786050900073],
  [0.9, 10, 1.3721836411103356],
  [0.995, 34, 2.7283943670707203],
  [0.975, 100, 1.9839715185235522],
] as const

describe("Student's law", () => {
  it.each(QUANTILES)('has its quantile %f with %i degrees of freedom', (p, freedom, wanted) => {
    expect(relative(studentTQuantile(p, freedom), wanted)).toBeLessThan(1e-12)
  })

  it('is the closed form for one and two degrees of freedom', () => {
    for (const p of [1e-6, 0.003, 0.2, 0.6, 0.999]) {
      // Cauchy: tan(π(p − ½)); two degrees: (2p − 1)/√(2p(1 − p)).
      expect(relative(studentTQuantile(p, 1), Math.tan(Math.PI * (p - 0.5)))).toBeLessThan(1e-9)
      expect(relative(studentTQuantile(p, 2), (2 * p - 1) / Math.sqrt(2 * p * (1 - p)))).toBeLessThan(1e-9)
    }
  })

  it('nears the normal law with many degrees of freedom', () => {
    expect(relative(studentTQuantile(0.9, 1e7), normalQuantile(0.9))).toBeLessThan(1e-6)
  })

  it('undoes itself and rises', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-9, max: 1 - 1e-9, noNaN: true }),
        fc.double({ min: 1, max: 200, noNaN: true }),
        (p, freedom) => {
          const t = studentTQuantile(p, freedom)
          expect(Math.abs(studentTCdf(t, freedom) - p)).toBeLessThan(1e-12)
          expect(studentTCdf(t + 1, freedom)).toBeGreaterThanOrEqual(studentTCdf(t, freedom))
        },
      ),
    )
  })

  it('refuses what is no probability', () => {
    expect(() => studentTQuantile(0, 3)).toThrow('0 < p < 1')
    expect(() => studentTCdf(0, 0)).toThrow('above zero')
  })
})

describe('the functions below it', () => {
  it('are factorials, Γ(½) = √π and elementary where they have a closed form', () => {
    expect(logGamma(11)).toBeCloseTo(Math.log(3_628_800), 12)
    expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.PI) / 2, 13)
    for (const x of [0.01, 0.7, 3, 20]) {
      expect(relative(regularisedLowerGamma(1, x), -Math.expm1(-x))).toBeLessThan(1e-13)
    }
    for (const x of [0.1, 0.5, 0.95]) {
      expect(relative(regularisedBeta(x, 1, 3), 1 - (1 - x) ** 3)).toBeLessThan(1e-13)
      expect(relative(regularisedBeta(x, 4, 1), x ** 4)).toBeLessThan(1e-13)
    }
  })
})
