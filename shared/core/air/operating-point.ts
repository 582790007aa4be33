import { requireNotNegative, requirePositive } from '../outcome.ts'
import { type AirElement, type HoseInLine, OUR_OILER } from './air-element.ts'
import { type AirPoint, type NoAirPoint, solveAirSystem } from './air-system.ts'
import type { ToolEnd } from './air-tree.ts'
import { dryAirDensityKgPerM3, REFERENCE_TEMPERATURE_K, SEA_LEVEL_PA } from './dry-air.ts'
import { siteAir } from './site-air.ts'

export type OperatingPointInput = {
  /** Rated inlet volume of the compressor. */
  readonly freeAirDeliveryM3PerS: number
  /** Pressure the compressor is set to at full load. */
  readonly compressorGaugePa: number
  readonly hoses: readonly HoseInLine[]
  readonly lubricator: boolean
  /** One tool's demand at its rated pressure: free air of 101.325 kPa and 20 °C. */
  readonly toolAirDemandM3PerS: number
  readonly toolRatedGaugePa: number
  /** Identical tools hammering together off the end of the line. */
  readonly toolCount: number
  readonly altitudeM: number
  /** null: 20 °C; a compressor does not stand in the standard atmosphere's cold. */
  readonly temperatureK: number | null
  /** α of demand = rated · (p/p_rated)^α, absolute pressures. 1 is what the altitude columns of the handbooks imply. */
  readonly exponent: number
}

function requireSound(input: OperatingPointInput): void {
  requirePositive('freeAirDeliveryM3PerS', input.freeAirDeliveryM3PerS)
  requireNotNegative('compressorGaugePa', input.compressorGaugePa)
  requirePositive('toolAirDemandM3PerS', input.toolAirDemandM3PerS)
  requireNotNegative('toolRatedGaugePa', input.toolRatedGaugePa)
  requirePositive('toolCount', input.toolCount)
  requireNotNegative('exponent', input.exponent)
  for (const hose of input.hoses) {
    requirePositive('hose boreM', hose.boreM)
    requireNotNegative('hose lengthM', hose.lengthM)
  }
}

/** Mass a tool draws, from its rating in free air of 101.325 kPa and 20 °C: the state is the rating's, not the site's. */
export const toolEnd = (freeAirM3PerS: number, ratedGaugePa: number, exponent: number): ToolEnd => ({
  ratedKgPerS: freeAirM3PerS * dryAirDensityKgPerM3(SEA_LEVEL_PA, REFERENCE_TEMPERATURE_K),
  ratedAbsPa: SEA_LEVEL_PA + ratedGaugePa,
  exponent,
})

/** Where a compressor, one line and identical tools at its end meet. */
export function solveOperatingPoint(input: OperatingPointInput): AirPoint | NoAirPoint {
  requireSound(input)
  const { compressorGaugePa, toolRatedGaugePa } = input
  const elements: readonly AirElement[] = [
    ...input.hoses.map((hose) => ({ kind: 'hose' as const, ...hose })),
    ...(input.lubricator ? [OUR_OILER] : []),
  ]
  return solveAirSystem({
    site: siteAir({ ...input, relativeHumidity: 0, engine: null }),
    setGaugePa: compressorGaugePa,
    unloadGaugePa: null,
    root: {
      elements,
      end: toolEnd(input.toolCount * input.toolAirDemandM3PerS, toolRatedGaugePa, input.exponent),
    },
    path: [],
    ratedGaugePa: toolRatedGaugePa,
  })
}
