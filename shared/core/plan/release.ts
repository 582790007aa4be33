import type { AirPart } from './air-part.ts'
import { askedReasons } from './asked-reasons.ts'
import type { CrossingInput, UtilityInput } from './crossing-input.ts'
import type { PathPart } from './path-parts.ts'
import type {
  BorePart,
  ClearancePart,
  DeviationPart,
  PitPart,
  PullPart,
  ReasonKind,
  ReleasePart,
  ReleaseReason,
  RunPart,
} from './plan.ts'
import { reason } from './reason.ts'

export type ReleaseFacts = {
  readonly input: CrossingInput
  readonly bore: BorePart
  readonly air: AirPart
  readonly run: RunPart
  readonly deviation: DeviationPart
  readonly paths: readonly PathPart[]
  readonly clearances: readonly ClearancePart[]
  readonly pull: PullPart
  readonly pullObjection: string | null
  readonly isOutsideModel: boolean
  /** Axis below ground where the bore meets a wall; null without one. */
  readonly wallAxisDepthM: number | null
  readonly coilShortByM: number
  readonly pits: readonly PitPart[]
}

const ORDER: readonly ReasonKind[] = ['rule', 'missing', 'advice']
/** A gravity line too deep to reach may be proved another way; every other crossing is exposed. */
const mayBeProved = (u: UtilityInput): boolean =>
  u.evidence === 'proved' && (u.kind === 'sewer' || u.kind === 'storm')

/** What is proved and not seen keeps 3 ft and more between. Common practice. */
const PROVED_GAP_M = 0.9144

function lineReasons({ input, clearances }: ReleaseFacts): ReleaseReason[] {
  const found: ReleaseReason[] = []
  ;(input.utilities ?? []).forEach((u, index) => {
    const values = { line: index + 1, kind: u.kind }
    if (u.evidence !== 'exposed' && !mayBeProved(u)) {
      found.push(reason('rule', u.stationM === null ? 'parallel-not-exposed' : 'line-not-exposed', values))
    }
    const gapM = clearances.find((each) => each.utility === index)?.gapM ?? null
    if (u.evidence === 'proved' && gapM !== null && gapM < PROVED_GAP_M) {
      found.push(reason('rule', 'proved-too-near', { ...values, gapM }))
    }
    if (u.depth === null) found.push(reason('missing', 'line-depth-not-known', values))
    // Of a line alongside as well: without its size it would count as thin, and farther off than it is.
    if (u.diameterM === null) found.push(reason('missing', 'line-size-not-known', values))
    if (u.ownerClearanceM !== null && u.ownerClearanceBy === null)
      found.push(reason('missing', 'clearance-without-name', values))
  })
  for (const each of clearances) {
    if (each.shortM !== null && each.shortM > 0) {
      found.push(
        reason('rule', 'clearance-short', {
          line: each.utility + 1,
          kind: each.kind,
          shortM: each.shortM,
          requiredM: each.requiredM,
          separationM: each.separationM ?? 0,
        }),
      )
    }
  }
  return found
}

/** 29 CFR 1926.652: past 20 ft a pit is designed by a registered engineer. */
const ENGINEER_FROM_M = 6.096
/** A tool rated for less than it gets: a tenth over is a gauge's error, more is a choice somebody must undo. */
const OVER_RATING = 1.1

function siteReasons({ input, pits, air }: ReleaseFacts): ReleaseReason[] {
  const found: ReleaseReason[] = []
  const floorM = Math.max(0, ...pits.map((pit) => pit.floorDepthM))
  if (floorM > ENGINEER_FROM_M) found.push(reason('rule', 'pit-needs-engineer', { floorM }))
  if (['wall', 'handhole'].includes(input.ends.launch.kind)) {
    found.push(reason('rule', 'launch-has-no-pit', { end: input.ends.launch.kind }))
  }
  const ratedGaugePa = input.tool.ratedGaugePa
  if (ratedGaugePa !== null && air.toolGaugePa > ratedGaugePa * OVER_RATING) {
    found.push(reason('rule', 'over-rated-pressure', { toolGaugePa: air.toolGaugePa, ratedGaugePa }))
  }
  if (ratedGaugePa === null && air.flag === 'high') {
    found.push(reason('missing', 'tool-rating-not-given', { toolGaugePa: air.toolGaugePa }))
  }
  const { ratedGaugePa: weakestGaugePa, mostGaugePa } = air.hazard ?? { ratedGaugePa: null, mostGaugePa: 0 }
  if (weakestGaugePa !== null && mostGaugePa > weakestGaugePa) {
    found.push(reason('rule', 'over-hose-rating', { toolGaugePa: mostGaugePa, ratedGaugePa: weakestGaugePa }))
  }
  return found
}

/** Sewer pipe is laid to a grade; one nobody gave is a fact that is missing, not a line without grade. */
function gradeReasons({ input }: ReleaseFacts): ReleaseReason[] {
  const isGravity = input.pipes.some((pipe) => pipe.system === 'pvc-sewer')
  return isGravity && input.grade === null ? [reason('missing', 'grade-not-given')] : []
}

function coverReasons({ bore }: ReleaseFacts): ReleaseReason[] {
  return bore.coverByReach.flatMap((reach) => {
    const values = {
      kind: reach.kind,
      fromM: reach.fromM,
      toM: reach.toM,
      coverM: reach.coverM,
      coverRatio: reach.coverRatio,
      wantedM: reach.wantedM,
    }
    if (reach.verdict === 'hold') return [reason('rule', 'cover-too-small', values)]
    return reach.verdict === 'check' ? [reason('advice', 'cover-check', values)] : []
  })
}

/** A bore that meets a wall passes above its footing, by half the bore and an inch or two to core. Common practice. */
const ABOVE_FOOTING_M = 0.05

function wallReasons({ input, bore, wallAxisDepthM }: ReleaseFacts): ReleaseReason[] {
  if (wallAxisDepthM === null) return []
  const footingM = input.ends.reception.footingDepthM
  if (footingM === null) return [reason('missing', 'footing-not-known')]
  const bottomM = wallAxisDepthM + bore.diameterM / 2
  return bottomM + ABOVE_FOOTING_M > footingM
    ? [reason('rule', 'bore-at-footing', { bottomM, footingM })]
    : []
}

/** Long for its body: 2 in 25 ft, 3 in 40 ft, 4 in and up 60 ft. Common practice. */
function longForBody(diameterM: number): number {
  if (diameterM < 0.06) return 7.62
  return diameterM < 0.09 ? 12.19 : 18.29
}
const UNGUIDED_MOST_M = 45.72

function adviceReasons(facts: ReleaseFacts): ReleaseReason[] {
  const { bore, air, run, deviation, input } = facts
  const found: ReleaseReason[] = []
  const longestM = longestShotM(input, bore.lengthM)
  if (longestM > UNGUIDED_MOST_M) found.push(reason('rule', 'shot-beyond-unguided', { lengthM: longestM }))
  else if (longestM > longForBody(input.tool.diameterM))
    found.push(reason('advice', 'shot-long-for-body', { lengthM: longestM }))
  if (facts.isOutsideModel) found.push(reason('rule', 'ground-outside-model'))
  if (facts.pullObjection)
    found.push(
      reason('rule', 'pull-not-sane', { method: facts.pull.method ?? 'none', why: facts.pullObjection }),
    )
  if (facts.coilShortByM > 0) found.push(reason('rule', 'coil-too-short', { shortM: facts.coilShortByM }))
  if (bore.fit === 'tight' || bore.fit === 'tow-tight')
    found.push(reason('advice', 'fit-tight', { ratio: bore.ratio }))
  if (bore.fit === 'very-wide') found.push(reason('advice', 'gap-wide', { radialGapM: bore.radialGapM }))
  if (air.flag === 'low') found.push(reason('rule', 'air-too-low', { toolGaugePa: air.toolGaugePa }))
  if (air.flag === 'weak') found.push(reason('advice', 'air-weak', { toolGaugePa: air.toolGaugePa }))
  if (run.arrivalProbability < 0.5)
    found.push(reason('advice', 'unlikely-to-arrive', { probability: run.arrivalProbability }))
  else if (run.arrivalProbability < 0.9)
    found.push(reason('advice', 'may-not-arrive', { probability: run.arrivalProbability }))
  if (deviation.hitProbability < 0.9)
    found.push(reason('advice', 'may-miss-window', { probability: deviation.hitProbability }))
  if (deviation.gradeProbability !== null) {
    found.push(reason('rule', 'grade-not-promised', { probability: deviation.gradeProbability }))
  }
  return found
}

/** Out by more than a hundredth at the first look: the last chance to start over. Common practice. */
const FIRST_LOOK_SHARE = 0.01
/** Readings that fit explain one another to within their errors; half as much again is no longer chance. */
const WIDER_THAN_CHANCE = 1.5

/** What was seen of the tool on its way. */
function pathReasons({ paths, input }: ReleaseFacts): ReleaseReason[] {
  return paths.flatMap((path, index) => {
    const fromM = input.shots[index - 1]?.toM ?? 0
    const strayed = path.observations.flatMap(({ method, stationM: atM, rightM, lowM }) => {
      const stationM = atM - fromM
      const offM = Math.hypot(rightM ?? 0, lowM ?? 0)
      const isOut = method === 'first-metre' && offM > FIRST_LOOK_SHARE * stationM
      return isOut ? [reason('advice', 'start-again', { offM, stationM })] : []
    })
    const times = Math.max(path.wideningSideways, path.wideningVertical)
    if (times <= WIDER_THAN_CHANCE) return strayed
    return [...strayed, reason('advice', 'readings-disagree', { number: index + 1, times })]
  })
}

function longestShotM(input: CrossingInput, lengthM: number): number {
  const stations = [0, ...input.shots.map((shot) => shot.toM), lengthM]
  let longest = 0
  for (let index = 1; index < stations.length; index++) {
    longest = Math.max(longest, (stations[index] ?? 0) - (stations[index - 1] ?? 0))
  }
  return longest
}

/** Rules and missing facts hold; chances and advice never make or lift a hold. Never ready: that is said on site. */
export function releasePart(facts: ReleaseFacts): ReleasePart {
  const all = [
    ...lineReasons(facts),
    ...coverReasons(facts),
    ...wallReasons(facts),
    ...gradeReasons(facts),
    ...siteReasons(facts),
    ...pathReasons(facts),
    ...askedReasons(facts.input),
    ...adviceReasons(facts),
  ]
  const reasons = [...all].sort((a, b) => ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind))
  return { status: reasons.some((each) => each.kind !== 'advice') ? 'hold' : 'check', reasons }
}
