import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cavityPressureDilatant } from '../../../shared/core/ground/cavity-pressure-dilatant.ts'
import { cavityPressureUndrained } from '../../../shared/core/ground/cavity-pressure-undrained.ts'
import { expansionRatio } from '../../../shared/core/ground/dilatant-limit.ts'
import { sandLimit } from '../../../shared/core/ground/sand-limit.ts'

const DEGREE_RAD = Math.PI / 180

describe('cavities', () => {
  it.each([
    ['cylinder', 0.02, 305.74],
    ['sphere', 0.03, 404.02],
  ] as const)('with friction dying out, the %s tends to the undrained one', (shape, slack, printedKpa) => {
    const { limitPressurePa } = cavityPressureDilatant.fn({
      frictionAngleRad: 0.5 * DEGREE_RAD,
      dilationAngleRad: 0,
      cohesionPa: 50e3,
      youngsModulusPa: 14_990e3,
      poissonRatio: 0.499,
      insituStressPa: 20e3,
      shape,
    })
    const undrained = cavityPressureUndrained.fn({
      undrainedStrengthPa: 50e3,
      shearModulusPa: 5000e3,
      insituStressPa: 20e3,
      shape,
    })
    expect(Math.abs(limitPressurePa / undrained.limitPressurePa - 1)).toBeLessThan(slack)
    expect(Math.abs(limitPressurePa / (printedKpa * 1e3) - 1)).toBeLessThan(1e-3)
  })

  it('R meets the equation it was solved from, also where γ is a whole number', () => {
    // α = 4, β = 1, m = 2: γ = 2 exactly, and the third term turns into a logarithm.
    const at = (friction: number): number => expansionRatio(friction, 0, 0, 20e6, 0.3, 20e3, 2)
    const whole = Math.asin(0.6)
    const around = (at(whole - 1e-7) + at(whole + 1e-7)) / 2
    expect(at(whole) / around).toBeCloseTo(1, 9)
  })

  it('a stronger or stiffer soil pushes back more', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 12, max: 48, noNaN: true }),
        fc.double({ min: 0, max: 40e3, noNaN: true }),
        fc.double({ min: 3e6, max: 80e6, noNaN: true }),
        (phi, cohesionPa, youngsModulusPa) => {
          const at = (angle: number, c: number, modulus: number): number =>
            cavityPressureDilatant.fn({
              frictionAngleRad: angle * DEGREE_RAD,
              dilationAngleRad: 0,
              cohesionPa: c,
              youngsModulusPa: modulus,
              poissonRatio: 0.25,
              insituStressPa: 15e3,
              shape: 'sphere',
            }).limitPressurePa
          const here = at(phi, cohesionPa, youngsModulusPa)
          expect(at(phi + 1, cohesionPa, youngsModulusPa)).toBeGreaterThan(here)
          expect(at(phi, cohesionPa + 1e3, youngsModulusPa)).toBeGreaterThan(here)
          expect(at(phi, cohesionPa, youngsModulusPa * 1.1)).toBeGreaterThan(here)
        },
      ),
    )
  })

  it('the dilatancy index of sand is consistent with the pressure it gives', () => {
    for (const density of [0.3, 0.5, 0.7, 0.9]) {
      const found = sandLimit(density, 33 * DEGREE_RAD, 12e3)
      const wanted = density * (10 - Math.log(Math.sqrt(found.limitPressurePa * 12e3) / 1e3)) - 1
      expect(found.dilatancyIndex).toBeCloseTo(Math.min(4, Math.max(0, wanted)), 9)
    }
    expect(sandLimit(0.05, 33 * DEGREE_RAD, 12e3).dilatancyIndex).toBe(0)
    expect(sandLimit(1, 33 * DEGREE_RAD, 1e3).dilatancyIndex).toBe(4)
  })
})
