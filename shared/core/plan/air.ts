import { airOperatingPoint } from '../air/air-operating-point.ts'
import type { AirPoint } from '../air/air-system.ts'
import { inletVolumeM3PerS, siteAir } from '../air/site-air.ts'
import { done, type Outcome, refused } from '../outcome.ts'
import type { Trace } from '../trace.ts'
import { airDetails } from './air-details.ts'
import { flagOf } from './air-flags.ts'
import type { TreeFacts } from './air-line-of-input.ts'
import type { AirPart } from './air-part.ts'
import { solveAir } from './air-solve.ts'
import type { Assumed } from './assumptions.ts'
import type { CrossingInput } from './crossing-input.ts'
import type { ToolFacts } from './tool-facts.ts'

/** Fuel is sold by the litre. */
const LITRES_PER_M3 = 1000

export type AirResult = AirPart & { readonly fuelLitresPerS: number; readonly pressureRatio: number }

/** What the solver needs of a crossing; what nobody has said is assumed, and listed. */
export function treeFacts(input: CrossingInput, tool: ToolFacts, assumed: Assumed): TreeFacts {
  const { air } = input
  const { freeAirDeliveryM3PerS, gaugePa, reference, engine } = air.compressor
  if (air.lubricator === null && air.oiler === null) {
    assumed.note({
      name: 'air.lubricator',
      value: 'fitted',
      unit: '',
      standing: 'common practice',
      source: 'CommonPractice',
    })
  }
  const site = siteAir({
    freeAirDeliveryM3PerS: inletVolumeM3PerS(freeAirDeliveryM3PerS, reference),
    compressorGaugePa: gaugePa,
    altitudeM: assumed.or(air.altitudeM, 'air.altitude'),
    temperatureK: assumed.or(air.temperatureK, 'air.temperature'),
    relativeHumidity: assumed.or(air.relativeHumidity, 'air.humidity'),
    engine,
  })
  return {
    air,
    site,
    toolAirDemandM3PerS: tool.airDemandM3PerS,
    toolRatedGaugePa: tool.demandGaugePa,
    exponent: assumed.or(air.exponent, 'air.exponent'),
  }
}

/** The working of a whole line, told by its file: hoses and branches are lists there. */
function noteWorking(facts: TreeFacts, point: AirPoint, trace: Trace): void {
  const { air, site } = facts
  trace.note(
    airOperatingPoint,
    {
      freeAirDeliveryM3PerS: air.compressor.freeAirDeliveryM3PerS,
      compressorGaugePa: air.compressor.gaugePa,
      hoses: air.hoses.map(({ boreM, lengthM }) => ({ boreM, lengthM })),
      ...(air.branches.length === 0
        ? {}
        : { branches: air.branches.map(({ name, from }) => ({ name, from: from ?? 'hoses' })) }),
      lubricator: air.lubricator ?? true,
      toolAirDemandM3PerS: facts.toolAirDemandM3PerS,
      toolRatedGaugePa: facts.toolRatedGaugePa,
      toolCount: air.tools,
      barometerPa: site.siteAbsPa,
      temperatureK: site.temperatureK,
      exponent: facts.exponent,
    },
    {
      toolGaugePa: point.toolGaugePa,
      compressorGaugePa: point.compressorGaugePa,
      flowM3PerS: point.flowM3PerS,
      limitedBy: point.limitedBy,
    },
    'air',
  )
}

/** Where compressor, hoses and tools agree; refused where they cannot. */
export function airPart(
  input: CrossingInput,
  tool: ToolFacts,
  assumed: Assumed,
  trace: Trace,
): Outcome<AirResult> {
  const facts = treeFacts(input, tool, assumed)
  const point = solveAir(facts, 'likely')
  if (!point.ok) return refused({ path: 'air', code: 'no-operating-point', values: { why: point.reason } })
  noteWorking(facts, point, trace)
  const details = airDetails({ input, facts, point, assumed, trace })
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
    ...details,
    fuelLitresPerS: details.fuel.nowM3PerS * LITRES_PER_M3,
    pressureRatio: point.toolGaugePa / tool.statedGaugePa,
  })
}
