import { ringGapWear } from '../wear/ring-gap-wear.ts'
import type { WearInterval } from '../wear/wear-increments.ts'
import { errorOf } from './inspection-questions.ts'
import { readingOf } from './judge-inspection.ts'
import { limitOf } from './judge-measure.ts'
import { type Inspection, isSized, type MeasureSpec, type PartSpec, SIZED_MEASURES } from './template.ts'

export type Estimate = { readonly valueM: number; readonly sdM: number }

/** A stated error either way is met nineteen times in twenty: two standard deviations. */
const ERROR_IN_SD = 2

/** Several readings of one thing as one, each by what it is worth: weights are inverse variances. */
export function combined(estimates: readonly Estimate[]): Estimate | null {
  const weights = estimates.map(({ sdM }) => 1 / sdM ** 2)
  const total = weights.reduce((sum, each) => sum + each, 0)
  if (total === 0) return null
  const weighted = estimates.reduce((sum, { valueM }, place) => sum + valueM * (weights[place] ?? 0), 0)
  return { valueM: weighted / total, sdM: Math.sqrt(1 / total) }
}

/** Wear left to the limit by one measure, as depth of wear; a gap opens 2π times faster than its ring wears. */
function leftBy(spec: MeasureSpec, valueM: number): Estimate | null {
  const limitM = limitOf(spec, valueM)
  if (limitM === null || !isSized(spec.measure) || SIZED_MEASURES[spec.measure] === 'both') return null
  const sdM = errorOf(spec) / ERROR_IN_SD
  if (spec.measure === 'end-gap') {
    return {
      valueM: ringGapWear.fn({ gapM: limitM, newGapM: valueM }).wearM,
      sdM: ringGapWear.fn({ gapM: sdM, newGapM: 0 }).wearM,
    }
  }
  return { valueM: SIZED_MEASURES[spec.measure] === 'up' ? limitM - valueM : valueM - limitM, sdM }
}

export type WearLook = {
  readonly on: string
  /** Wear since new in the same place, or since any fixed mark: only its differences count. */
  readonly wornM: Estimate
  /** To the nearest limit. */
  readonly leftM: number
  /** What the gap, taken in the tool, shows beyond its ring: wear of the bore it sits in; null without both readings. */
  readonly boreWornM: number | null
}

/**
 * Each sheet's word on how worn a part is. Gap and stand-out of one ring are put together by what each is worth; what is
 * left is the least that any of them leaves. Where sizes when new are known and so is the day it was new, that day is the
 * first look; otherwise the first reading is the mark.
 */
export function wearLooks(
  part: PartSpec,
  sheets: readonly Inspection[],
  newOn: string | null,
): readonly WearLook[] {
  const marks = new Map<string, number>()
  const asNew = part.measures.flatMap((spec) => {
    const left = spec.nominalM === null ? null : leftBy(spec, spec.nominalM)
    if (left === null) return []
    marks.set(spec.key, left.valueM)
    return [left]
  })
  const first: readonly WearLook[] =
    newOn === null || asNew.length === 0
      ? []
      : [
          {
            on: newOn,
            wornM: { valueM: 0, sdM: 0 },
            leftM: Math.min(...asNew.map((each) => each.valueM)),
            boreWornM: null,
          },
        ]
  const looks = sheets.flatMap((sheet): readonly WearLook[] => {
    const found = part.measures.flatMap((spec) => {
      const valueM = readingOf(sheet.readings, part.key, spec.key)?.valueM ?? null
      const left = valueM === null ? null : leftBy(spec, valueM)
      if (left === null) return []
      const mark = marks.get(spec.key) ?? left.valueM
      marks.set(spec.key, mark)
      const wornBy = { valueM: mark - left.valueM, sdM: left.sdM }
      return [{ measure: spec.measure, left: left.valueM, worn: wornBy }]
    })
    const worn = combined(found.map((each) => each.worn))
    if (worn === null) return []
    const by = (measure: MeasureSpec['measure']): number | null =>
      found.find((each) => each.measure === measure)?.worn.valueM ?? null
    const leftM = Math.min(...found.map(({ left }) => left))
    return [{ on: sheet.on, wornM: worn, leftM, boreWornM: boreWearM(by('end-gap'), by('stands-out')) }]
  })
  return [...first, ...looks]
}

/** Wear between looks over use between them; two looks with no use between are one. */
export function wearIntervals(
  looks: readonly WearLook[],
  useUpToS: (on: string) => number,
): readonly WearInterval[] {
  const intervals: WearInterval[] = []
  let before = looks[0]
  for (const look of looks.slice(1)) {
    if (before === undefined) break
    const useS = useUpToS(look.on) - useUpToS(before.on)
    if (useS <= 0) continue
    intervals.push({ useS, wornM: look.wornM.valueM - before.wornM.valueM })
    before = look
  }
  return intervals
}

/** What a gap taken in the tool shows beyond its ring. null where either is missing. */
function boreWearM(gapWearM: number | null, ringWearM: number | null): number | null {
  return gapWearM === null || ringWearM === null ? null : gapWearM - ringWearM
}
