import {
  type InspectionQuestion,
  questionOfReading,
  questionsOfDay,
} from '../../shared/core/shop/inspection-questions.ts'
import { readingOf } from '../../shared/core/shop/judge-inspection.ts'
import { lifeOf } from '../../shared/core/shop/part-report.ts'
import { isSized, type MeasureSpec, type Reading } from '../../shared/core/shop/template.ts'
import { parseQuantity } from '../../shared/quantities/parse-quantity.ts'
import { recall, remember } from '../state/browser-memory.ts'
import type { JsonObject } from '../state/json.ts'
import { gapOfCoins } from './coin-words.ts'
import type { ShopTool, ShopView } from './shop-facts.ts'

/** A sheet under way, as it was typed; kept in this browser until it is saved. */
export type Draft = {
  readonly on: string
  readonly by: string
  readonly stripped: boolean
  readonly tiltBefore: string
  readonly tiltAfter: string
  readonly steps: readonly string[]
  /** By `part.measure`: a size as typed, or a grade. */
  readonly values: Readonly<Record<string, string>>
  readonly replaced: readonly string[]
  readonly confirmed: readonly string[]
}

const keyOf = (tool: string): string => `underlane.shop.draft.${tool}`
const BY = 'underlane.shop.by'

export const emptyDraft = (on: string): Draft => ({
  on,
  by: recall(BY) ?? '',
  stripped: false,
  tiltBefore: '',
  tiltAfter: '',
  steps: [],
  values: {},
  replaced: [],
  confirmed: [],
})

export function recalledDraft(tool: string, on: string): Draft {
  const text = recall(keyOf(tool))
  if (text === null) return emptyDraft(on)
  try {
    const found: unknown = JSON.parse(text)
    return found !== null && typeof found === 'object' ? { ...emptyDraft(on), ...found } : emptyDraft(on)
  } catch (error) {
    if (error instanceof SyntaxError) return emptyDraft(on)
    throw error
  }
}

export function keepDraft(tool: string, draft: Draft): void {
  remember(keyOf(tool), JSON.stringify(draft))
  if (draft.by !== '') remember(BY, draft.by)
}

export const forgetDraft = (tool: string): void => void remember(keyOf(tool), 'null')

/** A size as typed, in metres; null for what is no size. The unit is the one the label names, unless one is written. */
export function sizeOf(text: string, impliedUnit: string): number | null {
  const coins = gapOfCoins(text)
  if (coins !== null) return coins
  const parsed = parseQuantity(text, 'movement', { impliedUnit })
  return parsed.ok ? parsed.valueSi : null
}

export const placeOf = (part: string, spec: MeasureSpec): string => `${part}.${spec.key}`

/** What was typed, as readings; what is no size is left out and said beside its field. */
export function readingsOf(tool: ShopTool, draft: Draft, impliedUnit: string): readonly Reading[] {
  return tool.template.parts.flatMap((part) =>
    part.measures.flatMap((spec): readonly Reading[] => {
      const text = draft.values[placeOf(part.key, spec)]?.trim() ?? ''
      if (text === '') return []
      const at = { part: part.key, key: spec.key }
      if (!isSized(spec.measure)) return [{ ...at, valueM: null, grade: text }]
      const valueM = sizeOf(text, impliedUnit)
      return valueM === null ? [] : [{ ...at, valueM, grade: null }]
    }),
  )
}

/** The last reading of the piece that sits there now; none once it was replaced. */
export function lastReading(tool: ShopTool, view: ShopView, part: string, spec: MeasureSpec): number | null {
  const life = lifeOf(tool.entry.id, part, view.factsOf(tool.entry.id))
  const found = life.sheets.flatMap((sheet) => readingOf(sheet.readings, part, spec.key)?.valueM ?? [])
  return found.at(-1) ?? null
}

/** Under which a question is known once it was answered. */
export const questionKey = (each: InspectionQuestion): string =>
  `${each.code} ${each.part}.${each.key} ${each.givenM}`

/** What must be answered before the sheet is saved. */
export function questionsOf(
  tool: ShopTool,
  view: ShopView,
  draft: Draft,
  impliedUnit: string,
): readonly InspectionQuestion[] {
  const readings = readingsOf(tool, draft, impliedUnit)
  const earlier = view.sheets.filter((sheet) => sheet.tool === tool.entry.id).map(({ on }) => on)
  const ofSizes = tool.template.parts.flatMap((part) =>
    part.measures.flatMap((spec) => {
      const valueM = readingOf(readings, part.key, spec.key)?.valueM ?? null
      if (valueM === null) return []
      const asked = questionOfReading(part.key, spec, valueM, lastReading(tool, view, part.key, spec))
      return asked === null ? [] : [asked]
    }),
  )
  const { today } = view.factsOf(tool.entry.id)
  return [...questionsOfDay(draft.on, today, earlier), ...ofSizes].filter(
    (each) => !draft.confirmed.includes(questionKey(each)),
  )
}

const MM_PER_M = 1000
/** Millimetres to a tenth of a micrometre: the file reads back what was judged. */
const written = (valueM: number): string => `${Number((valueM * MM_PER_M).toFixed(4))} mm`

const given = (key: string, text: string): JsonObject => (text === '' ? {} : { [key]: text })

/** The sheet as it is kept. */
export function documentOf(tool: ShopTool, draft: Draft, impliedUnit: string): JsonObject {
  const readings = readingsOf(tool, draft, impliedUnit).map(({ part, key, valueM, grade }) => ({
    part,
    key,
    ...(valueM === null ? {} : { value: written(valueM) }),
    ...(grade === null ? {} : { grade }),
  }))
  return {
    name: `${tool.file.name}, ${draft.on}`.slice(0, 200),
    tool: tool.entry.id,
    on: draft.on,
    by: draft.by.trim(),
    steps: [...draft.steps],
    ...given('tiltBefore', draft.tiltBefore),
    ...given('tiltAfter', draft.tiltAfter),
    stripped: draft.stripped,
    readings,
    replaced: [...draft.replaced],
    confirmed: draft.confirmed.map((each) => each.slice(0, 90)),
  }
}
