import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { pitSlope } from '../../../shared/core/digsafe/pit-slope.ts'
import { pitVolume } from '../../../shared/core/digsafe/pit-volume.ts'
import { requiredClearance } from '../../../shared/core/digsafe/required-clearance.ts'

const size = fc.double({ min: 0, max: 10, noNaN: true })

describe('pits', () => {
  it('agree with the prismoidal formula over three cuts', () => {
    fc.assert(
      fc.property(
        size,
        size,
        size,
        fc.double({ min: 0, max: 3, noNaN: true }),
        (lengthM, widthM, depthM, slope) => {
          const found = pitVolume.fn({ lengthM, widthM, depthM, slope })
          const cut = (heightM: number) => (lengthM + 2 * slope * heightM) * (widthM + 2 * slope * heightM)
          const prismoid = (depthM / 6) * (cut(0) + 4 * cut(depthM / 2) + cut(depthM))
          expect(Math.abs(found.volumeM3 - prismoid)).toBeLessThanOrEqual(1e-12 * (1 + prismoid))
        },
      ),
    )
  })

  it('lie flatter the poorer the soil', () => {
    const angles = (['rock', 'A-short', 'A', 'B', 'C'] as const).map(
      (soilType) => pitSlope.fn({ soilType }).angleRad,
    )
    expect(angles).toEqual([...angles].sort((a, b) => b - a))
  })
})

describe('the clearance required', () => {
  it('never shrinks when any part of it grows', () => {
    const part = fc.double({ min: 0, max: 2, noNaN: true })
    fc.assert(
      fc.property(
        part,
        part,
        part,
        part,
        part,
        (standardM, toolRadiusM, driftAllowanceM, exposureErrorM, layoutErrorM) => {
          const given = { standardM, toolRadiusM, driftAllowanceM, exposureErrorM, layoutErrorM }
          const required = requiredClearance.fn(given).requiredM
          for (const key of [
            'standardM',
            'toolRadiusM',
            'driftAllowanceM',
            'exposureErrorM',
            'layoutErrorM',
          ] as const) {
            expect(requiredClearance.fn({ ...given, [key]: given[key] + 0.1 }).requiredM).toBeGreaterThan(
              required,
            )
          }
        },
      ),
    )
  })
})
