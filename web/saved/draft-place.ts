import { signal } from '@preact/signals'
import { sameJson } from '../../shared/contracts/merge-documents.ts'
import { PRESETS } from '../crossings/presets.ts'
import type { CrossingModel } from '../state/crossing-model.ts'
import type { JsonObject } from '../state/json.ts'

type Swap = { readonly former: JsonObject; readonly openedName: string }

/** What stood in the draft before another crossing was opened there; null when nothing of anybody's was replaced. */
export const swapped = signal<Swap | null>(null)

const isUntouched = (document: JsonObject): boolean =>
  PRESETS.some((preset) => sameJson(preset.document, document))

/** Opens a crossing as the draft; what was typed there can be brought back. */
export function openInDraft(draft: CrossingModel, document: JsonObject): void {
  const former = draft.document.peek()
  const openedName = typeof document.name === 'string' ? document.name : ''
  swapped.value = isUntouched(former) || sameJson(former, document) ? null : { former, openedName }
  draft.open(document)
}

export function undoSwap(draft: CrossingModel): void {
  const swap = swapped.peek()
  swapped.value = null
  if (swap !== null) draft.open(swap.former)
}
