import {
  LEAST_RATE_M_PER_S,
  LEAST_SET_M,
  planningRateMPerS,
  rateFactorOfDraw,
  resistanceOfDraw,
  setPerBlowOfDraw,
} from '../ground/set-of-draw.ts'
import { BODY_SHARE, CONE_HALF_ANGLE_RAD } from '../ground/tip-pressure.ts'
import { LEAST_DENSITY, MOST_DENSITY } from '../ground/tip-table.ts'
import type { DrawFactors } from './draw-factors.ts'
import type { Blow, SolvedStretch } from './penetration.ts'
import type { ToolFacts } from './tool-facts.ts'

type Loop = {
  readonly solved: SolvedStretch
  readonly tool: ToolFacts
  readonly blow: Blow
  readonly factors: DrawFactors
  /** Hammering time so far, one per draw; infinite once a draw has stalled. Added to in place. */
  readonly timeS: Float64Array
}

/** Time to hammer `lengthM` in one draw; infinite where it stalls. */
function timeOfDraw(
  { solved, tool, blow, factors }: Loop,
  i: number,
  tipPa: number,
  shaftPa: number,
  model: number,
): number {
  const { state, lengthM, rateMultiplier } = solved.stretch
  const k = rateFactorOfDraw(state.rateFactor, factors.rate[i] as number)
  const resistanceN = resistanceOfDraw(tipPa, shaftPa, solved.tipAreaM2, solved.shaftAreaM2, k, model)
  const energyJ = blow.energyJ * (factors.energy[i] as number)
  const setM = setPerBlowOfDraw(
    tool.efficiency,
    energyJ,
    resistanceN,
    solved.quakeM * (factors.quake[i] as number),
  )
  if (setM < LEAST_SET_M) return Number.POSITIVE_INFINITY
  const rateMPerS = rateMultiplier * planningRateMPerS(setM, blow.rateHz)
  return rateMPerS < LEAST_RATE_M_PER_S ? Number.POSITIVE_INFINITY : lengthM / rateMPerS
}

const COT_CONE = 1 / Math.tan(CONE_HALF_ANGLE_RAD)

function clayLoop(loop: Loop): void {
  const { solved, factors, timeS } = loop
  const { state } = solved.stretch
  const strength = factors.lognormal('strength', state.strengthCov)
  const model = factors.lognormal('model', state.modelCov)
  const su = state.undrainedStrengthPa ?? 0
  const logRigidity = 1 + Math.log(state.rigidityIndex ?? 1)
  const adhesion = (state.tipAdhesion ?? 0) * COT_CONE
  const shaftAdhesion = state.shaftAdhesion ?? 0
  for (let i = 0; i < factors.count; i++) {
    const suPa = su * (strength[i] as number)
    const bearing = (4 / 3) * (logRigidity + (factors.logRigidity[i] as number)) + adhesion
    const tipPa = solved.verticalPa + state.tipFactor * suPa * bearing
    const shaftPa = shaftAdhesion * suPa * (factors.shaft[i] as number)
    timeS[i] = (timeS[i] as number) + timeOfDraw(loop, i, tipPa, shaftPa, model[i] as number)
  }
}

function granularLoop(loop: Loop): void {
  const { solved, factors, timeS } = loop
  const { state } = solved.stretch
  const { table, granularFactor } = solved
  if (!table) return
  const model = factors.lognormal('model', state.modelCov)
  const cohesion = factors.lognormal('strength', state.strengthCov)
  const { strength, frictionAngle } = factors.scores.normal
  const isSand = state.family === 'sand'
  const density = state.relativeDensity ?? 0
  const densitySd = state.relativeDensitySd * factors.scale
  const angleSd = state.frictionAngleSdRad * factors.scale
  const shaftShare = BODY_SHARE * (state.shaftRatio ?? 0)
  for (let i = 0; i < factors.count; i++) {
    const x = isSand
      ? Math.min(MOST_DENSITY, Math.max(LEAST_DENSITY, density + densitySd * (strength[i] as number)))
      : state.cohesionPa * (cohesion[i] as number)
    const y = isSand ? 0 : state.frictionAngleRad + angleSd * (frictionAngle[i] as number)
    const tipPa = granularFactor * table.evaluate(x, y)
    const shaftPa = shaftShare * tipPa * (factors.shaft[i] as number)
    timeS[i] = (timeS[i] as number) + timeOfDraw(loop, i, tipPa, shaftPa, model[i] as number)
  }
}

/** Hammering time of one shot in every draw, the same draw in every stretch; infinite where it stalls. */
export function hammerTimes(
  stretches: readonly SolvedStretch[],
  tool: ToolFacts,
  blow: Blow,
  factors: DrawFactors,
): Float64Array {
  const timeS = new Float64Array(factors.count)
  for (const solved of stretches) {
    const loop = { solved, tool, blow, factors, timeS }
    if (solved.stretch.state.family === 'clay') clayLoop(loop)
    else granularLoop(loop)
  }
  return timeS
}
