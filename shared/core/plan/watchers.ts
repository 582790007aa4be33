import type { CrossingInput } from './crossing-input.ts'

/** One watcher for every open hole over a listed line; the crew itself has operator and exit. Common practice. */
export const watchersOf = (input: CrossingInput): number =>
  (input.utilities ?? []).filter((u) => u.stationM !== null && u.evidence !== 'proved').length
