import { advanceRate } from '../ground/advance-rate.ts'
import { anchorageLength } from '../ground/anchorage-length.ts'
import { drivingResistance } from '../ground/driving-resistance.ts'
import { setPerBlow } from '../ground/set-per-blow.ts'
import { shaftFriction } from '../ground/shaft-friction.ts'
import {
  effectiveStressPa,
  frictionalLimitPa,
  granularTipFactor,
  meanStressPa,
  sandLimitPa,
  verticalStressPa,
} from '../ground/tip-pressure.ts'
import { tipResistanceClay } from '../ground/tip-resistance-clay.ts'
import { tipResistanceGranular } from '../ground/tip-resistance-granular.ts'
import { type TipTable, tipTable } from '../ground/tip-table.ts'
import { shaftAreaM2, tipAreaM2 } from '../ground/tool-areas.ts'
import { toolAtPressure } from '../ground/tool-at-pressure.ts'
import type { Trace } from '../trace.ts'
import type { Stretch } from './stretches.ts'
import type { ToolFacts } from './tool-facts.ts'

/** The blow the tool gives at the pressure it gets. */
export type Blow = { readonly energyJ: number; readonly rateHz: number; readonly recoilN: number }

export function blowAt(tool: ToolFacts, toolGaugePa: number, trace: Trace): Blow {
  const at = trace.run(
    toolAtPressure,
    {
      blowEnergyJ: tool.blowEnergyJ,
      blowRateHz: tool.blowRateHz,
      recoilN: tool.recoilN,
      statedPressureGaugePa: tool.statedGaugePa,
      pressureGaugePa: Math.max(0, toolGaugePa),
    },
    'tool',
  )
  return { energyJ: at.energyJ, rateHz: at.rateHz, recoilN: at.pushN }
}

/** Everything of a stretch that a draw does not change, solved once. */
export type SolvedStretch = {
  readonly stretch: Stretch
  readonly tipAreaM2: number
  readonly shaftAreaM2: number
  readonly quakeM: number
  readonly verticalPa: number
  readonly meanPa: number
  /** Granular ground: pressure on the nose over the sphere's limit pressure, and the limit by table. */
  readonly granularFactor: number
  readonly table: TipTable | null
  /** The median run: what the draws scatter about. */
  readonly median: {
    readonly tipPa: number
    readonly setM: number
    readonly advanceMPerS: number
    readonly gripM: number | null
  }
}

/** Pressure on the nose at the medians, with its working. */
function medianTip(solved: Omit<SolvedStretch, 'median'>, trace: Trace, about: string): number {
  const { stretch, verticalPa, table } = solved
  const { state } = stretch
  if (state.family === 'clay') {
    return trace.run(
      tipResistanceClay,
      {
        undrainedStrengthPa: state.undrainedStrengthPa ?? 0,
        rigidityIndex: state.rigidityIndex ?? 1,
        verticalStressPa: verticalPa,
        adhesion: state.tipAdhesion ?? 0,
        tipFactor: state.tipFactor,
      },
      about,
    ).tipPressurePa
  }
  const limitPressurePa = table
    ? state.family === 'sand'
      ? table.evaluate(state.relativeDensity ?? 0, 0)
      : table.evaluate(state.cohesionPa, state.frictionAngleRad)
    : directLimitPa(solved)
  return trace.run(
    tipResistanceGranular,
    {
      limitPressurePa,
      interfaceAngleRad: state.interfaceAngleRad ?? 0,
      tipFactor: state.tipFactor,
      gravelFactor: state.tipMultiplier,
    },
    about,
  ).tipPressurePa
}

/** The sphere's limit pressure straight from the relation: for the check of the table. */
export function directLimitPa({ stretch, meanPa }: Pick<SolvedStretch, 'stretch' | 'meanPa'>): number {
  const { state } = stretch
  return state.family === 'sand'
    ? sandLimitPa(state.relativeDensity ?? 0, state.criticalAngleRad ?? 0, meanPa)
    : frictionalLimitPa(
        state.cohesionPa,
        state.frictionAngleRad,
        state.dilationAngleRad,
        state.stiffnessRatio ?? 1,
        meanPa,
      )
}

/** Solves a stretch for a tool: areas, stresses, the table of its ground, and the median run with its working. */
export function solveStretch(stretch: Stretch, tool: ToolFacts, blow: Blow, trace: Trace): SolvedStretch {
  const { state, axisDepthM, waterTableM } = stretch
  const about = `shot ${stretch.shot + 1}, ground ${stretch.ground + 1}`
  const solved = {
    stretch,
    tipAreaM2: tipAreaM2(tool.diameterM),
    shaftAreaM2: shaftAreaM2(tool.diameterM, tool.lengthM),
    quakeM: tool.diameterM / state.quakeDivisor,
    verticalPa: verticalStressPa(state.unitWeightNPerM3, axisDepthM),
    meanPa: meanStressPa(effectiveStressPa(state.unitWeightNPerM3, axisDepthM, waterTableM)),
    granularFactor:
      state.family === 'clay'
        ? 0
        : granularTipFactor(state.interfaceAngleRad ?? 0, state.tipFactor, state.tipMultiplier),
    table: state.family === 'clay' ? null : tipTable(state, axisDepthM, waterTableM),
  }
  const tipPa = medianTip(solved, trace, about)
  const isClay = state.family === 'clay'
  const { frictionPa } = trace.run(
    shaftFriction,
    {
      soil: isClay ? 'clay' : 'granular',
      basePa: isClay ? (state.undrainedStrengthPa ?? 0) : tipPa,
      share: (isClay ? state.shaftAdhesion : state.shaftRatio) ?? 0,
    },
    about,
  )
  const { resistanceN } = trace.run(
    drivingResistance,
    {
      tipPressurePa: tipPa,
      frictionPa,
      diameterM: tool.diameterM,
      lengthM: tool.lengthM,
      rateFactor: state.rateFactor,
    },
    about,
  )
  const { setM } = trace.run(
    setPerBlow,
    { blowEnergyJ: blow.energyJ, efficiency: tool.efficiency, resistanceN, quakeM: solved.quakeM },
    about,
  )
  const rate = trace.run(advanceRate, { setM, blowRateHz: blow.rateHz }, about)
  const grip = trace.run(
    anchorageLength,
    { recoilN: blow.recoilN, frictionPa, diameterM: tool.diameterM },
    about,
  )
  return {
    ...solved,
    median: {
      tipPa,
      setM,
      advanceMPerS: stretch.rateMultiplier * rate.advanceMPerS,
      gripM: Number.isFinite(grip.lengthM) ? grip.lengthM : null,
    },
  }
}
