import { z } from 'zod'
import type { JsonObject } from '../state/json.ts'
import type { Base } from './saver.ts'

/**
 * What was typed into a saved crossing and is not saved yet. Each tab has its own in its session, which a reload keeps
 * and no other tab touches; a second copy in the browser outlives the tab.
 */
export type UnsavedWork = {
  readonly id: string
  readonly base: Base | null
  readonly document: JsonObject
  readonly at: string
}

export type LeftWork = { readonly key: string; readonly work: UnsavedWork }

const PREFIX = 'underlane.unsaved.'
const json = z.record(z.string(), z.json())
const shape = z.object({
  id: z.string(),
  base: z.object({ version: z.number().int(), document: json.nullable() }).nullable(),
  document: json,
  at: z.string(),
  key: z.string(),
})

function read(storage: Storage, key: string): (UnsavedWork & { readonly key: string }) | null {
  const text = storage.getItem(key)
  if (text === null) return null
  try {
    return shape.safeParse(JSON.parse(text)).data ?? null
  } catch (error) {
    if (error instanceof SyntaxError) return null
    throw error
  }
}

/** A browser that keeps nothing (private windows, full disk) simply does not. */
function attempt<Value>(work: () => Value, otherwise: Value): Value {
  try {
    return work()
  } catch (error) {
    if (error instanceof DOMException) return otherwise
    throw error
  }
}

export type WorkKeeper = {
  /** What this very tab had typed before it was loaded again. */
  own(): UnsavedWork | null
  /** What other tabs, or this browser before it was closed, have left. */
  left(): readonly LeftWork[]
  /** False: it is kept nowhere. */
  keep(work: Omit<UnsavedWork, 'at' | 'id'>): boolean
  forget(): void
  throwAway(key: string): void
}

/** `tab` tells this loading of this tab from all others. */
export function workKeeper(id: string, tab: string, now: () => Date): WorkKeeper {
  const sessionKey = `${PREFIX}${id}`
  const key = `${PREFIX}${id}.${tab}`
  return {
    own: () =>
      attempt(() => {
        const work = read(sessionStorage, sessionKey)
        // From here on this loading of the tab writes the second copy under its own name.
        if (work !== null && work.key !== key) localStorage.removeItem(work.key)
        return work
      }, null),
    left: () =>
      attempt(() => {
        const keys = Object.keys(localStorage).filter((each) => each.startsWith(`${sessionKey}.`))
        return keys
          .filter((each) => each !== key)
          .flatMap((each) => {
            const work = read(localStorage, each)
            return work === null ? [] : [{ key: each, work }]
          })
          .sort((a, b) => b.work.at.localeCompare(a.work.at))
      }, []),
    keep: (work) =>
      attempt(() => {
        const text = JSON.stringify({ ...work, id, at: now().toISOString(), key })
        sessionStorage.setItem(sessionKey, text)
        localStorage.setItem(key, text)
        return true
      }, false),
    forget: () =>
      attempt(() => {
        sessionStorage.removeItem(sessionKey)
        localStorage.removeItem(key)
      }, undefined),
    throwAway: (other) => attempt(() => localStorage.removeItem(other), undefined),
  }
}
