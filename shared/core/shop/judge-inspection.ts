import { type Judged, judgeMeasure } from './judge-measure.ts'
import type { Inspection, PartSpec, Reading, ToolTemplate, Verdict } from './template.ts'

export type JudgedMeasure = Judged & { readonly key: string }
export type JudgedPart = {
  readonly part: string
  /** The worst of its measures; null where nothing was read. */
  readonly verdict: Verdict | null
  readonly measures: readonly JudgedMeasure[]
  /** A new one went in: what was found is of the piece that came out. */
  readonly replaced: boolean
}

const WORST: readonly Verdict[] = ['replace', 'watch', 'keep']

/** The last word on one measure of a sheet, should it have been written twice. */
export const readingOf = (readings: readonly Reading[], part: string, key: string): Reading | null =>
  readings.filter((each) => each.part === part && each.key === key).at(-1) ?? null

export function judgePart(spec: PartSpec, sheet: Pick<Inspection, 'readings' | 'replaced'>): JudgedPart {
  const measures = spec.measures.map((each) => ({
    key: each.key,
    ...judgeMeasure(each, readingOf(sheet.readings, spec.key, each.key)),
  }))
  const verdict = WORST.find((word) => measures.some((each) => each.verdict === word)) ?? null
  return { part: spec.key, verdict, measures, replaced: sheet.replaced.includes(spec.key) }
}

export const judgeInspection = (
  template: ToolTemplate,
  sheet: Pick<Inspection, 'readings' | 'replaced'>,
): readonly JudgedPart[] => template.parts.map((part) => judgePart(part, sheet))
