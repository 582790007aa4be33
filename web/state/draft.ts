import { effect } from '@preact/signals'
import { recall, remember } from './browser-memory.ts'
import type { CrossingModel } from './crossing-model.ts'
import { type JsonObject, parseObject } from './json.ts'

const KEY = 'underlane.draft'

export function recalledDraft(): JsonObject | null {
  const text = recall(KEY)
  return text === null ? null : parseObject(text)
}

/** Keeps the crossing in hand in this browser, as it is typed. */
export const keepDraft = (model: CrossingModel): (() => void) =>
  effect(() => {
    remember(KEY, JSON.stringify(model.document.value))
  })
