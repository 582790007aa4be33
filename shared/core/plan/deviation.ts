import { deviation } from '../line/deviation.ts'
import { hitChance } from '../line/hit-chance.ts'
import type { PathBelief } from '../line/path-belief.ts'
import { chanceWithin, offByM } from '../statistics/off-by.ts'
import type { Trace } from '../trace.ts'
import type { Assumed } from './assumptions.ts'
import type { Shot } from './bore-line.ts'
import type { DeviationPart } from './plan.ts'
import type { ShotPath } from './shot-path.ts'

/** An inch either way of grade: what a gravity line asks at the far end. */
const GRADE_WINDOW_M = 0.0254
/** Arriving is never certain. */
const MOST_CHANCE = 0.999

const offBy = (belief: PathBelief, stationM: number) => {
  const meanM = belief.meanM(stationM)
  const sigmaM = belief.sigmaM(stationM)
  return { p50: offByM(meanM, sigmaM, 0.5), p90: offByM(meanM, sigmaM, 0.9) }
}

const within = (belief: PathBelief, stationM: number, windowM: number): number =>
  chanceWithin(belief.meanM(stationM), belief.sigmaM(stationM), windowM)

/** Where the shot may arrive: absolute offsets in each plane at reception and the chance to land in the window. */
export function deviationPart(
  shot: Shot,
  path: ShotPath,
  isGravity: boolean,
  assumed: Assumed,
  trace: Trace,
  about: string,
): DeviationPart {
  const stationM = shot.toM - shot.fromM
  const windowM = assumed.use('line.hitWindow')
  const { sigmaM } = trace.run(deviation, { stationM, ...path.wandering }, about)
  const { sideways, vertical } = path
  const hit =
    path.observed.length === 0
      ? trace.run(hitChance, { halfWindowM: windowM, sigmaM }, about).probability
      : within(sideways, stationM, windowM) * within(vertical, stationM, windowM)
  return {
    lateralM: offBy(sideways, stationM),
    verticalM: offBy(vertical, stationM),
    hitProbability: Math.min(MOST_CHANCE, hit),
    windowM,
    gradeProbability: isGravity ? within(vertical, stationM, GRADE_WINDOW_M) : null,
  }
}
