import { spoken } from '../words/spoken-words.ts'

const MINUTE = 60
const HOUR = 60 * MINUTE
const DAY = 24 * HOUR

/** `kept 3 h ago`: how old what is shown may be, for somebody who decides by it. */
export function keptAgo(seconds: number): string {
  if (seconds < MINUTE) return OFFLINE.kept.now
  if (seconds < HOUR) return OFFLINE.kept.minutes(Math.floor(seconds / MINUTE))
  if (seconds < 2 * DAY) return OFFLINE.kept.hours(Math.floor(seconds / HOUR))
  return OFFLINE.kept.days(Math.floor(seconds / DAY))
}

const changes = (count: number): string => (count === 1 ? '1 change' : `${count} changes`)
const waits = (count: number): string => (count === 1 ? 'waits' : 'wait')

export const EN_OFFLINE = {
  kept: {
    now: 'kept just now',
    minutes: (count: number) => `kept ${count} min ago`,
    hours: (count: number) => `kept ${count} h ago`,
    days: (count: number) => `kept ${count} days ago`,
  },
  label: 'Network and version',
  offline: 'No network: answers still work.',
  notKept: 'Keep this page open: this browser could not keep it for opening again.',
  outbox: (count: number) => `${changes(count)} ${waits(count)} to be sent.`,
  stuck: (count: number) =>
    `${changes(count)} not taken by the server: open the crossing and save it again, or let the change go.`,
  trouble: {
    refused:
      'This browser keeps nothing: what you open or change now is gone when the page is closed. Save it as a file.',
    'no-room': 'This browser has no room left: the last change is not kept here. Save it as a file.',
  },
  newVersion: 'A new version is ready.',
  newVersionTaken: 'Another tab has gone over to a new version.',
  useNow: 'Use it now',
  goingOver: 'Going over to the new version … What you typed comes along.',
  demosKept: 'No answer from the server: crossings as this browser kept them.',
}
export const OFFLINE = spoken('offline', EN_OFFLINE)
