import { choleskyFactor, dot, solveLower, solveUpper } from '../numerics/cholesky.ts'
import { pathCovarianceM2, type Wander } from './path-covariance.ts'

/** Where the tool was found to be in one plane. */
export type Reading = {
  /** Along the shot, from its launch face. */
  readonly stationM: number
  /** Off the planned axis. */
  readonly offsetM: number
  /** Error of the reading, one standard deviation. */
  readonly sigmaM: number
  /** Seen with eyes in a hole: near it, no instrument is believed against it. */
  readonly isSeen: boolean
}

/** What is known of the path in one plane: normal at every station. */
export type PathBelief = {
  readonly wander: Wander
  readonly readings: readonly Reading[]
  meanM(stationM: number): number
  covarianceM2(firstM: number, secondM: number): number
  sigmaM(stationM: number): number
  /** 1 where the readings agree with one another and with how tools wander; more where they do not. */
  readonly widening: number
}

/** So near a hole in which the tool was seen, an instrument's reading gives way. */
const OVERRULED_WITHIN_M = 0.5
/** No tape is exact. */
const LEAST_SIGMA_M = 0.001

/** The readings that move the path: what was seen, and instruments where nothing was seen close by. */
export function believed(readings: readonly Reading[]): readonly Reading[] {
  const seen = readings.filter((each) => each.isSeen)
  return readings.filter(
    (each) =>
      each.isSeen || !seen.some((other) => Math.abs(other.stationM - each.stationM) <= OVERRULED_WITHIN_M),
  )
}

type Solved = {
  readonly kept: readonly Reading[]
  readonly lower: readonly (readonly number[])[]
  readonly weights: readonly number[]
}

function solve(wander: Wander, readings: readonly Reading[]): Solved {
  const errorM2 = (each: Reading) => Math.max(LEAST_SIGMA_M, each.sigmaM) ** 2
  const matrix = readings.map((row, i) =>
    readings.map(
      (column, j) => pathCovarianceM2(wander, row.stationM, column.stationM) + (i === j ? errorM2(row) : 0),
    ),
  )
  const lower = choleskyFactor(matrix)
  const offsets = readings.map((each) => each.offsetM)
  return { kept: readings, lower, weights: solveUpper(lower, solveLower(lower, offsets)) }
}

/**
 * The path given every reading: mean kᵀ·(K + R)⁻¹·z and covariance k(s, t) − kᵀ·(K + R)⁻¹·k. Where the readings lie
 * farther apart, or farther out, than wander and their errors explain (zᵀ·(K + R)⁻¹·z above their number), every doubt
 * is widened by the root of the ratio: the ground wanders more than was thought, or a reading is wrong.
 */
export function pathBelief(wander: Wander, readings: readonly Reading[]): PathBelief {
  const { kept, lower, weights } = solve(wander, believed(readings))
  const every = readings.length === kept.length ? { kept, lower, weights } : solve(wander, readings)
  const misfit = dot(
    every.weights,
    every.kept.map((each) => each.offsetM),
  )
  const widening = readings.length === 0 ? 1 : Math.max(1, Math.sqrt(misfit / readings.length))
  const shared = (stationM: number): readonly number[] =>
    kept.map((each) => pathCovarianceM2(wander, stationM, each.stationM))
  const covarianceM2 = (firstM: number, secondM: number): number => {
    const before = pathCovarianceM2(wander, firstM, secondM)
    const learnt = dot(solveLower(lower, shared(firstM)), solveLower(lower, shared(secondM)))
    return (before - learnt) * widening ** 2
  }
  return {
    wander,
    readings,
    widening,
    covarianceM2,
    meanM: (stationM) => dot(shared(stationM), weights),
    sigmaM: (stationM) => Math.sqrt(Math.max(0, covarianceM2(stationM, stationM))),
  }
}

/** Doubt at a station once the tool will have been watched through a hole before it, whatever is seen there. */
export function sigmaAfterHoleM(belief: PathBelief, stationM: number, holeM: number, errorM: number): number {
  const before = belief.covarianceM2(stationM, stationM)
  const seenM2 = belief.covarianceM2(holeM, holeM) + Math.max(LEAST_SIGMA_M, errorM) ** 2
  return Math.sqrt(Math.max(0, before - belief.covarianceM2(stationM, holeM) ** 2 / seenM2))
}
