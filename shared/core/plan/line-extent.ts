import type { UtilityInput } from './crossing-input.ts'

/** Depth of the top and underside below local ground; null when nobody measured or told. */
export type Extent = {
  readonly topM: number
  readonly bottomM: number
  readonly centreM: number
  /** Nobody gave its size: only the face that was measured is known. */
  readonly knownFace: 'top' | 'bottom' | 'both' | 'none'
}

export function extent(utility: UtilityInput): Extent | null {
  if (!utility.depth) return null
  const { valueM, to } = utility.depth
  if (utility.diameterM === null) {
    const knownFace = to === 'centre' ? 'none' : to
    return { topM: valueM, bottomM: valueM, centreM: valueM, knownFace }
  }
  const sizeM = utility.diameterM
  const topM = to === 'top' ? valueM : to === 'bottom' ? valueM - sizeM : valueM - sizeM / 2
  return { topM, bottomM: topM + sizeM, centreM: topM + sizeM / 2, knownFace: 'both' }
}

/** Distance from the bore's axis to the near edge of the line; null where no depth is known. */
export function separationOf(utility: UtilityInput, depths: Extent | null, axisM: number): number | null {
  const sizeM = utility.diameterM ?? 0
  if (utility.stationM === null) return Math.max(0, Math.abs(utility.offsetM ?? 0) - sizeM / 2)
  if (depths === null) return null
  const isUnder = axisM >= depths.centreM
  const nearFace = isUnder ? 'bottom' : 'top'
  if (depths.knownFace !== 'both' && depths.knownFace !== nearFace) return null
  return Math.max(0, isUnder ? axisM - depths.bottomM : depths.topM - axisM)
}

/** Where a line alongside runs beside one shot. */
export type ReachBeside = { readonly fromM: number; readonly toM: number }

/** The part of a shot a line alongside runs beside: all of it where nobody said otherwise; null where it does not. */
export function reachBeside(
  { fromM, toM }: Pick<UtilityInput, 'fromM' | 'toM'>,
  shot: { readonly fromM: number; readonly toM: number },
): ReachBeside | null {
  const nearM = Math.max(shot.fromM, Math.min(fromM ?? shot.fromM, toM ?? shot.toM))
  const farM = Math.min(shot.toM, Math.max(fromM ?? shot.fromM, toM ?? shot.toM))
  return farM > nearM ? { fromM: nearM, toM: farM } : null
}
