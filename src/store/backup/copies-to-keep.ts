/** The newest copy of each of so many days, weeks and months there are copies of. */
const DAYS_KEPT = 7
const WEEKS_KEPT = 5
const MONTHS_KEPT = 12

const DAY_MS = 24 * 60 * 60 * 1000
/** 1970 began on a Thursday: three days earlier a week began. */
const MONDAY_SHIFT_DAYS = 3

const weekOf = (day: string): number =>
  Math.floor((Date.parse(`${day}T00:00:00Z`) / DAY_MS + MONDAY_SHIFT_DAYS) / 7)
const monthOf = (day: string): string => day.slice(0, 7)

function newestOfEach(days: readonly string[], periodOf: (day: string) => unknown, most: number): string[] {
  const newest = new Map<unknown, string>()
  for (const day of days) if (!newest.has(periodOf(day))) newest.set(periodOf(day), day)
  return [...newest.values()].slice(0, most)
}

/**
 * Which of the days (2026-03-02) keep their copy. Counted by what is there and not by today, so that a server that was
 * off for a year has lost nothing when it starts again.
 */
export function copiesToKeep(days: readonly string[]): ReadonlySet<string> {
  const newestFirst = [...days].sort().reverse()
  return new Set([
    ...newestOfEach(newestFirst, (day) => day, DAYS_KEPT),
    ...newestOfEach(newestFirst, weekOf, WEEKS_KEPT),
    ...newestOfEach(newestFirst, monthOf, MONTHS_KEPT),
  ])
}
