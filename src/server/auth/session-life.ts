import type { Session } from '../../store/access/sessions.ts'

const HOUR_MS = 60 * 60 * 1000

/** Unused for so long it has ended. */
const LONGEST_IDLE_MS = 12 * HOUR_MS
/** And however much it is used, after so long. */
export const LONGEST_SESSION_MS = 30 * 24 * HOUR_MS
/** Its use is noted at most so often: not every request is a write. */
const NOTE_USE_MS = 60_000

export const isOver = ({ seenAt, madeAt }: Session, now: Date): boolean =>
  now.getTime() - Date.parse(seenAt) >= LONGEST_IDLE_MS ||
  now.getTime() - Date.parse(madeAt) >= LONGEST_SESSION_MS

export const isUseNews = (seenAt: string | null, now: Date): boolean =>
  seenAt === null || now.getTime() - Date.parse(seenAt) >= NOTE_USE_MS

export const overBefore = (now: Date) => ({
  seen: new Date(now.getTime() - LONGEST_IDLE_MS),
  made: new Date(now.getTime() - LONGEST_SESSION_MS),
})
