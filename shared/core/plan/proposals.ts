import type { ClearanceFacts } from './clearances.ts'
import type { UtilityInput } from './crossing-input.ts'
import { holesIn, plannedDriftM } from './drift-to-line.ts'
import { extent } from './line-extent.ts'
import type { Proposal } from './path-parts.ts'
import type { ClearancePart } from './plan.ts'
import { type Course, driftOver, type Wandering } from './wandering.ts'

export type ProposalFacts = ClearanceFacts & {
  readonly index: number
  readonly utilities: readonly UtilityInput[]
  readonly clearances: readonly ClearancePart[]
  /** Drift of the tool in even ground. */
  readonly driftBase: number
  readonly tapeErrorM: number
  readonly leastCoverM: number
}

/** A line as a change of the bore meets it: everything it needs but the drift. */
type Met = {
  readonly stationM: number
  readonly separationM: number
  readonly withoutDriftM: number
  readonly driftM: number
  readonly topM: number | null
  readonly bottomM: number | null
  readonly axisDepthM: number
}

/** A millimetre is nothing to act on. */
const WORTH_M = 0.001
const MOST_MOVE_M = 3
/** Bore diameters that stay above a bore moved up; what its surface asks is checked beside this. */
const LEAST_COVER_RATIO = 5
const PIT_STEP_M = 0.5
const MOST_PITS_TRIED = 100
const PIT_FROM_END_M = 2
const PIT_FROM_LINE_M = 1

function metBy({ clearances, utilities }: ProposalFacts): readonly Met[] {
  return clearances.flatMap((each) => {
    const utility = utilities[each.utility]
    if (each.separationM === null || utility === undefined) return []
    const depths = utility.stationM === null ? null : extent(utility)
    return [
      {
        stationM: each.stationM ?? each.driftFrom.stationM,
        separationM: each.separationM,
        withoutDriftM: each.requiredM - each.parts.driftM,
        driftM: each.parts.driftM,
        topM: depths?.topM ?? null,
        bottomM: depths?.bottomM ?? null,
        axisDepthM: each.axisDepthM,
      },
    ]
  })
}

const worst = (shorts: readonly number[]): number => Math.max(0, ...shorts)

/** Wander along a course of its own, with the same aim and tool. */
const wanderOn = (facts: ProposalFacts, course: Course): Wandering => ({
  aimRad: facts.path.wandering.aimRad,
  driftRadPerSqrtM: driftOver(course, facts.stretches, facts.driftBase),
})

/** What a line is short of when its shot runs another course. A line alongside is met at the far end. */
function shortOn(facts: ProposalFacts, holesM: readonly number[], course: Course): (line: Met) => number {
  const { fromM, toM, isFromOtherEnd } = course
  const wandering = wanderOn(facts, course)
  const localM = (stationM: number): number => (isFromOtherEnd ? toM - stationM : stationM - fromM)
  const onWayM = holesM.map(localM).filter((each) => each > 0)
  return (line) => {
    const isParallel = line.topM === null
    const at = isParallel ? (isFromOtherEnd ? fromM : toM) : line.stationM
    const driftM = plannedDriftM(wandering, localM(at), onWayM, facts.tapeErrorM)
    return Math.max(0, line.withoutDriftM + driftM - line.separationM)
  }
}

function otherEnd(facts: ProposalFacts, lines: readonly Met[], holesM: readonly number[]): number {
  const course = { fromM: facts.shot.fromM, toM: facts.shot.toM, isFromOtherEnd: true }
  return worst(lines.map(shortOn(facts, holesM, course)))
}

/** What is short once the whole shot lies so much deeper. */
function shortMoved(lines: readonly Met[], moveM: number): number {
  return worst(
    lines.map((line) => {
      const requiredM = line.withoutDriftM + line.driftM
      if (line.topM === null || line.bottomM === null) return requiredM - line.separationM
      const axisM = line.axisDepthM + moveM
      const underM = axisM - line.bottomM
      const overM = line.topM - axisM
      return requiredM - Math.max(underM, overM)
    }),
  )
}

/** The least move that leaves every line its room: one of those that leave one line exactly its room. */
function moves(lines: readonly Met[]): readonly number[] {
  return lines.flatMap((line) => {
    if (line.topM === null || line.bottomM === null) return []
    const requiredM = line.withoutDriftM + line.driftM
    return [line.bottomM + requiredM - line.axisDepthM, line.topM - requiredM - line.axisDepthM]
  })
}

function byDepth(facts: ProposalFacts, lines: readonly Met[]): readonly (readonly [number, number])[] {
  const mostUpM = facts.leastCoverM - LEAST_COVER_RATIO * facts.boreDiameterM
  const good = moves(lines)
    .filter((each) => Math.abs(each) > WORTH_M && each <= MOST_MOVE_M && each >= -mostUpM)
    .map((each): readonly [number, number] => [each, shortMoved(lines, each)])
    .sort((a, b) => a[1] - b[1] || Math.abs(a[0]) - Math.abs(b[0]))
  const better = (isDown: boolean) => good.find(([moveM]) => moveM > 0 === isDown)
  return [better(true), better(false)].filter((each) => each !== undefined)
}

function extraPit(
  facts: ProposalFacts,
  lines: readonly Met[],
  holesM: readonly number[],
): readonly [number, number] | null {
  const { fromM, toM } = facts.shot
  const middleM = (fromM + toM) / 2
  const stepM = Math.max(PIT_STEP_M, (toM - fromM) / MOST_PITS_TRIED)
  const crossings = lines.filter((line) => line.topM !== null)
  let best: readonly [number, number] | null = null
  for (let step = 1; fromM + step * stepM < toM; step++) {
    const atM = fromM + step * stepM
    const isTooNear = crossings.some((line) => Math.abs(line.stationM - atM) < PIT_FROM_LINE_M)
    if (atM - fromM < PIT_FROM_END_M || toM - atM < PIT_FROM_END_M || isTooNear) continue
    const before = shortOn(facts, holesM, { fromM, toM: atM, isFromOtherEnd: false })
    const after = shortOn(facts, holesM, { fromM: atM, toM, isFromOtherEnd: false })
    const shortM = worst(
      lines.flatMap((line) => {
        if (line.topM === null) return [before(line), after(line)]
        return [line.stationM < atM ? before(line) : after(line)]
      }),
    )
    const isNearer =
      best !== null && shortM === best[1] && Math.abs(atM - middleM) < Math.abs(best[0] - middleM)
    if (best === null || shortM < best[1] || isNearer) best = [atM, shortM]
  }
  return best
}

/**
 * Changes that give the lines of a shot more room, the best first: launch from the other end, another depth, a pit in
 * between. None where every line has its room, nor once the bore is under way.
 */
export function proposalsPart(facts: ProposalFacts): Proposal[] {
  const lines = metBy(facts)
  const shortM = worst(lines.map((line) => line.withoutDriftM + line.driftM - line.separationM))
  if (shortM <= WORTH_M || facts.path.observed.length > 0) return []
  const common = { shot: facts.index, shortM, stationM: null, moveM: null }
  const holesM = holesIn(facts.shot, facts.utilities).map((each) => each + facts.shot.fromM)
  const pit = extraPit(facts, lines, holesM)
  const all: Proposal[] = [
    { ...common, code: 'other-end', shortAfterM: otherEnd(facts, lines, holesM) },
    ...byDepth(facts, lines).map(
      ([moveM, shortAfterM]): Proposal => ({
        ...common,
        code: moveM > 0 ? 'deeper' : 'shallower',
        moveM: Math.abs(moveM),
        shortAfterM,
      }),
    ),
    ...(pit === null
      ? []
      : [{ ...common, code: 'extra-pit' as const, stationM: pit[0], shortAfterM: pit[1] }]),
  ]
  return all
    .filter((each) => each.shortAfterM < shortM - WORTH_M)
    .sort((a, b) => Math.max(WORTH_M, a.shortAfterM) - Math.max(WORTH_M, b.shortAfterM))
}
