import { deviation } from '../line/deviation.ts'
import { observedDeviation } from '../line/observed-deviation.ts'
import { pathBelief, sigmaAfterHoleM } from '../line/path-belief.ts'
import { normalQuantile } from '../statistics/normal.ts'
import type { Trace } from '../trace.ts'
import type { Shot } from './bore-line.ts'
import type { UtilityInput } from './crossing-input.ts'
import type { ClearancePart } from './plan.ts'
import { HALF_WIDTH_TO_SIGMA, type Observed } from './readings.ts'
import type { ShotPath } from './shot-path.ts'
import type { Wandering } from './wandering.ts'

/** The allowance is what nine bores in ten stay within, either way. */
const NINE_IN_TEN_SIGMAS = normalQuantile(0.95)

/** Which way the line lies: along the positive direction of the plane, against it, or nobody knows. */
export type Side = 1 | -1 | 0

export type DriftAsked = {
  readonly shot: Shot
  readonly path: ShotPath
  /** Lines the tool is watched past before the station: their places along the shot. */
  readonly holesM: readonly number[]
  /** Along the shot. */
  readonly stationM: number
  readonly plane: 'rightM' | 'lowM'
  readonly towards: Side
  /** Of a tape in a hole, either way, 19 times in 20. */
  readonly tapeErrorM: number
  readonly about: string
}

export type DriftFound = {
  readonly driftM: number
  /** Standard deviation there, and the most likely place. */
  readonly sigmaM: number
  readonly meanM: number
  readonly from: ClearancePart['driftFrom']
}

/** The holes over lines that are opened up, within a shot. */
export const holesIn = (shot: Shot, utilities: readonly UtilityInput[]): readonly number[] =>
  utilities.flatMap(({ evidence, stationM }) =>
    evidence === 'exposed' && stationM !== null && stationM > shot.fromM && stationM < shot.toM
      ? [stationM - shot.fromM]
      : [],
  )

const lastBefore = (places: readonly number[], stationM: number): number | null => {
  const before = places.filter((each) => each < stationM)
  return before.length === 0 ? null : Math.max(...before)
}

/** Allowance of a bore not begun: counted from its launch, or from the last hole the tool is watched through. */
export function plannedDriftM(
  wandering: Wandering,
  stationM: number,
  holesM: readonly number[],
  tapeErrorM: number,
): number {
  const belief = pathBelief(wandering, [])
  const holeM = lastBefore(holesM, stationM)
  const freeM = belief.sigmaM(stationM) * NINE_IN_TEN_SIGMAS
  if (holeM === null) return freeM
  const sigmaM = sigmaAfterHoleM(belief, stationM, holeM, tapeErrorM / HALF_WIDTH_TO_SIGMA)
  return Math.max(sigmaM * NINE_IN_TEN_SIGMAS, Math.min(freeM, tapeErrorM))
}

/** The look that counts at a station: the last before it, else the first after. Of several there, the best. */
function lookAt(path: ShotPath, plane: 'rightM' | 'lowM', stationM: number): Observed | null {
  const looks = path.observed.filter(({ said }) => said[plane] !== null)
  const before = looks.filter((each) => each.stationM <= stationM)
  const sorted = [...(before.length > 0 ? before : looks)].sort((a, b) =>
    before.length > 0 ? b.stationM - a.stationM || a.errorM - b.errorM : a.stationM - b.stationM,
  )
  return sorted[0] ?? null
}

/** How far towards the line; either way where its side is not known. */
const aimed = (offsetM: number, towards: Side): number =>
  towards === 0 ? Math.abs(offsetM) : Math.max(0, offsetM * towards)

/**
 * What drift may have built up where a line is met. A look at the tool moves the rest of the path; towards the line
 * that counts in full, away from it not at all. It never brings the allowance below the look's own error and what it
 * saw; a hole the tool is still to be watched through counts from there on.
 */
export function driftToLine(asked: DriftAsked, trace: Trace): DriftFound {
  const { path, stationM, plane, towards, tapeErrorM, about, shot } = asked
  const belief = plane === 'rightM' ? path.sideways : path.vertical
  const look = lookAt(path, plane, stationM)
  const seenUpTo = Math.max(0, ...path.observed.map((each) => each.stationM))
  const holeM = lastBefore(
    asked.holesM.filter((each) => each > seenUpTo),
    stationM,
  )
  const priorM = pathBelief(path.wandering, []).sigmaM(stationM) * NINE_IN_TEN_SIGMAS
  const tapeSigmaM = tapeErrorM / HALF_WIDTH_TO_SIGMA
  const meanM = belief.meanM(stationM)
  const sigmaM =
    holeM === null ? belief.sigmaM(stationM) : sigmaAfterHoleM(belief, stationM, holeM, tapeSigmaM)
  if (look === null && holeM === null) trace.run(deviation, { stationM, ...path.wandering }, about)
  else if (look === null && holeM !== null) {
    const given = { stationM, sightingM: holeM, sightingErrorM: tapeSigmaM, ...path.wandering }
    trace.run(observedDeviation, given, about)
  } else {
    trace.note(
      observedDeviation,
      { stationM, sightings: path.observed.length, ...path.wandering },
      { meanM, sigmaM },
      about,
    )
  }
  const spreadM = aimed(meanM, towards) + sigmaM * NINE_IN_TEN_SIGMAS
  const ofLookM = look === null ? 0 : aimed(look.said[plane] ?? 0, towards) + look.errorM
  const floorM = holeM === null ? ofLookM : tapeErrorM
  const from: ClearancePart['driftFrom'] =
    holeM !== null
      ? { by: 'hole', stationM: shot.fromM + holeM }
      : look !== null
        ? { by: look.said.method, stationM: look.said.stationM }
        : { by: 'launch', stationM: shot.fromM }
  return { driftM: Math.max(spreadM, Math.min(priorM, floorM)), sigmaM, meanM, from }
}
