import type { CrossingInput, UtilityInput } from '../core/plan/crossing-input.ts'
import type { ClearancePart, Plan } from '../core/plan/plan.ts'

/** A tape in a hole. Inferred from the utility quality levels of ASCE 38; our judgement. */
const EXPOSED_DOUBT_M = 0.03
/** One locating method (PAS 128 B2, second hand). */
const DETECTED_DOUBT_M = 0.25
/** Where the law names no tolerance zone, the uniform colour code's own: 18 in beside the width of the line. */
const MARKED_DOUBT_M = 18 * 0.0254

export type Depths = { readonly topM: number; readonly centreM: number; readonly bottomM: number }

/** A line as it is drawn: where it may be, and what is not known of it. */
export type DrawnUtility = {
  /** Its place in the file. */
  readonly index: number
  readonly said: UtilityInput
  /** null: unknown, drawn as a band over all depths and never as a place. */
  readonly depths: Depths | null
  /** False: a figure was told, nobody has seen the line. */
  readonly isMeasured: boolean
  /** Half of the band of doubt, up and down. */
  readonly depthDoubtM: number
  /** The same sideways; null where the evidence gives no place at all. */
  readonly sideDoubtM: number | null
  readonly clearance: ClearancePart | null
}

/** Outside the drawing's business: what is missing. */
const sideDoubt = ({ evidence }: UtilityInput): number | null => {
  if (evidence === 'exposed' || evidence === 'proved') return EXPOSED_DOUBT_M
  if (evidence === 'detected') return DETECTED_DOUBT_M
  return evidence === 'marked' ? MARKED_DOUBT_M : null
}

function depthsOf({ depth, diameterM }: UtilityInput): Depths | null {
  if (!depth) return null
  const sizeM = diameterM ?? 0
  const above = { top: 0, centre: sizeM / 2, bottom: sizeM }[depth.to]
  const topM = depth.valueM - above
  return { topM, centreM: topM + sizeM / 2, bottomM: topM + sizeM }
}

/** The shot whose clearance is the shorter speaks, where a line stands at a pit of two. */
function clearanceOf(plan: Plan, index: number): ClearancePart | null {
  const all = plan.clearances.filter((each) => each.utility === index)
  return all.reduce<ClearancePart | null>(
    (worst, each) => (worst === null || (each.shortM ?? -1) > (worst.shortM ?? -1) ? each : worst),
    null,
  )
}

export function drawnUtilities(input: CrossingInput, plan: Plan): readonly DrawnUtility[] {
  return (input.utilities ?? []).map((said, index) => {
    const clearance = clearanceOf(plan, index)
    const isMeasured = said.evidence === 'exposed' || said.evidence === 'proved'
    return {
      index,
      said,
      depths: depthsOf(said),
      isMeasured,
      depthDoubtM: clearance?.parts.exposureM ?? (isMeasured ? EXPOSED_DOUBT_M : DETECTED_DOUBT_M),
      sideDoubtM: sideDoubt(said),
      clearance,
    }
  })
}

/** Half of what a line takes up along the bore: a slanting one is cut longer. */
export const halfAlongM = ({ said }: DrawnUtility): number =>
  (said.diameterM ?? 0) / 2 / Math.max(0.087, Math.abs(Math.sin(said.crossingAngleRad ?? Math.PI / 2)))

export const isShort = (utility: DrawnUtility): boolean => (utility.clearance?.shortM ?? 0) > 1e-6
