import { type JudgedPart, judgePart } from './judge-inspection.ts'
import type { Inspection, ToolTemplate } from './template.ts'

export type HoldReason =
  | { readonly code: 'tilt-failed'; readonly on: string; readonly part: null }
  | { readonly code: 'replace'; readonly on: string; readonly part: string }
  | { readonly code: 'withdrawn'; readonly on: null; readonly part: null }

/** The standing of each part: its last look, and when. A part replaced in that look stands as new. */
export type PartState = {
  readonly part: string
  readonly on: string | null
  readonly judged: JudgedPart | null
}

const byDay = (a: Inspection, b: Inspection): number => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0)
export const inOrder = (sheets: readonly Inspection[]): readonly Inspection[] => [...sheets].sort(byDay)

/** Each part by the last sheet that says anything of it. */
export function partStates(template: ToolTemplate, sheets: readonly Inspection[]): readonly PartState[] {
  const ordered = inOrder(sheets)
  return template.parts.map((spec) => {
    const judged = ordered.map((sheet) => ({ on: sheet.on, judged: judgePart(spec, sheet) }))
    const last = judged.filter(({ judged: each }) => each.verdict !== null || each.replaced).at(-1)
    return { part: spec.key, on: last?.on ?? null, judged: last?.judged ?? null }
  })
}

/** The last tilt test that was written down: the one after reassembly stands for its sheet. */
export function lastTilt(
  sheets: readonly Inspection[],
): { readonly on: string; readonly passed: boolean } | null {
  for (const sheet of [...inOrder(sheets)].reverse()) {
    const tilt = sheet.tiltAfter ?? sheet.tiltBefore
    if (tilt !== null) return { on: sheet.on, passed: tilt === 'passed' }
  }
  return null
}

/**
 * Why a tool must not be given out: a failed tilt test, or a part to be replaced that was not. Forecasts, complaints and
 * chances never make or lift this; only a later sheet does.
 */
export function holdReasons(
  template: ToolTemplate,
  sheets: readonly Inspection[],
  isWithdrawn = false,
): readonly HoldReason[] {
  const reasons: HoldReason[] = []
  if (isWithdrawn) reasons.push({ code: 'withdrawn', on: null, part: null })
  const tilt = lastTilt(sheets)
  if (tilt !== null && !tilt.passed) reasons.push({ code: 'tilt-failed', on: tilt.on, part: null })
  for (const { part, on, judged } of partStates(template, sheets)) {
    if (judged?.verdict === 'replace' && !judged.replaced && on !== null) {
      reasons.push({ code: 'replace', on, part })
    }
  }
  return reasons
}

/** Whether a tool may be assigned to a bore, as far as the shop knows. */
export const isHeldByShop = (
  template: ToolTemplate,
  sheets: readonly Inspection[],
  isWithdrawn = false,
): boolean => holdReasons(template, sheets, isWithdrawn).length > 0
