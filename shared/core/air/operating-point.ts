import { narrowToSignChange } from '../numerics/bisect.ts'
import { requireNotNegative, requirePositive } from '../outcome.ts'
import type { AirLine, HoseInLine, LineStep } from './air-line.ts'
import { lineSteps } from './air-line.ts'
import { compressorDelivery } from './compressor-delivery.ts'
import { dryAirDensityKgPerM3, REFERENCE_TEMPERATURE_K, SEA_LEVEL_PA } from './dry-air.ts'
import { sitePressureAbsPa } from './standard-atmosphere.ts'

/** Common practice: a 100 psi machine rides 115–125 psi with no air drawn, and in proportion between. */
const UNLOADED_RISE = 0.25

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

export type LimitedBy = 'tool' | 'compressor' | 'hose'

export type PressureStep = {
  readonly element: LineStep['element']
  readonly number: number
  readonly inletGaugePa: number
  readonly outletGaugePa: number
}

export type OperatingPoint =
  | {
      readonly ok: true
      readonly compressorGaugePa: number
      readonly toolGaugePa: number
      /** All that is lost between compressor and tool, the lubricator's part with it; `steps` tells them apart. */
      readonly hoseLossPa: number
      /** Free air drawn, inlet volume at the site. */
      readonly flowM3PerS: number
      /** What the tools would draw if the compressor held its pressure; equals the flow unless it sags. */
      readonly demandM3PerS: number
      readonly capacityM3PerS: number
      readonly limitedBy: LimitedBy
      readonly steps: readonly PressureStep[]
      /** Where the pressure rides while the machine runs part loaded. */
      readonly unloadedGaugePa: number
    }
  | { readonly ok: false; readonly reason: 'choked' | 'no-pressure' }

type Tools = { readonly ratedKgPerS: number; readonly ratedAbsPa: number; readonly exponent: number }

/** Mass flow the tools draw at a pressure: ṁ = ṁ_r (p/p_r)^α. Rises with pressure. */
const drawnKgPerS = (tools: Tools, toolAbsPa: number): number =>
  tools.ratedKgPerS * (toolAbsPa / tools.ratedAbsPa) ** tools.exponent

/** Pressure at the tools; with nothing between, the compressor's. */
const endOf = (steps: readonly LineStep[], inletAbsPa: number): number =>
  steps.at(-1)?.outletAbsPa ?? inletAbsPa

/** Above zero while the tools want more than the flow sent; a line that chokes sends far too much. Falls with flow, rises with pressure. */
function wantKgPerS(line: AirLine, tools: Tools, massFlowKgPerS: number, inletAbsPa: number): number {
  const steps = lineSteps(line, massFlowKgPerS, inletAbsPa)
  if (steps === null) return Number.NEGATIVE_INFINITY
  return drawnKgPerS(tools, endOf(steps, inletAbsPa)) - massFlowKgPerS
}

type Balance = {
  readonly massFlowKgPerS: number
  readonly inletAbsPa: number
  readonly steps: readonly LineStep[]
}

/** The flow at which line and tools agree, compressor pressure held. Null: the tools want more than the line can ever pass. */
function balanceAtPressure(line: AirLine, tools: Tools, inletAbsPa: number): Balance | null {
  const most = drawnKgPerS(tools, inletAbsPa)
  const bracket = narrowToSignChange((flow) => wantKgPerS(line, tools, flow, inletAbsPa), 0, most)
  return bracket === null || lineSteps(line, bracket.high, inletAbsPa) === null
    ? null
    : balanceOf(line, bracket.low, inletAbsPa)
}

/** The compressor pressure at which the tools draw just what the machine can give. */
function balanceAtFlow(
  line: AirLine,
  tools: Tools,
  massFlowKgPerS: number,
  setAbsPa: number,
): Balance | null {
  const want = (inletAbsPa: number) => wantKgPerS(line, tools, massFlowKgPerS, inletAbsPa)
  const bracket = narrowToSignChange(want, 0, setAbsPa)
  return bracket === null || lineSteps(line, massFlowKgPerS, bracket.low) === null
    ? null
    : balanceOf(line, massFlowKgPerS, bracket.high)
}

function balanceOf(line: AirLine, massFlowKgPerS: number, inletAbsPa: number): Balance | null {
  const steps = lineSteps(line, massFlowKgPerS, inletAbsPa)
  return steps === null ? null : { massFlowKgPerS, inletAbsPa, steps }
}

/** A pressure set below the tool's rating is no fault of the hose. */
function limitOf(sags: boolean, toolGaugePa: number, input: OperatingPointInput): LimitedBy {
  if (sags) return 'compressor'
  if (toolGaugePa >= input.toolRatedGaugePa) return 'tool'
  return input.compressorGaugePa < input.toolRatedGaugePa ? 'compressor' : 'hose'
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

/**
 * Where compressor, hose line and tools meet.
 *
 * The pressure the line leaves at the tools falls with flow, the flow the tools draw rises with pressure: one crossing,
 * found by halving. Where it lies beyond what the machine gives at this altitude and temperature, the machine's
 * pressure sags until the tools draw just its capacity: halved again. At most 160 walks down the line in all.
 */
export function solveOperatingPoint(input: OperatingPointInput): OperatingPoint {
  requireSound(input)
  const temperatureK = input.temperatureK ?? REFERENCE_TEMPERATURE_K
  const siteAbsPa = sitePressureAbsPa(input.altitudeM)
  const siteDensity = dryAirDensityKgPerM3(siteAbsPa, temperatureK)
  const { freeAirDeliveryM3PerS, altitudeM } = input
  const capacity = compressorDelivery.fn({ freeAirDeliveryM3PerS, altitudeM, temperatureK })
  const line: AirLine = { hoses: input.hoses, lubricator: input.lubricator, temperatureK }
  const ratedDensity = dryAirDensityKgPerM3(SEA_LEVEL_PA, REFERENCE_TEMPERATURE_K)
  const tools: Tools = {
    ratedKgPerS: input.toolCount * input.toolAirDemandM3PerS * ratedDensity,
    ratedAbsPa: SEA_LEVEL_PA + input.toolRatedGaugePa,
    exponent: input.exponent,
  }
  const setAbsPa = siteAbsPa + input.compressorGaugePa

  const sags = wantKgPerS(line, tools, capacity.massFlowKgPerS, setAbsPa) > 0
  const held = balanceAtPressure(line, tools, setAbsPa)
  const balance = sags ? balanceAtFlow(line, tools, capacity.massFlowKgPerS, setAbsPa) : held
  if (balance === null) return { ok: false, reason: 'choked' }

  const toolGaugePa = endOf(balance.steps, balance.inletAbsPa) - siteAbsPa
  if (toolGaugePa <= 0) return { ok: false, reason: 'no-pressure' }
  const compressorGaugePa = balance.inletAbsPa - siteAbsPa
  const loadFraction = balance.massFlowKgPerS / capacity.massFlowKgPerS
  const flowM3PerS = balance.massFlowKgPerS / siteDensity
  return {
    ok: true,
    compressorGaugePa,
    toolGaugePa,
    hoseLossPa: compressorGaugePa - toolGaugePa,
    flowM3PerS,
    demandM3PerS: held === null ? flowM3PerS : held.massFlowKgPerS / siteDensity,
    capacityM3PerS: capacity.freeAirM3PerS,
    limitedBy: limitOf(sags, toolGaugePa, input),
    steps: balance.steps.map(({ element, number, inletAbsPa, outletAbsPa }) => ({
      element,
      number,
      inletGaugePa: inletAbsPa - siteAbsPa,
      outletGaugePa: outletAbsPa - siteAbsPa,
    })),
    unloadedGaugePa: compressorGaugePa * (1 + UNLOADED_RISE * (1 - loadFraction)),
  }
}
