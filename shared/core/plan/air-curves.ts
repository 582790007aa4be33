import { createTrace } from '../trace.ts'
import { treeFacts } from './air.ts'
import type { AirInput, HoseInput } from './air-input.ts'
import { type HoseGrade, type TreeFacts, toolsOnOneEnd } from './air-line-of-input.ts'
import { solveAir } from './air-solve.ts'
import { createAssumed } from './assumptions.ts'
import type { CrossingInput } from './crossing-input.ts'
import { toolFacts } from './tool-facts.ts'

export type CurvePoint = { readonly flowM3PerS: number; readonly gaugePa: number }
export type SupplyAndDemand = {
  /** What the line still leaves at the tool when that much is drawn there. */
  readonly supply: readonly CurvePoint[]
  /** What the tool draws at a pressure. */
  readonly demand: readonly CurvePoint[]
  /** Where they meet; null where they do not. */
  readonly meet: CurvePoint | null
}

function factsOf(input: CrossingInput, air: AirInput = input.air): TreeFacts {
  const tool = toolFacts(input.tool, createAssumed(), createTrace())
  return treeFacts({ ...input, air }, tool, createAssumed())
}

/** Our tool's share of what is drawn, with a tool that takes `scale` times the air of this one. */
function pointAt(facts: TreeFacts, scale: number): CurvePoint | null {
  const point = solveAir({ ...facts, toolAirDemandM3PerS: facts.toolAirDemandM3PerS * scale }, 'likely')
  if (!point.ok) return null
  const ours = point.tools.find(({ gaugePa }) => gaugePa === point.toolGaugePa)
  const flowM3PerS = (ours?.flowM3PerS ?? point.flowM3PerS) / toolsOnOneEnd(facts.air)
  return { flowM3PerS, gaugePa: point.toolGaugePa }
}

/** From next to nothing to three times the tool: where the curve bends is where the machine gives out. */
const SCALES = [0.02, 0.25, 0.5, 0.75, 0.9, 1, 1.1, 1.25, 1.5, 1.75, 2, 2.5, 3]
const DEMAND_STEPS = 8

/** Supply at the tool and its demand over the air it draws. */
export function supplyAndDemand(input: CrossingInput): SupplyAndDemand {
  const facts = factsOf(input)
  const { air, site, exponent, toolRatedGaugePa } = facts
  const meet = pointAt(facts, 1)
  const supply = SCALES.flatMap((scale) => pointAt(facts, scale) ?? [])
  const most = air.compressor.gaugePa
  const atRated = meet === null ? null : meet.flowM3PerS / (meet.gaugePa + site.siteAbsPa) ** exponent
  const demand =
    atRated === null
      ? []
      : Array.from({ length: DEMAND_STEPS + 1 }, (_, step) => {
          const gaugePa = (Math.max(most, toolRatedGaugePa) * step) / DEMAND_STEPS
          return { gaugePa, flowM3PerS: atRated * (gaugePa + site.siteAbsPa) ** exponent }
        })
  return { supply, demand, meet }
}

export type MarginLine = {
  readonly temperatureK: number
  readonly points: readonly { readonly altitudeM: number; readonly marginFraction: number | null }[]
}

const SITES_M = [0, 500, 1000, 1500, 2000, 2500, 3000, 3500]
/** −10, 10, 30 and 45 °C. */
const AIRS_K = [263.15, 283.15, 303.15, 318.15]

/** Free air there is over free air wanted, by how high and how warm the site is. */
export function marginOverSites(
  input: CrossingInput,
  sitesM: readonly number[] = SITES_M,
): readonly MarginLine[] {
  return AIRS_K.map((temperatureK) => ({
    temperatureK,
    points: sitesM.map((altitudeM) => {
      const point = solveAir(factsOf(input, { ...input.air, altitudeM, temperatureK }), 'likely')
      const marginFraction = point.ok
        ? (point.capacityM3PerS - point.demandM3PerS) / point.demandM3PerS
        : null
      return { altitudeM, marginFraction }
    }),
  }))
}

export type HoseCurve = {
  readonly boreM: number
  /** The line has this bore now. */
  readonly isOurs: boolean
  readonly points: readonly {
    readonly lengthM: number
    readonly lowGaugePa: number
    readonly likelyGaugePa: number
    readonly highGaugePa: number
  }[]
}

const INCH_M = 0.0254
const FOOT_M = 0.3048
const BORES_M = [0.5, 0.75, 1, 1.25].map((inches) => inches * INCH_M)
/** 50 ft at a time, as hose is sold. */
const HOSE_STEP_M = 50 * FOOT_M
const HOSE_STEPS = 6
const SAME_BORE_M = 0.0005

function runOf(boreM: number, count: number): readonly HoseInput[] {
  const hose: HoseInput = {
    boreM,
    lengthM: HOSE_STEP_M,
    couplings: null,
    couplingBoreM: null,
    ratedGaugePa: null,
    parallel: 1,
    lossFactor: null,
    measuredOn: null,
  }
  return Array.from({ length: count }, () => hose)
}

/** Pressure at the tool at the end of one plain line of each trade bore, by its length, with its band. */
export function hoseCurves(input: CrossingInput): readonly HoseCurve[] {
  const at = (hoses: readonly HoseInput[], grade: HoseGrade): number => {
    const air = { ...input.air, hoses, branches: [] }
    const point = solveAir(factsOf(input, air), grade)
    return point.ok ? point.toolGaugePa : 0
  }
  return BORES_M.map((boreM) => ({
    boreM,
    isOurs: input.air.hoses.some((hose) => Math.abs(hose.boreM - boreM) < SAME_BORE_M),
    points: Array.from({ length: HOSE_STEPS }, (_, step) => {
      const hoses = runOf(boreM, step + 1)
      return {
        lengthM: HOSE_STEP_M * (step + 1),
        lowGaugePa: at(hoses, 'worst'),
        likelyGaugePa: at(hoses, 'likely'),
        highGaugePa: at(hoses, 'best'),
      }
    }),
  }))
}
