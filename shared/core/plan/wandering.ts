import type { Assumed } from './assumptions.ts'
import type { AimInput } from './crossing-input.ts'
import type { Stretch } from './stretches.ts'

/** How the tool wanders along one shot, in each plane. */
export type Wandering = {
  readonly aimRad: number
  readonly driftRadPerSqrtM: number
}

/** What a shot is bored through, and from which of its ends. */
export type Course = {
  readonly fromM: number
  readonly toM: number
  readonly isFromOtherEnd: boolean
}

/** Out of aim over the length of the body: a short tool is aimed over a short base. */
export function aimRadOf(aim: AimInput, toolLengthM: number, assumed: Assumed): number {
  const usualM = aim.method === 'eye' ? 'line.aimEye' : 'line.aimFrame'
  return assumed.or(aim.errorM, usualM) / toolLengthM
}

/**
 * One drift for a course: the mean of drift² over its ground, each metre weighted by the lever it has left to run,
 * (s − u)², so that stones near the launch count for more than stones near the exit.
 */
export function driftOver(course: Course, stretches: readonly Stretch[], driftBase: number): number {
  const lengthM = course.toM - course.fromM
  const leverM = (stationM: number): number => {
    const inside = Math.min(Math.max(stationM, course.fromM), course.toM)
    return course.isFromOtherEnd ? inside - course.fromM : course.toM - inside
  }
  let weighted = 0
  for (const stretch of stretches) {
    weighted +=
      stretch.state.driftFactor ** 2 * Math.abs(leverM(stretch.fromM) ** 3 - leverM(stretch.toM) ** 3)
  }
  return driftBase * Math.sqrt(weighted / lengthM ** 3)
}
