import { describe, expect, it } from 'vitest'
import type { GroundEvidence } from '../../../shared/core/ground/ground-state.ts'
import {
  effectiveStressPa,
  frictionalLimitPa,
  meanStressPa,
  sandLimitPa,
} from '../../../shared/core/ground/tip-pressure.ts'
import { LEAST_DENSITY, MOST_DENSITY, tipTable } from '../../../shared/core/ground/tip-table.ts'
import { stateOf } from './penetration-of.ts'

const DEGREE_RAD = Math.PI / 180
const MOST_ERROR = 1e-3

const SANDS: readonly Partial<GroundEvidence>[] = [
  { uscs: 'SP', relativeDensity: 0.1 },
  { uscs: 'SP', relativeDensity: 0.5 },
  { uscs: 'SP', relativeDensity: 0.95 },
  { uscs: 'GW', relativeDensity: 0.85 },
]
const MIXED: readonly Partial<GroundEvidence>[] = [
  { uscs: 'ML', sptN: 1 },
  { uscs: 'ML', sptN: 11 },
  { uscs: 'SC', sptN: 20 },
  { uscs: 'SM', sptN: 60 },
  { uscs: 'GC', sptN: 60 },
]
const PLACES = [
  [0.2, null],
  [1, null],
  [2, 0],
  [8, null],
] as const

describe('the table of limit pressures', () => {
  it.each(SANDS)('is within 0.1 % for sand $uscs $relativeDensity', (evidence) => {
    const state = stateOf(evidence)
    let worst = 0
    for (const [depthM, waterTableM] of PLACES) {
      const table = tipTable(state, depthM, waterTableM)
      const mean = meanStressPa(effectiveStressPa(state.unitWeightNPerM3, depthM, waterTableM))
      for (let i = 0; i <= 600; i += 1) {
        const density = LEAST_DENSITY + ((MOST_DENSITY - LEAST_DENSITY) * i) / 600
        const direct = sandLimitPa(density, state.criticalAngleRad ?? Number.NaN, mean)
        worst = Math.max(worst, Math.abs(table.evaluate(density, 0) / direct - 1))
      }
    }
    expect(worst).toBeLessThan(MOST_ERROR)
  })

  it.each(MIXED)('is within 0.1 % for $uscs, N $sptN', (evidence) => {
    const state = stateOf(evidence)
    let worst = 0
    for (const [depthM, waterTableM] of PLACES) {
      const table = tipTable(state, depthM, waterTableM)
      const mean = meanStressPa(effectiveStressPa(state.unitWeightNPerM3, depthM, waterTableM))
      for (let i = -40; i <= 40; i += 1) {
        const angle = Math.min(50 * DEGREE_RAD, state.frictionAngleRad + 0.25 * i * DEGREE_RAD)
        for (const share of [0.02, 0.2, 0.5, 1, 2, 5, 20]) {
          const cohesion = share * state.cohesionPa
          const direct = frictionalLimitPa(
            cohesion,
            angle,
            state.dilationAngleRad,
            state.stiffnessRatio ?? Number.NaN,
            mean,
          )
          worst = Math.max(worst, Math.abs(table.evaluate(cohesion, angle) / direct - 1))
        }
      }
    }
    expect(worst).toBeLessThan(MOST_ERROR)
  })

  it('holds the ends beyond the densities drawn', () => {
    const table = tipTable(stateOf({ uscs: 'SP', relativeDensity: 0.5 }), 1, null)
    expect(table.evaluate(-1, 0)).toBe(table.evaluate(LEAST_DENSITY, 0))
    expect(table.evaluate(2, 0)).toBe(table.evaluate(MOST_DENSITY, 0))
  })
})
