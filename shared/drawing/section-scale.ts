import type { UnitSystem } from '../quantities/shown-units.ts'
import type { SectionFacts } from './section-facts.ts'
import type { Extent } from './section-frame.ts'

/** 'job': the drawing on a job sheet, as wide as an upright letter and A4 page both have room for, as high as it gets. */
export type Sheet = 'letter' | 'a4' | 'job'
/** Units of a drawing are CSS pixels: 96 to the inch, so that a sheet in mm prints to scale. */
export const PX_PER_INCH = 96
export const PX_PER_MM = PX_PER_INCH / 25.4
const M_PER_INCH = 0.0254

/** Landscape; of a job sheet the room for the drawing. */
export const SHEET_MM: Readonly<Record<Sheet, { readonly width: number; readonly height: number }>> = {
  letter: { width: 279.4, height: 215.9 },
  a4: { width: 297, height: 210 },
  job: { width: 182, height: 140 },
}

/** Scales an engineer's rule has: 1 to so many, and feet to an inch. */
const RATIOS = [10, 20, 25, 50, 75, 100, 125, 200, 250, 500, 1000, 2000, 2500, 5000, 10_000]
const FEET_TO_AN_INCH = [1, 2, 3, 4, 5, 6, 8, 10, 20, 30, 40, 50, 60, 100, 200, 300, 400, 500, 1000]
const FOOT_M = 0.3048

/** Times a depth may be drawn larger than a length; the last ones only for lines too long for ten. */
const EXAGGERATIONS = [1, 2, 5, 10]
const LONG_LINES = [20, 50, 100, 200]
/** A section is easy to read from this height on, and can be read at all from the second. */
const EASY_PX = 120
const READABLE_PX = 60

/** The smallest exaggeration that makes the section easy to read. */
export function chosenExaggeration(extent: Extent, pxPerM: number): number {
  const heightPx = (extent.highestM - extent.lowestM) * pxPerM
  const usual = EXAGGERATIONS.find((times) => heightPx * times >= EASY_PX)
  if (usual !== undefined) return usual
  return [10, ...LONG_LINES].find((times) => heightPx * times >= READABLE_PX) ?? 200
}

/** Metres of ground to an inch of paper, largest scale first. */
const rulerScalesM = (system: UnitSystem): readonly number[] =>
  system === 'us' ? FEET_TO_AN_INCH.map((feet) => feet * FOOT_M) : RATIOS.map((ratio) => ratio * M_PER_INCH)

/** Real scales, from the largest that fits the width. */
export function sheetScalesM(system: UnitSystem, lengthM: number, widthPx: number): readonly number[] {
  return rulerScalesM(system).filter((m) => (lengthM / m) * PX_PER_INCH <= widthPx)
}

function scaleText(metresPerInch: number, { say, words }: SectionFacts): string {
  if (say.system === 'us') return words('feetScale', { m: metresPerInch })
  return words('ratioScale', { n: String(Math.round(metresPerInch / M_PER_INCH)) })
}

/** The scale in words; with `metresPerInch` a real one for paper. */
export function scaleNote(facts: SectionFacts, exaggeration: number, metresPerInch: number | null): string {
  const { words } = facts
  if (metresPerInch === null)
    return exaggeration === 1 ? words('sameScale') : words('stretched', { times: exaggeration })
  const length = words('printScale', { scale: scaleText(metresPerInch, facts) })
  if (exaggeration === 1) return `${length} ${words('sameScale')}`
  const down = metresPerInch / exaggeration
  const onRule = rulerScalesM(facts.say.system).some((each) => Math.abs(each - down) < 1e-9)
  if (!onRule) return `${length} ${words('stretched', { times: exaggeration })}`
  return `${length} ${words('printVertical', { times: exaggeration, scale: scaleText(down, facts) })}`
}
