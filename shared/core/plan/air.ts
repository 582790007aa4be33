import { airOperatingPoint } from '../air/air-operating-point.ts'
import { solveOperatingPoint } from '../air/operating-point.ts'
import { done, type Outcome, refused } from '../outcome.ts'
import type { Trace } from '../trace.ts'
import type { Assumed } from './assumptions.ts'
import type { CrossingInput } from './crossing-input.ts'
import type { AirPart } from './plan.ts'
import type { ToolFacts } from './tool-facts.ts'

/** Tool pressure flags, gauge: red under 70 psi, amber under 85, high over 110. Common practice. */
export const RED_BELOW_PA = 482_633
const AMBER_BELOW_PA = 586_054
export const HIGH_ABOVE_PA = 758_423
/** Litres burnt per cubic metre of free air at full load (1.7 L/h per m³/min) and the share burnt idling. Second hand. */
const FUEL_L_PER_M3 = 1.7 / 60
const IDLE_SHARE = 0.4

export type AirResult = AirPart & { readonly fuelLitresPerS: number; readonly pressureRatio: number }

function flagOf(toolGaugePa: number): AirPart['flag'] {
  if (toolGaugePa < RED_BELOW_PA) return 'low'
  if (toolGaugePa < AMBER_BELOW_PA) return 'weak'
  return toolGaugePa > HIGH_ABOVE_PA ? 'high' : 'good'
}

/** Where compressor, hoses and tools agree; refused where they cannot. */
export function airPart(
  input: CrossingInput,
  tool: ToolFacts,
  assumed: Assumed,
  trace: Trace,
): Outcome<AirResult> {
  const altitudeM = assumed.or(input.air.altitudeM, 'air.altitude')
  const temperatureK = assumed.or(input.air.temperatureK, 'air.temperature')
  const { freeAirDeliveryM3PerS, gaugePa } = input.air.compressor
  const given = {
    freeAirDeliveryM3PerS,
    compressorGaugePa: gaugePa,
    hoses: input.air.hoses,
    lubricator: input.air.lubricator ?? true,
    toolAirDemandM3PerS: tool.airDemandM3PerS,
    toolRatedGaugePa: tool.demandGaugePa,
    toolCount: input.air.tools,
    altitudeM,
    temperatureK,
    exponent: 1,
  }
  if (input.air.lubricator === null) {
    assumed.note({
      name: 'air.lubricator',
      value: 'fitted',
      unit: '',
      standing: 'common practice',
      source: 'CommonPractice',
    })
  }
  const point = solveOperatingPoint(given)
  if (!point.ok) return refused({ path: 'air', code: 'no-operating-point', values: { why: point.reason } })
  trace.note(
    airOperatingPoint,
    { ...given, hoses: input.air.hoses.map((hose) => ({ ...hose })) },
    {
      toolGaugePa: point.toolGaugePa,
      compressorGaugePa: point.compressorGaugePa,
      flowM3PerS: point.flowM3PerS,
      limitedBy: point.limitedBy,
    },
    'air',
  )
  const load = Math.min(1, point.flowM3PerS / point.capacityM3PerS)
  return done({
    compressorGaugePa: point.compressorGaugePa,
    toolGaugePa: point.toolGaugePa,
    hoseLossPa: point.hoseLossPa,
    demandM3PerS: point.demandM3PerS,
    capacityM3PerS: point.capacityM3PerS,
    marginFraction: (point.capacityM3PerS - point.demandM3PerS) / point.demandM3PerS,
    limitedBy: point.limitedBy,
    unloadedGaugePa: point.unloadedGaugePa,
    flag: flagOf(point.toolGaugePa),
    ladder: point.steps.map((step) => ({
      element: `${step.element}-${step.number}`,
      inletGaugePa: step.inletGaugePa,
      outletGaugePa: step.outletGaugePa,
    })),
    fuelLitresPerS:
      (freeAirDeliveryM3PerS * 60 * FUEL_L_PER_M3 * (IDLE_SHARE + (1 - IDLE_SHARE) * load)) / 60,
    pressureRatio: point.toolGaugePa / tool.statedGaugePa,
  })
}
