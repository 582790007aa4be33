import { signal } from '@preact/signals'
import { sameJson } from '../../shared/contracts/merge-documents.ts'
import { EMPTY_CROSSING, PRESETS } from '../crossings/presets.ts'
import { recallHere, rememberHere } from '../state/browser-memory.ts'
import type { CrossingModel } from '../state/crossing-model.ts'
import { isObject, type JsonObject, parseObject } from '../state/json.ts'

type Swap = { readonly former: JsonObject; readonly openedName: string }

const KEY = 'underlane.draft-former'

function recalledSwap(): Swap | null {
  const text = recallHere(KEY)
  const kept = text === null ? null : parseObject(text)
  if (kept === null || kept.former === undefined || !isObject(kept.former)) return null
  return { former: kept.former, openedName: typeof kept.openedName === 'string' ? kept.openedName : '' }
}

/** What stood in the draft before another crossing was opened there; null when nothing of anybody's was replaced. A reload keeps it. */
export const swapped = signal<Swap | null>(recalledSwap())

export function keepSwap(swap: Swap | null): void {
  swapped.value = swap
  rememberHere(KEY, swap === null ? null : JSON.stringify(swap))
}

/** Nobody has typed anything: a job as it is offered, under whatever name its language gives it, or an empty form. */
const isUntouched = ({ name: _name, ...rest }: JsonObject): boolean =>
  [...PRESETS.map((preset) => preset.document), EMPTY_CROSSING].some(({ name: _own, ...offered }) =>
    sameJson(offered, rest),
  )

/** Opens a crossing as the draft; what was typed there can be brought back. */
export function openInDraft(draft: CrossingModel, document: JsonObject): void {
  const former = draft.document.peek()
  const openedName = typeof document.name === 'string' ? document.name : ''
  keepSwap(isUntouched(former) || sameJson(former, document) ? null : { former, openedName })
  draft.open(document)
}

export function undoSwap(draft: CrossingModel): void {
  const swap = swapped.peek()
  keepSwap(null)
  if (swap !== null) draft.open(swap.former)
}
