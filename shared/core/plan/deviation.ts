import { deviation } from '../line/deviation.ts'
import { hitChance } from '../line/hit-chance.ts'
import { normalCdf, normalQuantile } from '../statistics/normal.ts'
import type { Trace } from '../trace.ts'
import type { Assumed } from './assumptions.ts'
import type { Shot } from './bore-line.ts'
import type { DeviationPart } from './plan.ts'
import type { Stretch } from './stretches.ts'

/** How the tool wanders along one shot, in each plane. */
export type Wandering = {
  readonly aimRad: number
  readonly driftRadPerSqrtM: number
}

/** An inch either way of grade: what a gravity line asks at the far end. */
const GRADE_WINDOW_M = 0.0254
/** Arriving is never certain. */
const MOST_CHANCE = 0.999

/**
 * One drift for a shot: the mean of drift² over its ground, each metre weighted by the lever it has left to run,
 * (s − u)², so that stones near the launch count for more than stones near the exit.
 */
export function wanderingOf(shot: Shot, stretches: readonly Stretch[], assumed: Assumed): Wandering {
  const aimRad = assumed.use('line.aim')
  const driftBase = assumed.use('line.drift')
  const lengthM = shot.toM - shot.fromM
  let weighted = 0
  for (const stretch of stretches) {
    const left = (lengthM - (stretch.fromM - shot.fromM)) ** 3
    const right = (lengthM - (stretch.toM - shot.fromM)) ** 3
    weighted += stretch.state.driftFactor ** 2 * (left - right)
  }
  return { aimRad, driftRadPerSqrtM: driftBase * Math.sqrt(weighted / lengthM ** 3) }
}

/** Where the shot may arrive: absolute offsets in each plane at reception and the chance to land in the window. */
export function deviationPart(
  shot: Shot,
  wandering: Wandering,
  isGravity: boolean,
  assumed: Assumed,
  trace: Trace,
  about: string,
): DeviationPart {
  const stationM = shot.toM - shot.fromM
  const { sigmaM } = trace.run(deviation, { stationM, ...wandering }, about)
  const windowM = assumed.use('line.hitWindow')
  const hit = trace.run(hitChance, { halfWindowM: windowM, sigmaM }, about)
  const quantiles = { p50: sigmaM * normalQuantile(0.75), p90: sigmaM * normalQuantile(0.95) }
  return {
    lateralM: quantiles,
    verticalM: quantiles,
    hitProbability: Math.min(MOST_CHANCE, hit.probability),
    windowM,
    gradeProbability: isGravity ? 2 * normalCdf(GRADE_WINDOW_M / sigmaM) - 1 : null,
  }
}
