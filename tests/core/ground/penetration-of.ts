import type { GroundEvidence, GroundState } from '../../../shared/core/ground/ground-state.ts'
import { groundState } from '../../../shared/core/ground/ground-state.ts'
import { impactEfficiency } from '../../../shared/core/ground/impact-efficiency.ts'
import { planningRateMPerS } from '../../../shared/core/ground/set-of-draw.ts'
import {
  BODY_SHARE,
  clayTipPa,
  effectiveStressPa,
  frictionalLimitPa,
  granularTipFactor,
  meanStressPa,
  sandLimitPa,
  verticalStressPa,
} from '../../../shared/core/ground/tip-pressure.ts'
import { shaftAreaM2, tipAreaM2 } from '../../../shared/core/ground/tool-areas.ts'
import { toolProportions } from '../../../shared/core/ground/tool-proportions.ts'

export const NOTHING: GroundEvidence = {
  word: null,
  uscs: null,
  sptN: null,
  consistency: null,
  undrainedStrengthPa: null,
  relativeDensity: null,
  frictionAngleRad: null,
  dcpMPerBlow: null,
  pocketPenetrometerPa: null,
  vanePa: null,
  dug: null,
  stones: null,
  waterTableM: null,
  fill: false,
  frozen: false,
}

export function stateOf(evidence: Partial<GroundEvidence>): GroundState {
  const found = groundState({ ...NOTHING, ...evidence })
  if (!found.ok) throw new Error(JSON.stringify(found.issues))
  return found.value
}

export const SECONDS_PER_MINUTE = 60

/** Pressure on the nose straight from the formulas. */
export function tipPa(state: GroundState, depthM: number): number {
  const vertical = verticalStressPa(state.unitWeightNPerM3, depthM)
  if (state.family === 'clay') {
    return clayTipPa(
      state.undrainedStrengthPa ?? Number.NaN,
      state.rigidityIndex ?? Number.NaN,
      vertical,
      state.tipAdhesion ?? Number.NaN,
      state.tipFactor,
    )
  }
  const mean = meanStressPa(effectiveStressPa(state.unitWeightNPerM3, depthM, null))
  const limit =
    state.family === 'sand'
      ? sandLimitPa(state.relativeDensity ?? Number.NaN, state.criticalAngleRad ?? Number.NaN, mean)
      : frictionalLimitPa(
          state.cohesionPa,
          state.frictionAngleRad,
          state.dilationAngleRad,
          state.stiffnessRatio ?? Number.NaN,
          mean,
        )
  return (
    granularTipFactor(state.interfaceAngleRad ?? Number.NaN, state.tipFactor, state.tipMultiplier) * limit
  )
}

export const shaftPa = (state: GroundState, tip: number): number =>
  state.family === 'clay'
    ? (state.shaftAdhesion ?? Number.NaN) * (state.undrainedStrengthPa ?? Number.NaN)
    : BODY_SHARE * (state.shaftRatio ?? Number.NaN) * tip

export function tool(diameterM: number) {
  const found = toolProportions.fn({ diameterM })
  const { efficiency } = impactEfficiency.fn({
    strikerMassKg: found.strikerMassKg,
    struckMassKg: found.massKg - found.strikerMassKg,
    restitution: 0.55,
  })
  return {
    ...found,
    efficiency,
    tipAreaM2: tipAreaM2(diameterM),
    shaftAreaM2: shaftAreaM2(diameterM, found.lengthM),
  }
}

/** Median run of a tool with the proportions of its size, every step beside it. */
export function drive(state: GroundState, diameterM: number, depthM: number) {
  const of = tool(diameterM)
  const tip = tipPa(state, depthM)
  const shaft = shaftPa(state, tip)
  const resistance = state.rateFactor * (tip * of.tipAreaM2 + shaft * of.shaftAreaM2)
  const set = Math.max(0, (of.efficiency * of.blowEnergyJ) / resistance - diameterM / state.quakeDivisor / 2)
  return {
    tip,
    shaft,
    tipForce: tip * of.tipAreaM2,
    shaftForce: shaft * of.shaftAreaM2,
    set,
    rateMPerMin: planningRateMPerS(set, of.blowRateHz) * SECONDS_PER_MINUTE,
  }
}

/** The eleven rows of the model, by evidence. */
export const ROWS = {
  'soft clay N3': { uscs: 'CL', sptN: 3 },
  'firm clay N6': { uscs: 'CL', sptN: 6 },
  'stiff clay N11': { uscs: 'CL', sptN: 11 },
  'very stiff clay N22': { uscs: 'CL', sptN: 22 },
  'hard clay / till N40': { uscs: 'CL', sptN: 40 },
  'stiff silt ML': { uscs: 'ML', consistency: 'stiff' },
  'clayey sand SC moist': { uscs: 'SC', consistency: 'medium dense' },
  'loose sand': { uscs: 'SP', relativeDensity: 0.25 },
  'medium dense sand': { uscs: 'SP', relativeDensity: 0.5 },
  'dense sand': { uscs: 'SP', relativeDensity: 0.75 },
  'dense gravelly sand': { word: 'gravelly sand', relativeDensity: 0.85 },
} as const satisfies Record<string, Partial<GroundEvidence>>
