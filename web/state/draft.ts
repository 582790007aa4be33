import { effect } from '@preact/signals'
import { forgetUnread } from '../fields/unread-note.ts'
import { recall, recallHere, remember, rememberHere } from './browser-memory.ts'
import type { CrossingModel } from './crossing-model.ts'
import { type JsonObject, parseObject } from './json.ts'

const KEY = 'underlane.draft'

/** What this very tab had, else what was typed last in this browser. */
export function recalledDraft(): JsonObject | null {
  const text = recallHere(KEY) ?? recall(KEY)
  return text === null ? null : parseObject(text)
}

/** Keeps the crossing in hand in this browser, as it is typed. */
export function keepDraft(model: CrossingModel): () => void {
  const stopKeeping = effect(() => {
    const text = JSON.stringify(model.document.value)
    remember(KEY, text)
    rememberHere(KEY, text)
  })
  const stopForgetting = effect(() => {
    if (model.opened.value > 0) forgetUnread('/')
  })
  return () => {
    stopKeeping()
    stopForgetting()
  }
}
