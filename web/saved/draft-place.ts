import { type Signal, signal } from '@preact/signals'
import { sameJson } from '../../shared/contracts/merge-documents.ts'
import { EMPTY_CROSSING, PRESETS } from '../crossings/presets.ts'
import { recall, recallHere, remember, rememberHere } from '../state/browser-memory.ts'
import type { CrossingModel } from '../state/crossing-model.ts'
import { isList, isObject, type JsonObject, parseObject } from '../state/json.ts'
import { FORM } from '../words/form-words.ts'

/** Crossings that gave way to others in the draft, the one that gave way last at the end. */
export type Replaced = { readonly formers: readonly JsonObject[]; readonly openedName: string }

const KEY = 'underlane.draft-replaced'
const MOST_KEPT = 5
const NONE: Replaced = { formers: [], openedName: '' }

function recalledReplaced(): Replaced {
  const text = recallHere(KEY) ?? recall(KEY)
  const kept = text === null ? null : parseObject(text)
  if (kept === null || !isList(kept.formers)) return NONE
  return {
    formers: kept.formers.filter(isObject),
    openedName: typeof kept.openedName === 'string' ? kept.openedName : '',
  }
}

/** Read when first asked for, so that the page it is read on is there. */
let shown: Signal<Replaced> | null = null

/** A reload keeps it, and so does a browser that is closed. */
export function replaced(): Signal<Replaced> {
  shown ??= signal(recalledReplaced())
  return shown
}

function keepReplaced(next: Replaced): void {
  replaced().value = next
  const text = JSON.stringify(next)
  remember(KEY, text)
  rememberHere(KEY, text)
}

export const nameIn = (document: JsonObject): string =>
  typeof document.name === 'string' ? document.name : ''

/** A usual job as it is offered, under the name its language gives it. */
export const isExample = ({ name, ...rest }: JsonObject): boolean =>
  PRESETS.some(({ id, document: { name: own, ...offered } }) => {
    const isOwnName = name === undefined || name === own || name === FORM.start.jobs[id]
    return isOwnName && sameJson(offered, rest)
  })

/** Nobody has typed anything. */
const isUntouched = (document: JsonObject): boolean =>
  isExample(document) || sameJson(document, EMPTY_CROSSING)

/** Opens a crossing as the draft; what was typed there can be brought back, and so can what gave way to that. */
export function openInDraft(draft: CrossingModel, document: JsonObject): void {
  const former = draft.document.peek()
  const { formers } = replaced().peek()
  const isLost = !isUntouched(former) && !sameJson(former, document)
  keepReplaced({
    formers: (isLost ? [...formers, former] : formers).slice(-MOST_KEPT),
    openedName: nameIn(document),
  })
  draft.open(document)
}

/** The draft has gone on as a saved crossing: nothing of it is lost, nor what gave way to it. */
export function beginEmpty(draft: CrossingModel): void {
  keepReplaced({ ...replaced().peek(), openedName: '' })
  draft.open(EMPTY_CROSSING)
}

/** What stands in the draft goes behind the others that gave way: pressed often enough, each comes back. */
export function undoReplaced(draft: CrossingModel): void {
  const { formers } = replaced().peek()
  const back = formers.at(-1)
  if (back === undefined) return
  const present = draft.document.peek()
  const rest = formers.slice(0, -1)
  keepReplaced({ formers: isUntouched(present) ? rest : [present, ...rest], openedName: nameIn(back) })
  draft.open(back)
}

export function letGo(): void {
  const { formers, openedName } = replaced().peek()
  keepReplaced({ formers: formers.slice(0, -1), openedName })
}
