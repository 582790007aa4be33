import type { Jurisdiction } from '../../../shared/tables/jurisdictions.ts'

/**
 * A second calendar, apart from the engine's: the machine's own local dates, walked day by day and hour by hour, with
 * holidays written out by hand from almanacs.
 */
const OF_ALL = (text: string): readonly string[] => text.trim().split(/\s+/)

const FEDERAL = OF_ALL(`
  2026-01-01 2026-01-19 2026-02-16 2026-05-25 2026-06-19 2026-07-03 2026-09-07 2026-10-12 2026-11-11 2026-11-26 2026-12-25
  2027-01-01 2027-01-18 2027-02-15 2027-05-31 2027-06-18 2027-07-05 2027-09-06 2027-10-11 2027-11-11 2027-11-25 2027-12-24
  2027-12-31 2028-01-17 2028-02-21 2028-05-29 2028-06-19 2028-07-04 2028-09-04 2028-10-09 2028-11-10 2028-11-23 2028-12-25
  2029-01-01 2029-01-15 2029-02-19`)
const NOT_IN_FLORIDA = /-02-1[5-9]|-02-2[01]|-06-1[89]|-10-09|-10-1[12]|2026-11-11|2027-11-11|2028-11-10/
const LISTS: Readonly<Record<string, readonly string[]>> = {
  'US-FL': [
    ...FEDERAL.filter((each) => !NOT_IN_FLORIDA.test(each)),
    ...OF_ALL('2026-11-27 2026-12-24 2027-11-26 2028-11-24 2028-12-26'),
  ],
  'US-GA': [...FEDERAL, ...OF_ALL('2026-11-27 2026-12-24 2027-11-26 2027-12-23 2028-11-24 2028-12-26')],
  'US-WI': [...FEDERAL, ...OF_ALL('2026-11-03 2028-11-07')],
  'CA-ON': OF_ALL(`
    2026-01-01 2026-02-16 2026-04-03 2026-05-18 2026-07-01 2026-08-03 2026-09-07 2026-10-12 2026-12-25 2026-12-28
    2027-01-01 2027-02-15 2027-03-26 2027-05-24 2027-07-01 2027-08-02 2027-09-06 2027-10-11 2027-12-27 2027-12-28
    2028-01-03 2028-02-21 2028-04-14 2028-05-22 2028-07-03 2028-08-07 2028-09-04 2028-10-09 2028-12-25 2028-12-26
    2029-01-01 2029-02-19`),
  AU: OF_ALL(`
    2026-01-01 2026-01-26 2026-04-03 2026-04-06 2026-06-08 2026-12-25 2026-12-28
    2027-01-01 2027-01-26 2027-03-26 2027-03-29 2027-04-26 2027-06-14 2027-12-27 2027-12-28
    2028-01-03 2028-01-26 2028-04-14 2028-04-17 2028-04-25 2028-06-12 2028-12-25 2028-12-26
    2029-01-01 2029-01-26`),
}

const two = (value: number): string => String(value).padStart(2, '0')
const dateText = (date: Date): string =>
  `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`
/** Noon, so that no change of the clock moves the day. */
const noonOf = (text: string): Date => {
  const [year = 0, month = 1, day = 1] = text.slice(0, 10).split('-').map(Number)
  return new Date(year, month - 1, day, 12)
}
const nextDay = (date: Date, step = 1): Date =>
  new Date(date.getFullYear(), date.getMonth(), date.getDate() + step, 12)

export const isWorkday = (id: string, date: Date): boolean =>
  date.getDay() !== 0 && date.getDay() !== 6 && !(LISTS[id] ?? FEDERAL).includes(dateText(date))

function workdaysOn(id: string, from: Date, count: number, step = 1): Date {
  let date = from
  for (let seen = 0; seen < count; ) {
    date = nextDay(date, step)
    if (isWorkday(id, date)) seen += 1
  }
  return date
}

const at = (date: Date, minute: number): string =>
  `${dateText(date)}T${two(Math.floor(minute / 60))}:${two(minute % 60)}`

/** Hours counted one by one, only those of workdays. */
function hoursOn(id: string, called: string, hours: number): string {
  let date = noonOf(called)
  let hour = Number(called.slice(11, 13))
  if (!isWorkday(id, date)) {
    date = workdaysOn(id, date, 1)
    hour = 0
  }
  for (let left = hours; left > 0; left--) {
    hour += 1
    if (hour === 24) {
      hour = 0
      date = workdaysOn(id, date, 1)
    }
  }
  return at(date, hour * 60)
}

/** The earliest start by walking; calls on whole hours only. */
export function walkedStart(row: Jurisdiction, called: string): string | null {
  const { id, notice, opensMin, lateCall } = row
  let day = noonOf(called)
  if (lateCall !== null) {
    if (lateCall.closesMin !== null && Number(called.slice(11, 13)) * 60 >= lateCall.closesMin)
      day = nextDay(day)
    while (!isWorkday(id, day)) day = nextDay(day)
  }
  if (notice.family === 'none') return null
  if (notice.family === 'clock-hours') return hoursOn(id, called, notice.hours)
  if (notice.family === 'nth-day') return at(workdaysOn(id, day, notice.day), opensMin)
  if (notice.family === 'from-next-opening') return at(workdaysOn(id, day, notice.days + 1), opensMin)
  const lastFull = workdaysOn(id, day, notice.days)
  return at(notice.startsOn === 'any-day' ? nextDay(lastFull) : workdaysOn(id, lastFull, 1), opensMin)
}

/** The expiry by walking, for lives counted in days. */
export function walkedExpiry(row: Jurisdiction, called: string, start: string | null): string | null {
  const { id, life } = row
  if (life.kind !== 'days') return null
  const fromStart = noonOf(life.from === 'called' || start === null ? called : start)
  let date = life.from === 'locate-due' ? workdaysOn(id, fromStart, 1, -1) : fromStart
  for (let left = life.count - (life.firstDayCounts ? 1 : 0); left > 0; left--) {
    date = life.of === 'calendar' ? nextDay(date) : workdaysOn(id, date, 1)
  }
  return at(date, life.endsMin)
}
