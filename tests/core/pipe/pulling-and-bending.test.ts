import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { annulusVolume } from '../../../shared/core/pipe/annulus-volume.ts'
import { bendRadius } from '../../../shared/core/pipe/bend-radius.ts'
import { bundleDiameter } from '../../../shared/core/pipe/bundle-diameter.ts'
import { pipeLeadIn } from '../../../shared/core/pipe/pipe-lead-in.ts'
import { lowestPullLimit, pullInLimit, safePullStressPa } from '../../../shared/core/pipe/pull-in-limit.ts'
import { PSI_PA } from '../../../shared/tables/pull-stress.ts'

const GRADES = ['pe2708', 'pe3608', 'pe4710'] as const
const HOUR_S = 3600
const diameters = fc.double({ min: 0.01, max: 0.4, noNaN: true })
const ratios = fc.double({ min: 6, max: 41, noNaN: true })
const durations = fc.double({ min: 0, max: 30 * HOUR_S, noNaN: true })

describe('the pull-in limit', () => {
  it('falls with time and with the thinness of the wall, grows with the grade', () => {
    fc.assert(
      fc.property(diameters, ratios, durations, durations, (outsideDiameterM, dimensionRatio, a, b) => {
        const limit = (material: (typeof GRADES)[number], durationS: number, ratio = dimensionRatio) =>
          pullInLimit.fn({ outsideDiameterM, dimensionRatio: ratio, material, durationS }).forceN
        expect(limit('pe2708', Math.max(a, b))).toBeLessThanOrEqual(limit('pe2708', Math.min(a, b)))
        expect(limit('pe4710', a)).toBeGreaterThan(limit('pe3608', a))
        expect(limit('pe3608', a)).toBeGreaterThan(limit('pe2708', a))
        expect(limit('pe4710', a, dimensionRatio + 1)).toBeLessThan(limit('pe4710', a))
      }),
    )
  })

  it('steps at one, twelve and twenty-four hours, not before', () => {
    const at = (durationS: number) =>
      pullInLimit.fn({ outsideDiameterM: 0.06, dimensionRatio: 11, material: 'pe4710', durationS }).forceN
    const hour = at(HOUR_S)
    expect(at(HOUR_S + 1) / hour).toBeCloseTo(0.95, 12)
    expect(at(12 * HOUR_S) / hour).toBeCloseTo(0.95, 12)
    expect(at(12 * HOUR_S + 1) / hour).toBeCloseTo(0.91, 12)
    expect(at(200 * HOUR_S) / hour).toBeCloseTo(0.91, 12)
  })

  it('is the lower of the two published bases, and says which', () => {
    fc.assert(
      fc.property(
        diameters,
        ratios,
        durations,
        fc.constantFrom(...GRADES),
        (od, ratio, durationS, material) => {
          const lowest = lowestPullLimit(od, ratio, material, durationS)
          const byStandard = pullInLimit.fn({
            outsideDiameterM: od,
            dimensionRatio: ratio,
            material,
            durationS,
          }).forceN
          expect(lowest.forceN).toBeLessThanOrEqual(byStandard)
          expect(lowest.basis === 'AstmF1804').toBe(lowest.forceN === byStandard)
        },
      ),
    )
    // 12 h, PE4710: 1,330 psi by the standard, 1,150 psi by the handbook.
    expect(lowestPullLimit(0.06, 11, 'pe4710', 12 * HOUR_S).basis).toBe('PpiHandbook')
    expect(safePullStressPa('pe4710', 12 * HOUR_S) / PSI_PA).toBeCloseTo(1150, 9)
    expect(safePullStressPa('pe2708', 100 * HOUR_S) / PSI_PA).toBeCloseTo(800, 9)
  })
})

describe('bends and lead-ins', () => {
  it('never allow a thinner pipe a tighter bend', () => {
    fc.assert(
      fc.property(diameters, ratios, ratios, (outsideDiameterM, a, b) => {
        const radius = (dimensionRatio: number) => bendRadius.fn({ outsideDiameterM, dimensionRatio }).radiusM
        expect(radius(Math.max(a, b))).toBeGreaterThanOrEqual(radius(Math.min(a, b)))
      }),
    )
  })

  it('take the larger radius between two printed ratios', () => {
    expect(bendRadius.fn({ outsideDiameterM: 1, dimensionRatio: 10 }).radiusM).toBe(25)
    expect(bendRadius.fn({ outsideDiameterM: 1, dimensionRatio: 15.5 }).radiusM).toBe(27)
    expect(bendRadius.fn({ outsideDiameterM: 1, dimensionRatio: 60 }).radiusM).toBe(52)
  })

  it('need more room the deeper, never more than the arcs have, and an S more than one arc', () => {
    const some = fc.double({ min: 0.1, max: 20, noNaN: true })
    const depths = fc.double({ min: 0.001, max: 30, noNaN: true })
    fc.assert(
      fc.property(some, depths, depths, (radiusM, a, b) => {
        const room = (depthM: number, form: 'arc' | 's-curve') => pipeLeadIn.fn({ radiusM, depthM, form })
        for (const [form, arcs] of [
          ['arc', 1],
          ['s-curve', 2],
        ] as const) {
          const deep = room(Math.max(a, b), form)
          expect(deep.lengthM).toBeGreaterThanOrEqual(room(Math.min(a, b), form).lengthM * (1 - 1e-12))
          expect(deep.lengthM).toBeLessThanOrEqual(arcs * radiusM * (1 + 1e-12))
          expect(deep.angleRad).toBeLessThanOrEqual(Math.PI / 2 + 1e-12)
        }
        expect(room(a, 's-curve').lengthM).toBeGreaterThanOrEqual(room(a, 'arc').lengthM * (1 - 1e-12))
      }),
    )
  })
})

describe('rooms and bundles', () => {
  it('have no room round a pipe that does not pass', () => {
    expect(annulusVolume.fn({ boreM: 0.05, pipeM: 0.06, lengthM: 10 })).toEqual({ areaM2: 0, volumeM3: 0 })
  })

  it('have 32.25 and 56.25 per cent of the pipe’s own area at 15 and 25 per cent over', () => {
    for (const [ratio, share] of [
      [1.15, 0.3225],
      [1.25, 0.5625],
    ] as const) {
      const { areaM2 } = annulusVolume.fn({ boreM: ratio * 0.1, pipeM: 0.1, lengthM: 1 })
      expect(areaM2 / ((Math.PI / 4) * 0.01)).toBeCloseTo(share, 10)
    }
  })

  it('grow with every pipe, and the pipes’ areas always fit', () => {
    let last = 0
    for (let count = 1; count <= 19; count++) {
      const { diameterM } = bundleDiameter.fn({ outsideDiameterM: 1, count })
      expect(diameterM).toBeGreaterThanOrEqual(last)
      // No packing of equal circles in a plane is denser than π/√12.
      expect(count / diameterM ** 2).toBeLessThan(Math.PI / Math.sqrt(12) + (count === 1 ? 0.1 : 0))
      last = diameterM
    }
    expect(bundleDiameter.fn({ outsideDiameterM: 1, count: 2.5 }).diameterM).toBeCloseTo(2.1547, 4)
  })
})
