import type { CrossingInput, UtilityInput } from './crossing-input.ts'
import { type ReachBeside, reachBeside } from './line-extent.ts'

/** A gravity line proved another way has no hole to stand at. */
const holed = ({ utilities }: CrossingInput): readonly UtilityInput[] =>
  (utilities ?? []).filter((each) => each.evidence !== 'proved')

/** At a crossing its hole; beside a line alongside, the last of its holes, where drift is most. */
const isOpenOn = (shot: ReachBeside, utility: UtilityInput): boolean =>
  utility.stationM === null
    ? reachBeside(utility, shot) !== null
    : utility.stationM >= shot.fromM && utility.stationM <= shot.toM

/** Watchers one bore needs: one at every open hole over a listed line. */
export const watchersOn = (input: CrossingInput, shot: ReachBeside): number =>
  holed(input).filter((each) => isOpenOn(shot, each)).length

/** One watcher for every open hole over a listed line; the crew itself has operator and exit. Common practice. */
export const watchersOf = (input: CrossingInput, shots: readonly ReachBeside[]): number =>
  holed(input).reduce(
    (sum, each) => sum + (each.stationM === null ? shots.filter((shot) => isOpenOn(shot, each)).length : 1),
    0,
  )
