import { describe, expect, it } from 'vitest'
import { groundDisplacement } from '../../../shared/core/ground/ground-displacement.ts'
import { heaveProgress } from '../../../shared/core/ground/heave-progress.ts'
import { surfaceHeave } from '../../../shared/core/ground/surface-heave.ts'

const BORE = { diameterM: 0.1, axisDepthM: 1.05 }
const AREA_M2 = (Math.PI / 4) * 0.1 ** 2

const heave = (offsetM: number, poissonRatio = 0.5): number =>
  surfaceHeave.fn({ ...BORE, offsetM, poissonRatio, volumeFactor: 1 }).heaveM
const moved = (offsetM: number, depthM: number, poissonRatio = 0.5) =>
  groundDisplacement.fn({ ...BORE, offsetM, depthM, poissonRatio, volumeFactor: 1 })

/** ∫ over all x, with x = h tan t, which makes the trough a constant. */
function trough(poissonRatio: number): number {
  const steps = 2000
  let sum = 0
  for (let i = 0; i < steps; i += 1) {
    const t = -Math.PI / 2 + (Math.PI * (i + 0.5)) / steps
    const x = BORE.axisDepthM * Math.tan(t)
    sum += (heave(x, poissonRatio) * BORE.axisDepthM) / Math.cos(t) ** 2
  }
  return (sum * Math.PI) / steps
}

describe('heave of the surface', () => {
  it('holds the inserted volume: V undrained, 2(1−ν)V else', () => {
    expect(trough(0.5) / AREA_M2).toBeCloseTo(1, 6)
    expect(trough(0.25) / AREA_M2).toBeCloseTo(1.5, 6)
  })

  it('is half at one depth to the side, and steepest at h/√3 with 3√3 V/(8 π h²)', () => {
    expect(heave(BORE.axisDepthM) / heave(0)).toBeCloseTo(0.5, 12)
    const x = BORE.axisDepthM / Math.sqrt(3)
    const slope = (heave(x - 1e-5) - heave(x + 1e-5)) / 2e-5
    expect(slope).toBeCloseTo(0.001473, 6)
    expect(slope).toBeCloseTo((3 * Math.sqrt(3) * AREA_M2) / (8 * Math.PI * BORE.axisDepthM ** 2), 9)
  })

  it('is what the displacement field gives at the surface, at any Poisson ratio', () => {
    for (const nu of [0.1, 0.25, 0.4, 0.5]) {
      for (const x of [0, 0.3, 1, 4]) {
        expect(-moved(x, 0, nu).verticalM).toBeCloseTo(heave(x, nu), 12)
        expect(moved(x, 0, nu).horizontalM).toBeCloseTo((heave(x, nu) * x) / BORE.axisDepthM, 12)
      }
    }
  })

  it('far away the surface moves sideways as V/(π x)', () => {
    const x = 100 * BORE.axisDepthM
    expect((moved(x, 0).horizontalM * Math.PI * x) / AREA_M2).toBeCloseTo(0.9999, 6)
  })

  it('far below any surface the ground is pushed aside as V/(2 π r)', () => {
    const deep = groundDisplacement.fn({
      diameterM: 0.1,
      axisDepthM: 5,
      offsetM: 0.3,
      depthM: 5,
      poissonRatio: 0.5,
      volumeFactor: 1,
    })
    expect(deep.horizontalM / (AREA_M2 / (2 * Math.PI * 0.3))).toBeCloseTo(1, 2)
  })

  it('keeps the volume of undrained ground: no divergence', () => {
    const step = 1e-4
    for (const [x, z] of [
      [0.5, 0.3],
      [0.2, 1.6],
      [2, 0.9],
    ] as const) {
      const divergence =
        (moved(x + step, z).horizontalM - moved(x - step, z).horizontalM) / (2 * step) +
        (moved(x, z + step).verticalM - moved(x, z - step).verticalM) / (2 * step)
      expect(Math.abs(divergence)).toBeLessThan(1e-7)
    }
  })
})

describe('heave while the bore goes on', () => {
  it('grows with every metre and tends to the endless bore', () => {
    const at = (boreLengthM: number): number =>
      heaveProgress.fn({ ...BORE, boreLengthM, stationM: 0, offsetM: 0.4, volumeFactor: 1 }).heaveM
    for (let length = 0; length < 20; length += 1) expect(at(length + 1)).toBeGreaterThan(at(length))
    expect(at(1000)).toBeCloseTo(heave(0.4) / 2, 8)
  })
})
