import { impactEfficiency } from '../ground/impact-efficiency.ts'
import { toolProportions } from '../ground/tool-proportions.ts'
import type { Trace } from '../trace.ts'
import type { Assumed } from './assumptions.ts'
import type { ToolInput } from './crossing-input.ts'

/** The tool as planned with: what its data sheet says where it was given, proportions by diameter where not. */
export type ToolFacts = {
  readonly diameterM: number
  readonly lengthM: number
  readonly massKg: number
  readonly blowEnergyJ: number
  readonly blowRateHz: number
  readonly recoilN: number
  readonly airDemandM3PerS: number
  /** Pressure the blow is stated for. */
  readonly statedGaugePa: number
  /** Pressure the air demand is stated for. */
  readonly demandGaugePa: number
  /** The tool's own rating where the user gave one. */
  readonly ratedGaugePa: number | null
  readonly efficiency: number
}

/** A figure off the data sheet is stated at the tool's rated pressure; our proportions at theirs. */
const statedAt = (given: number | null, tool: ToolInput, assumed: Assumed): number =>
  given === null || tool.ratedGaugePa === null ? assumed.use('tool.ratedPressure') : tool.ratedGaugePa

/** Restitution of steel on steel under hard driving (Hiley). */
const RESTITUTION = 0.55

export function toolFacts(tool: ToolInput, assumed: Assumed, trace: Trace): ToolFacts {
  const by = trace.run(toolProportions, { diameterM: tool.diameterM }, 'tool')
  const or = (given: number | null, name: string, value: number, unit: string): number => {
    if (given !== null) return given
    assumed.note({
      name: `tool.${name}`,
      value,
      unit,
      standing: 'our judgement',
      source: 'MolingClassAverages',
    })
    return value
  }
  const massKg = or(tool.massKg, 'mass', by.massKg, 'kg')
  const strikerMassKg = (by.strikerMassKg / by.massKg) * massKg
  const { efficiency } = trace.run(
    impactEfficiency,
    { strikerMassKg, struckMassKg: massKg - strikerMassKg, restitution: RESTITUTION },
    'tool',
  )
  const blowEnergyJ = or(tool.blowEnergyJ, 'blowEnergy', by.blowEnergyJ, 'J')
  return {
    diameterM: tool.diameterM,
    lengthM: or(tool.lengthM, 'length', by.lengthM, 'm'),
    massKg,
    blowEnergyJ,
    blowRateHz: or(tool.blowRateHz, 'blowRate', by.blowRateHz, 'Hz'),
    // Recoil goes with energy over stroke; a user's own energy does not change the stroke.
    recoilN: by.recoilN * (blowEnergyJ / by.blowEnergyJ),
    airDemandM3PerS: or(tool.airDemandM3PerS, 'airDemand', by.freeAirM3PerS, 'm3/s'),
    statedGaugePa: statedAt(tool.blowEnergyJ, tool, assumed),
    demandGaugePa: statedAt(tool.airDemandM3PerS, tool, assumed),
    ratedGaugePa: tool.ratedGaugePa,
    efficiency,
  }
}
