import type { Tries } from '../../store/access/failed-tries.ts'

/** After so many failures the next try waits, twice as long each time, up to `longestMs`. Nobody is ever locked out. */
type Rule = { readonly free: number; readonly longestMs: number }

const SECOND_MS = 1000
const MINUTE_MS = 60 * SECOND_MS
/** A row of failures that ended so long ago is forgotten. */
const FORGET_MS = 24 * 60 * MINUTE_MS

/**
 * One login tried from one place waits long. The same login from everywhere waits a minute at most, so that strangers
 * cannot keep its owner out; one place that tries many logins waits as well.
 */
const RULES = {
  both: { free: 3, longestMs: 15 * MINUTE_MS },
  login: { free: 10, longestMs: MINUTE_MS },
  place: { free: 30, longestMs: 5 * MINUTE_MS },
} as const satisfies Readonly<Record<string, Rule>>

export type TryKeys = { readonly both: string; readonly login: string; readonly place: string }

export const tryKeys = (login: string, from: string): TryKeys => ({
  both: `both ${login} ${from}`,
  login: `login ${login}`,
  place: `place ${from}`,
})

function waitOf({ free, longestMs }: Rule, tries: Tries | undefined, now: Date): number {
  if (tries === undefined || tries.failures < free) return 0
  const since = now.getTime() - Date.parse(tries.lastAt)
  if (since >= FORGET_MS) return 0
  const delay = Math.min(longestMs, SECOND_MS * 2 ** Math.min(tries.failures - free, 30))
  return Math.max(0, delay - since)
}

/** How long the next try has to wait, in ms. */
export const waitBeforeTry = (keys: TryKeys, tries: ReadonlyMap<string, Tries>, now: Date): number =>
  Math.max(
    waitOf(RULES.both, tries.get(keys.both), now),
    waitOf(RULES.login, tries.get(keys.login), now),
    waitOf(RULES.place, tries.get(keys.place), now),
  )

export const forgottenBefore = (now: Date): Date => new Date(now.getTime() - FORGET_MS)
