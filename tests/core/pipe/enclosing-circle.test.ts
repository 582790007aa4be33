import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bundleDiameter } from '../../../shared/core/pipe/bundle-diameter.ts'
import { bundleOfUnequal, enclosingDiameterM } from '../../../shared/core/pipe/enclosing-circle.ts'

const diameters = (most: number) =>
  fc.array(fc.double({ min: 0.005, max: 0.2, noNaN: true }), { minLength: 1, maxLength: most })

describe('a bundle of unlike pipes', () => {
  it('is two diameters for two, and Descartes’ outer circle for three that touch one another', () => {
    expect(bundleOfUnequal([0.06, 0.03]).diameterM).toBeCloseTo(0.09, 9)
    // Bends 1/3, 1/2 and 1/2: the outer one is 4/3 − 2·√(1/6 + 1/6 + 1/4) = −0.19419.
    const outer = -1 / (4 / 3 - 2 * Math.sqrt(1 / 6 + 1 / 6 + 1 / 4))
    expect(bundleOfUnequal([6, 4, 4]).diameterM).toBeCloseTo(2 * outer, 6)
  })

  it('leaves a third pipe in the gap beside the first two when it fits there', () => {
    // Two equal circles in their ring leave room for a third of a third of the ring's radius.
    expect(bundleOfUnequal([1, 1, 0.66]).diameterM).toBeCloseTo(2, 6)
    expect(bundleOfUnequal([1, 1, 0.68]).diameterM).toBeGreaterThan(2.0003)
  })

  it('finds the known rings of equal pipes', () => {
    for (const count of [2, 3, 4, 5]) {
      const known = bundleDiameter.fn({ outsideDiameterM: 0.04, count }).diameterM
      expect(enclosingDiameterM(Array<number>(count).fill(0.04))).toBeLessThanOrEqual(known * (1 + 1e-6))
      expect(enclosingDiameterM(Array<number>(count).fill(0.04))).toBeGreaterThan(known * (1 - 1e-6))
    }
  })

  it('holds every pipe, none lying in another', () => {
    fc.assert(
      fc.property(diameters(6), (given) => {
        const bundle = bundleOfUnequal(given)
        const ring = bundle.diameterM / 2
        const pipes = bundle.pipes ?? []
        if (bundle.pipes !== null) expect(pipes.map((p) => p.radius * 2).sort()).toEqual([...given].sort())
        pipes.forEach((one, index) => {
          expect(Math.hypot(one.x, one.y) + one.radius).toBeLessThanOrEqual(ring * (1 + 1e-6))
          for (const two of pipes.slice(index + 1)) {
            expect(Math.hypot(one.x - two.x, one.y - two.y)).toBeGreaterThanOrEqual(
              one.radius + two.radius - 1e-6 * ring,
            )
          }
        })
      }),
      { numRuns: 60 },
    )
  })

  it('is at least the largest pipe and the area of all, at most all in a row', () => {
    fc.assert(
      fc.property(diameters(30), (given) => {
        const diameterM = enclosingDiameterM(given)
        expect(diameterM).toBeGreaterThanOrEqual(Math.max(...given) * (1 - 1e-9))
        expect(diameterM ** 2 * (1 + 1e-9)).toBeGreaterThanOrEqual(given.reduce((sum, d) => sum + d * d, 0))
        expect(diameterM).toBeLessThanOrEqual(given.reduce((sum, d) => sum + d, 0) * (1 + 1e-9))
      }),
      { numRuns: 40 },
    )
  })

  it('is nothing without pipes', () => {
    expect(() => bundleOfUnequal([])).toThrow()
    expect(() => bundleOfUnequal([0.1, 0])).toThrow()
  })
})
