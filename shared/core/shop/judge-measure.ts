import {
  GRADED_MEASURES,
  isSized,
  type MeasureSpec,
  type Reading,
  SIZED_MEASURES,
  type Verdict,
} from './template.ts'

/** Two sixteenths of an inch between longest and shortest: common practice, no source; the manual rules. */
export const USUAL_LENGTH_TOLERANCE_M = 0.0015875
/** A ring that no longer stands out past its groove seals nothing: common practice, no source. */
const RING_FLUSH_M = 0
/** Share of the allowance used from which a part is watched: our own. */
const WATCH_FROM = 0.75

export type Judged = {
  readonly verdict: Verdict | null
  readonly why: 'not-read' | 'no-limit' | 'past-limit' | 'near-limit' | 'within' | 'graded'
  /** Share of what may wear off that is gone; null where it cannot be said. */
  readonly usedFraction: number | null
  /** The limit it was held against, as a reading. */
  readonly limitM: number | null
}

/** Where a reading is done, as a reading; the nearer side of nominal for a length. */
export function limitOf(spec: MeasureSpec, valueM: number): number | null {
  if (spec.measure === 'length') {
    if (spec.nominalM === null) return null
    const tolerance = spec.limitM ?? USUAL_LENGTH_TOLERANCE_M
    return valueM < spec.nominalM ? spec.nominalM - tolerance : spec.nominalM + tolerance
  }
  return spec.limitM ?? (spec.measure === 'stands-out' ? RING_FLUSH_M : null)
}

/** How far a reading has gone from new towards its limit; 0 as new, 1 at the limit. */
function usedOf(spec: MeasureSpec, valueM: number, limitM: number): number | null {
  if (spec.nominalM === null || spec.nominalM === limitM) return null
  return Math.max(0, (valueM - spec.nominalM) / (limitM - spec.nominalM))
}

const GRADE_VERDICTS = { 2: ['keep', 'replace'], 3: ['keep', 'watch', 'replace'] } as const

/** Keep, watch or replace, from one reading: at the limit is past it. A reading alone never says more than that. */
export function judgeMeasure(spec: MeasureSpec, reading: Reading | null): Judged {
  const none: Judged = { verdict: null, why: 'not-read', usedFraction: null, limitM: null }
  if (reading === null) return none
  if (!isSized(spec.measure)) {
    const grades: readonly string[] = GRADED_MEASURES[spec.measure]
    const verdicts: readonly Verdict[] = GRADE_VERDICTS[grades.length === 2 ? 2 : 3]
    const verdict = reading.grade === null ? undefined : verdicts[grades.indexOf(reading.grade)]
    return verdict === undefined ? none : { ...none, verdict, why: 'graded' }
  }
  const { valueM } = reading
  if (valueM === null) return none
  const limitM = limitOf(spec, valueM)
  if (limitM === null) return { ...none, why: 'no-limit' }
  const way = SIZED_MEASURES[spec.measure]
  const usedFraction = usedOf(spec, valueM, limitM)
  const isPast =
    way === 'both'
      ? usedFraction !== null && usedFraction >= 1
      : way === 'up'
        ? valueM >= limitM
        : valueM <= limitM
  if (isPast) return { verdict: 'replace', why: 'past-limit', usedFraction, limitM }
  const isNear = usedFraction !== null && usedFraction >= WATCH_FROM
  return {
    verdict: isNear ? 'watch' : 'keep',
    why: isNear ? 'near-limit' : 'within',
    usedFraction,
    limitM,
  }
}
