import { signal } from '@preact/signals'
import { recall, remember } from './browser-memory.ts'
import { type JsonObject, parseObject } from './json.ts'

const KEY = 'underlane.in-hand'

const kept = recall(KEY)

/** The crossing shown last in this browser, signed in or not: emergency cards speak of it, also after a restart. */
export const openCrossing = signal<JsonObject | null>(kept === null ? null : parseObject(kept))

export function showCrossing(document: JsonObject): void {
  openCrossing.value = document
  remember(KEY, JSON.stringify(document))
}
