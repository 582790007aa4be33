import { choleskyFactor, dot, solveLower } from '../numerics/cholesky.ts'
import { scrambledSobol } from '../numerics/sobol.ts'
import { normalQuantile } from '../statistics/normal.ts'
import type { PathBelief } from './path-belief.ts'

/** A line beside the bore, measured; distances are from the planned axis of the bore to the axis of the line. */
export type Beside = {
  readonly sideways: PathBelief
  readonly vertical: PathBelief
  readonly lengthM: number
  /** Along the shot, where the line runs beside it. */
  readonly fromM: number
  readonly toM: number
  /** The line lies so far right of the planned bore. */
  readonly offsetM: number
  /** The line lies so far below the planned bore, at a station along the shot. */
  readonly belowM: (stationM: number) => number
  /** Sum of the two radii. */
  readonly reachM: number
  /** Error of where the line is, one standard deviation, in each plane. */
  readonly lineSigmaM: number
  readonly seed: number
  readonly draws: number
}

/** Places a path is drawn through, as shares of its length; the far end first, for there most is decided. */
const ANCHORS = [1, 0.6, 0.3, 0.8, 0.15]
const STEPS = 24
const LEAST_VARIANCE_M2 = 1e-10
/** Two planes of anchors and the line's own place: the dimensions of a point. */
const LINE_DIMENSIONS = [2, 3]
const SIDEWAYS_DIMENSIONS = [0, 4, 6, 8, 10]
const VERTICAL_DIMENSIONS = [1, 5, 7, 9, 11]

type Plane = { readonly means: readonly number[]; readonly weights: readonly (readonly number[])[] }

/** The path at every step as a mean and weights on independent normals: the mean path through its anchors. */
function planeOf(belief: PathBelief, stations: readonly number[], lengthM: number): Plane {
  const anchors = ANCHORS.map((share) => share * lengthM)
  const lower = choleskyFactor(
    anchors.map((a, i) =>
      anchors.map((b, j) => belief.covarianceM2(a, b) + (i === j ? LEAST_VARIANCE_M2 : 0)),
    ),
  )
  const shared = (stationM: number) => anchors.map((each) => belief.covarianceM2(stationM, each))
  return {
    means: stations.map((each) => belief.meanM(each)),
    weights: stations.map((each) => solveLower(lower, shared(each))),
  }
}

/** Nearest approach to the origin of a straight step between two places in the section across the bore. */
function nearestM(fromX: number, fromZ: number, toX: number, toZ: number): number {
  const dx = toX - fromX
  const dz = toZ - fromZ
  const square = dx * dx + dz * dz
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, -(fromX * dx + fromZ * dz) / square))
  return Math.hypot(fromX + share * dx, fromZ + share * dz)
}

export type ParallelContact = {
  /** Share of paths that come within reach anywhere. */
  readonly probability: number
  /** The largest share within reach at one station: the whole is at least that. */
  readonly atOneStation: number
}

/**
 * Chance that a path touches a line it runs beside: whole paths are drawn, seeded, in both planes, and one that comes
 * within reach anywhere counts once.
 */
export function parallelContact(beside: Beside): ParallelContact {
  const { lengthM, reachM, seed, draws } = beside
  const spanM = beside.toM - beside.fromM
  const stations = Array.from({ length: STEPS + 1 }, (_, step) => beside.fromM + (spanM * step) / STEPS)
  const sideways = planeOf(beside.sideways, stations, lengthM)
  const vertical = planeOf(beside.vertical, stations, lengthM)
  const below = stations.map(beside.belowM)
  const scores = (dimensions: readonly number[]) =>
    dimensions.map((each) => scrambledSobol(draws, each, seed).map(normalQuantile))
  const right = scores(SIDEWAYS_DIMENSIONS)
  const down = scores(VERTICAL_DIMENSIONS)
  const line = scores(LINE_DIMENSIONS)
  const at = (points: readonly Float64Array[], draw: number) => points.map((each) => each[draw] ?? 0)
  const inReach = stations.map(() => 0)
  let touched = 0
  for (let draw = 0; draw < draws; draw++) {
    const zRight = at(right, draw)
    const zDown = at(down, draw)
    const [lineRight = 0, lineDown = 0] = at(line, draw).map((each) => each * beside.lineSigmaM)
    let isTouched = false
    let beforeX = 0
    let beforeZ = 0
    stations.forEach((_, step) => {
      const x =
        (sideways.means[step] ?? 0) + dot(sideways.weights[step] ?? [], zRight) - beside.offsetM - lineRight
      const z =
        (vertical.means[step] ?? 0) + dot(vertical.weights[step] ?? [], zDown) - (below[step] ?? 0) - lineDown
      if (Math.hypot(x, z) < reachM) inReach[step] = (inReach[step] ?? 0) + 1
      if (step > 0 && nearestM(beforeX, beforeZ, x, z) < reachM) isTouched = true
      beforeX = x
      beforeZ = z
    })
    if (isTouched) touched += 1
  }
  return { probability: touched / draws, atOneStation: Math.max(...inReach) / draws }
}
