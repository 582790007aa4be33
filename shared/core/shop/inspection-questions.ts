import { isSized, type MeasureSpec, SIZED_MEASURES, type SizedMeasure } from './template.ts'

/** How far off a reading usually is, where the owner has not said: our own. */
const USUAL_ERROR_M: Readonly<Record<SizedMeasure, number>> = {
  'stands-out': 0.0001,
  'end-gap': 0.00005,
  'side-play': 0.00005,
  diameter: 0.0001,
  length: 0.0002,
}

const MM_PER_INCH = 25.4
/** How near to 25.4 times another reading must be for inches taken as millimetres to be the likelier story. */
const NEAR_FACTOR = 1.6

export type InspectionQuestion = {
  readonly code: 'below-last' | 'negative' | 'inches-for-millimetres' | 'future-date' | 'same-day-again'
  /** null: about the whole sheet. */
  readonly part: string | null
  readonly key: string | null
  readonly givenM: number | null
  /** What it is held against: the last reading, or the size when new. */
  readonly againstM: number | null
  /** Readings it may have been meant for. */
  readonly candidatesM: readonly number[]
}

export const errorOf = (spec: MeasureSpec): number =>
  spec.errorM ?? (isSized(spec.measure) ? USUAL_ERROR_M[spec.measure] : 0)

const question = (
  code: InspectionQuestion['code'],
  rest: Partial<InspectionQuestion> = {},
): InspectionQuestion => ({
  code,
  part: null,
  key: null,
  givenM: null,
  againstM: null,
  candidatesM: [],
  ...rest,
})

/**
 * What would be asked about one reading before it is believed. `lastM` is the last one of the same piece; a piece that
 * was replaced since has none. A question is answered by a person, never by the program.
 */
export function questionOfReading(
  part: string,
  spec: MeasureSpec,
  valueM: number,
  lastM: number | null,
): InspectionQuestion | null {
  if (!isSized(spec.measure)) return null
  const at = { part, key: spec.key, givenM: valueM }
  const way = SIZED_MEASURES[spec.measure]
  // A ring may stand below its groove; a gap, a play or a length below nothing cannot be.
  if (valueM < 0 && spec.measure !== 'stands-out') {
    return question('negative', { ...at, candidatesM: [-valueM] })
  }
  const againstM = lastM ?? spec.nominalM
  if (againstM !== null && againstM > 0 && valueM > 0) {
    const ratio = valueM / againstM
    const candidates = [valueM / MM_PER_INCH, valueM * MM_PER_INCH]
    const isFactor = [ratio / MM_PER_INCH, ratio * MM_PER_INCH].map(
      (each) => each > 1 / NEAR_FACTOR && each < NEAR_FACTOR,
    )
    if (isFactor.includes(true)) {
      const candidatesM = candidates.filter((_each, place) => isFactor[place])
      return question('inches-for-millimetres', { ...at, againstM, candidatesM })
    }
  }
  if (lastM === null || way === 'both') return null
  const lessWorn = way === 'up' ? lastM - valueM : valueM - lastM
  return lessWorn > errorOf(spec) ? question('below-last', { ...at, againstM: lastM }) : null
}

/** What would be asked about the day on the sheet; days as 2026-03-02. */
export function questionsOfDay(
  on: string,
  today: string,
  earlier: readonly string[],
): readonly InspectionQuestion[] {
  const found: InspectionQuestion[] = []
  if (on > today) found.push(question('future-date'))
  if (earlier.includes(on)) found.push(question('same-day-again'))
  return found
}
