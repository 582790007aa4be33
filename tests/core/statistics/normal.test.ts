import stdlibCdf from '@stdlib/stats-base-dists-normal-cdf'
import stdlibQuantile from '@stdlib/stats-base-dists-normal-quantile'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { normalCdf, normalDensity, normalQuantile } from '../../../shared/core/statistics/normal.ts'

const relative = (found: number, wanted: number): number => Math.abs(found - wanted) / Math.abs(wanted)

describe('the normal law', () => {
  it('agrees with an independent library for Φ, far into the lower tail', () => {
    for (let x = -37; x <= 9; x += 0.0625) {
      expect(relative(normalCdf(x), stdlibCdf(x, 0, 1))).toBeLessThan(5e-13)
    }
  })

  it('agrees with an independent library for Φ⁻¹', () => {
    // The library inverts erf and gives up below p = 1e-17; 1e-9 still tells a wrong coefficient.
    for (const p of [1e-9, 0.001, 0.07, 0.075, 0.2, 0.425, 0.5001, 0.9, 0.93, 0.999, 1 - 1e-9]) {
      expect(Math.abs(normalQuantile(p) - stdlibQuantile(p, 0, 1))).toBeLessThan(
        1e-9 * (1 + Math.abs(normalQuantile(p))),
      )
    }
  })

  it('prints the values of the published algorithm', () => {
    // Wichura 1988, the three test values given with AS 241.
    expect(normalQuantile(0.25)).toBeCloseTo(-0.6744897501960817, 15)
    expect(normalQuantile(0.001)).toBeCloseTo(-3.090232306167814, 14)
    expect(normalQuantile(1e-20)).toBeCloseTo(-9.26234008979841, 13)
  })

  it('undoes itself', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-300, max: 1 - 1e-12, noNaN: true }), (p) => {
        expect(relative(normalCdf(normalQuantile(p)), p)).toBeLessThan(1e-11)
      }),
    )
  })

  it('is symmetric, never falls, and its slope is the density', () => {
    fc.assert(
      fc.property(fc.double({ min: -8, max: 8, noNaN: true }), (x) => {
        expect(normalCdf(x) + normalCdf(-x)).toBeCloseTo(1, 14)
        expect(normalCdf(x + 1e-3)).toBeGreaterThanOrEqual(normalCdf(x))
        expect((normalCdf(x + 1e-4) - normalCdf(x - 1e-4)) / 2e-4).toBeCloseTo(normalDensity(x), 7)
      }),
    )
  })

  it('has its ends', () => {
    expect(normalCdf(Number.POSITIVE_INFINITY)).toBe(1)
    expect(normalCdf(Number.NEGATIVE_INFINITY)).toBe(0)
    expect(() => normalQuantile(0)).toThrow()
    expect(() => normalQuantile(1)).toThrow()
    expect(() => normalCdf(Number.NaN)).toThrow()
  })
})
