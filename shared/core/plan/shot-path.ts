import { observedDeviation } from '../line/observed-deviation.ts'
import { believed, type PathBelief, pathBelief } from '../line/path-belief.ts'
import { offByM } from '../statistics/off-by.ts'
import type { Trace } from '../trace.ts'
import type { Assumed } from './assumptions.ts'
import type { BoreLine, Shot } from './bore-line.ts'
import type { CrossingInput } from './crossing-input.ts'
import type { PathPart } from './path-parts.ts'
import { type Observed, observedIn, readingsOf } from './readings.ts'
import type { Stretch } from './stretches.ts'
import { aimRadOf, driftOver, type Wandering } from './wandering.ts'

/** The path of one shot as it is believed to run, with what was seen of it. */
export type ShotPath = {
  readonly wandering: Wandering
  readonly observed: readonly Observed[]
  /** Right of the line is positive. */
  readonly sideways: PathBelief
  /** Below the line is positive. */
  readonly vertical: PathBelief
}

/** Points the path is given at, besides those where it was seen. */
const STEPS = 24
const NINE_IN_TEN = 0.9

export function shotPath(
  shot: Shot,
  line: BoreLine,
  stretches: readonly Stretch[],
  tool: { readonly lengthM: number },
  input: Pick<CrossingInput, 'aim' | 'observations'>,
  assumed: Assumed,
  trace: Trace,
  about: string,
): ShotPath {
  const course = { fromM: shot.fromM, toM: shot.toM, isFromOtherEnd: false }
  const wandering = {
    aimRad: aimRadOf(input.aim, tool.lengthM, assumed),
    driftRadPerSqrtM: driftOver(course, stretches, assumed.use('line.drift')),
  }
  const observed = observedIn(shot, line, input.observations, assumed)
  const sideways = pathBelief(wandering, readingsOf(observed, 'rightM'))
  const vertical = pathBelief(wandering, readingsOf(observed, 'lowM'))
  if (observed.length > 0) {
    const stationM = shot.toM - shot.fromM
    const readings = observed.map((each) => `${each.stationM} m ± ${each.errorM} m`).join(', ')
    for (const [plane, belief] of [
      ['sideways', sideways],
      ['up and down', vertical],
    ] as const) {
      trace.note(
        observedDeviation,
        { stationM, ...wandering, plane, readings, widening: belief.widening },
        { meanM: belief.meanM(stationM), sigmaM: belief.sigmaM(stationM) },
        about,
      )
    }
  }
  return { wandering, observed, sideways, vertical }
}

/** Where the shot runs, for drawing and for reading: nine in ten lie within, in each plane. */
export function pathPart(shot: Shot, { observed, sideways, vertical }: ShotPath): PathPart {
  const lengthM = shot.toM - shot.fromM
  const steps = Array.from({ length: STEPS + 1 }, (_, step) => (lengthM * step) / STEPS)
  const stations = [...new Set([...steps, ...observed.map((each) => each.stationM)])].sort((a, b) => a - b)
  const spreadM = (belief: PathBelief, atM: number): number => offByM(0, belief.sigmaM(atM), NINE_IN_TEN)
  const movesRight = new Set(believed(sideways.readings).map((each) => each.stationM))
  const movesLow = new Set(believed(vertical.readings).map((each) => each.stationM))
  return {
    points: stations.map((atM) => ({
      stationM: shot.fromM + atM,
      rightM: sideways.meanM(atM),
      lowM: vertical.meanM(atM),
      sidewaysP90M: spreadM(sideways, atM),
      verticalP90M: spreadM(vertical, atM),
    })),
    observations: observed.map(({ index, said, stationM, errorM }) => ({
      observation: index,
      method: said.method,
      stationM: said.stationM,
      rightM: said.rightM,
      lowM: said.lowM,
      errorM,
      isOverruled: !movesRight.has(stationM) && !movesLow.has(stationM),
    })),
    wideningSideways: sideways.widening,
    wideningVertical: vertical.widening,
  }
}
