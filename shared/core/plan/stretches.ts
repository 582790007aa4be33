import type { GroundState } from '../ground/ground-state.ts'
import { groundState } from '../ground/ground-state.ts'
import type { Issue, Outcome } from '../outcome.ts'
import type { Assumed } from './assumptions.ts'
import type { BoreLine } from './bore-line.ts'
import type { CrossingInput, GroundInput } from './crossing-input.ts'

/** Ground that stays the same within one shot. */
export type Stretch = {
  readonly shot: number
  /** Which entry of the file's `ground` it comes from. */
  readonly ground: number
  readonly fromM: number
  readonly toM: number
  readonly lengthM: number
  /** Axis below ground at its middle. */
  readonly axisDepthM: number
  readonly state: GroundState
  readonly waterTableM: number | null
  /** Observed over planned rate, learned from past bores; 1 where nothing was. */
  readonly rateMultiplier: number
}

type Placed = {
  readonly fromM: number
  readonly toM: number
  readonly index: number
  readonly said: GroundInput
}

/** A millimetre of grace: sums of feet and inches do not close to the last bit. */
const GRACE_M = 0.001

/** Puts stations to entries that leave them out; a hole, an overlap or an open end in the middle is an issue. */
function place(ground: CrossingInput['ground'], lengthM: number): Outcome<readonly Placed[]> {
  const issues: Issue[] = []
  const placed: Placed[] = []
  let reachedM = 0
  ground.forEach((said, index) => {
    const next = ground[index + 1]
    const fromM = said.fromM ?? reachedM
    const isLast = next === undefined
    if (!isLast && said.toM === null && next.fromM === null) {
      issues.push({
        path: `ground.${index}.to`,
        code: 'required',
        accepted: 'where this stretch of ground ends',
      })
    }
    const toM = Math.min(said.toM ?? next?.fromM ?? lengthM, lengthM)
    if (fromM > reachedM + GRACE_M) {
      issues.push({
        path: `ground.${index}.from`,
        code: 'no-ground-here',
        values: { fromM: reachedM, toM: fromM },
      })
    } else if (fromM < reachedM - GRACE_M) {
      issues.push({
        path: `ground.${index}.from`,
        code: 'inputs-conflict',
        accepted: 'stretches in order, none over another',
      })
    }
    if (isLast && toM < lengthM - GRACE_M) {
      issues.push({
        path: `ground.${index}.to`,
        code: 'no-ground-here',
        values: { fromM: toM, toM: lengthM },
      })
    }
    placed.push({ fromM: reachedM, toM, index, said })
    reachedM = toM
  })
  return issues.length > 0 ? { ok: false, issues } : { ok: true, value: placed }
}

const evidenceOf = (said: GroundInput) => ({
  word: said.word,
  uscs: said.uscs,
  sptN: said.sptN,
  consistency: said.consistency,
  undrainedStrengthPa: said.undrainedStrengthPa,
  relativeDensity: said.relativeDensity,
  frictionAngleRad: said.frictionAngleRad,
  dcpMPerBlow: said.dcpMPerBlow,
  pocketPenetrometerPa: said.pocketPenetrometerPa,
  vanePa: said.vanePa,
  dug: said.dug,
  stones: said.stones,
  waterTableM: said.waterTableM,
  fill: said.fill,
  frozen: said.frozen,
})

const isSame = (a: GroundInput, b: GroundInput): boolean => {
  const other = new Map<string, unknown>(Object.entries(evidenceOf(b)))
  return Object.entries(evidenceOf(a)).every(([key, value]) => other.get(key) === value)
}

/** Neighbours of which the same was said are one piece of ground: cutting a stretch in two changes nothing. */
function withoutSeams(placed: readonly Placed[]): readonly Placed[] {
  const pieces: Placed[] = []
  for (const each of placed) {
    const before = pieces.at(-1)
    if (before && isSame(before.said, each.said)) pieces[pieces.length - 1] = { ...before, toM: each.toM }
    else pieces.push(each)
  }
  return pieces
}

/** The ground of each shot in order, every stretch with its state; what the words left open is listed as assumed. */
export function layStretches(
  input: CrossingInput,
  line: BoreLine,
  assumed: Assumed,
): Outcome<readonly Stretch[]> {
  const placed = place(input.ground, line.lengthM)
  if (!placed.ok) return placed
  const issues: Issue[] = []
  const states: (GroundState | null)[] = input.ground.map((said, index) => {
    const found = groundState(evidenceOf(said))
    if (!found.ok) {
      for (const issue of found.issues) {
        issues.push({
          ...issue,
          path: issue.path === '' ? `ground.${index}` : `ground.${index}.${issue.path}`,
        })
      }
      return null
    }
    for (const each of found.value.assumptions) {
      assumed.note({ unit: '', ...each, name: `ground.${index}.${each.name}` })
    }
    return found.value
  })
  if (issues.length > 0) return { ok: false, issues }
  const stretches: Stretch[] = []
  const pieces = withoutSeams(placed.value)
  line.shots.forEach((shot, shotIndex) => {
    for (const each of pieces) {
      const fromM = Math.max(shot.fromM, each.fromM)
      const toM = Math.min(shot.toM, each.toM)
      const state = states[each.index]
      if (!state || toM - fromM <= GRACE_M) continue
      stretches.push({
        shot: shotIndex,
        ground: each.index,
        fromM,
        toM,
        lengthM: toM - fromM,
        axisDepthM: line.axisDepthM((fromM + toM) / 2),
        state,
        waterTableM: each.said.waterTableM,
        rateMultiplier: 1,
      })
    }
  })
  return { ok: true, value: stretches }
}
