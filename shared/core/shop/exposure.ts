import {
  AIR_FACTORS,
  HOSE_SOIL_FACTORS,
  SLIDING_OIL_FACTORS,
  SOIL_FACTORS,
  USUAL_ABRASIVITY,
  USUAL_ADVANCE_M_PER_S,
  USUAL_BLOW_RATE_HZ,
  USUAL_STROKE_M,
  VALVE_OIL_FACTORS,
} from '../../tables/shop-house-values.ts'
import type { WearDriver } from './template.ts'

/** How the air was oiled while a bore was made, and what state it was in. */
export const OILING = ['good', 'poor', 'none'] as const
type Oiling = (typeof OILING)[number]
export const AIR_STATES = ['dry', 'wet'] as const
type AirState = (typeof AIR_STATES)[number]

/** One bore, made or planned, as far as it wears a tool; null where nobody said. */
export type BoreUse = {
  readonly lengthM: number
  readonly hammerS: number
  readonly blowRateHz: number | null
  readonly strokeM: number | null
  /** Pressure at the tool over its rated one. */
  readonly pressureRatio: number | null
  /** Class of the LCPC test, 1 to 6. */
  readonly abrasivity: number | null
  readonly oil: Oiling | null
  readonly air: AirState | null
}

const soil = (factors: readonly number[], use: BoreUse): number =>
  factors[(use.abrasivity ?? USUAL_ABRASIVITY) - 1] ?? 1

/**
 * Use of a part by one bore, as time in usual service: each part has its own clock, since ground wears the body, sliding
 * the rings, and time under air the valve. Factors are the house's, not measurements.
 */
export function equivalentS(driver: WearDriver, use: BoreUse): number {
  const pressure = use.pressureRatio ?? 1
  const air = AIR_FACTORS[use.air ?? 'dry']
  const blows = use.hammerS * (use.blowRateHz ?? USUAL_BLOW_RATE_HZ)
  switch (driver) {
    case 'ground':
      return (use.lengthM / USUAL_ADVANCE_M_PER_S) * soil(SOIL_FACTORS, use)
    case 'sliding': {
      const slidM = blows * (use.strokeM ?? USUAL_STROKE_M)
      const usualMPerS = USUAL_BLOW_RATE_HZ * USUAL_STROKE_M
      return (slidM / usualMPerS) * SLIDING_OIL_FACTORS[use.oil ?? 'good'] * air * pressure
    }
    case 'valve':
      return use.hammerS * VALVE_OIL_FACTORS[use.oil ?? 'good'] * air
    case 'blows':
      return (blows / USUAL_BLOW_RATE_HZ) * pressure
    case 'hose':
      return use.hammerS * soil(HOSE_SOIL_FACTORS, use)
  }
}

export const totalUseS = (driver: WearDriver, uses: readonly BoreUse[]): number =>
  uses.reduce((sum, use) => sum + equivalentS(driver, use), 0)

/** What of a bore was taken from the house for want of a record. */
export const assumedOf = (use: BoreUse): readonly ('oil' | 'air' | 'soil' | 'pressure')[] => [
  ...(use.oil === null ? (['oil'] as const) : []),
  ...(use.air === null ? (['air'] as const) : []),
  ...(use.abrasivity === null ? (['soil'] as const) : []),
  ...(use.pressureRatio === null ? (['pressure'] as const) : []),
]
