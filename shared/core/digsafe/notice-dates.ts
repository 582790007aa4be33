import { type Jurisdiction, UNKNOWN_LIFE_DAYS } from '../../tables/jurisdictions.ts'
import { businessDayFrom, businessDaysAfter, businessDaysBefore, isBusinessDay } from './business-days.ts'
import { atMinute, dayOf, MINUTES_PER_DAY, minuteOfDay, readCivil, weekdayOf } from './civil.ts'

/** Why there is a start, or none. */
export const START_BECAUSE = [
  'counted',
  'no-clock-in-law',
  'checked-too-long-ago',
  'meeting-not-known',
] as const
/** Why there is an expiry, or none. */
export const EXPIRY_BECAUSE = ['counted', 'open-while-working', 'life-not-known', 'no-start'] as const

/** What a row of the table makes of a call; minutes on the clock of the place, null where it says nothing. */
export type NoticeDates = {
  readonly startMin: number | null
  readonly startBecause: (typeof START_BECAUSE)[number]
  readonly marksDueMin: number | null
  readonly expiryMin: number | null
  readonly expiryBecause: (typeof EXPIRY_BECAUSE)[number]
  readonly renewByMin: number | null
}

const END_OF_DAY_MIN = MINUTES_PER_DAY - 1
/** A renewal called in after the office closes may count as the next day's: plan to call by then. */
const OFFICE_CLOSES_MIN = 17 * 60
/** A row older than this at the day of the call says nothing of dates. */
const GOOD_FOR_MONTHS = 12

const SATURDAY = 6

/** The day the call counts as made on: after hours or on a day off, where the rule says so, the next business day. */
function dayOfNotice(row: Jurisdiction, calledMin: number): number {
  const day = dayOf(calledMin)
  if (row.lateCall === null) return day
  const { closesMin } = row.lateCall
  const isLate = closesMin !== null && minuteOfDay(calledMin) >= closesMin
  return businessDayFrom(isLate ? day + 1 : day, row.holidays)
}

/** n hours from the minute of the call with days off left out; an end on a day off waits for the next business day. */
function afterClockHours(calledMin: number, hours: number, row: Jurisdiction): number {
  const { holidays } = row
  const day = dayOf(calledMin)
  const fromMin = isBusinessDay(day, holidays) ? calledMin : atMinute(businessDaysAfter(day, 1, holidays), 0)
  let leftMin = hours * 60
  let atMin = fromMin
  // Each turn uses up the rest of one business day.
  for (let turn = 0; turn <= Math.ceil(hours / 24) + 1; turn++) {
    const today = dayOf(atMin)
    const restMin = MINUTES_PER_DAY - minuteOfDay(atMin)
    if (leftMin < restMin) return atMin + leftMin
    leftMin -= restMin
    atMin = atMinute(businessDaysAfter(today, 1, holidays), 0)
  }
  return atMin
}

function startOf(row: Jurisdiction, calledMin: number, isMeeting: boolean): number | null {
  const { notice, holidays, opensMin, meeting } = row
  const day = dayOfNotice(row, calledMin)
  if (isMeeting && meeting !== null && 'startsOnDay' in meeting) {
    return atMinute(businessDaysAfter(day, meeting.startsOnDay, holidays), opensMin)
  }
  const more = isMeeting && meeting !== null && 'moreDays' in meeting ? meeting.moreDays : 0
  switch (notice.family) {
    case 'full-days': {
      const lastFull = businessDaysAfter(day, notice.days + more, holidays)
      const first = notice.startsOn === 'any-day' ? lastFull + 1 : businessDaysAfter(lastFull, 1, holidays)
      return atMinute(first, opensMin)
    }
    case 'nth-day':
      return atMinute(businessDaysAfter(day, notice.day + more, holidays), opensMin)
    case 'from-next-opening':
      return atMinute(businessDaysAfter(day, 1 + notice.days + more, holidays), opensMin)
    case 'clock-hours':
      return afterClockHours(calledMin, notice.hours + 24 * more, row)
    case 'none':
      return null
  }
}

function marksDueOf({ marksDue, holidays }: Jurisdiction, calledMin: number): number | null {
  if (marksDue === null) return null
  const day = dayOf(calledMin)
  if (marksDue.after === 'saturday' && weekdayOf(day) !== SATURDAY) return null
  return atMinute(businessDaysAfter(day, marksDue.days, holidays), marksDue.atMin)
}

/** Business days a new notice takes, to count back from an expiry where the row gives no lead of its own. */
function noticeDays({ notice }: Jurisdiction): number {
  switch (notice.family) {
    case 'full-days':
    case 'from-next-opening':
      return notice.days
    case 'nth-day':
      return notice.day
    case 'clock-hours':
      return Math.ceil(notice.hours / 24)
    case 'none':
      return 0
  }
}

const later = (day: number, count: number, of: 'business' | 'calendar', row: Jurisdiction): number =>
  of === 'calendar' ? day + count : businessDaysAfter(day, count, row.holidays)

type Ending = Pick<NoticeDates, 'expiryMin' | 'expiryBecause' | 'renewByMin'>

function endingOf(row: Jurisdiction, calledMin: number, startMin: number | null): Ending {
  const { life, renewal } = row
  if (life.kind === 'open') {
    const begin =
      life.beginWithin === null || startMin === null
        ? null
        : atMinute(
            later(dayOf(startMin), life.beginWithin.count, life.beginWithin.of, row),
            OFFICE_CLOSES_MIN,
          )
    return { expiryMin: null, expiryBecause: 'open-while-working', renewByMin: begin }
  }
  const from = life.kind === 'unknown' ? 'called' : life.from
  if (from !== 'called' && startMin === null) {
    return { expiryMin: null, expiryBecause: 'no-start', renewByMin: null }
  }
  const first = lifeFrom(row, calledMin, startMin, from)
  const known =
    life.kind === 'unknown'
      ? ({
          count: UNKNOWN_LIFE_DAYS,
          of: 'calendar',
          firstDayCounts: false,
          endsMin: END_OF_DAY_MIN,
        } as const)
      : life
  const last = later(first, known.count - (known.firstDayCounts ? 1 : 0), known.of, row)
  const expiryMin = atMinute(last, known.endsMin)
  const renewByMin =
    renewal !== null && 'onDay' in renewal
      ? atMinute(later(first, renewal.onDay, renewal.of, row), renewal.atMin)
      : atMinute(
          businessDaysBefore(last, renewal?.daysBefore ?? noticeDays(row), row.holidays),
          OFFICE_CLOSES_MIN,
        )
  return { expiryMin, expiryBecause: life.kind === 'unknown' ? 'life-not-known' : 'counted', renewByMin }
}

/** The day a life is counted from. Marks are due on the business day before a start on the nth. */
function lifeFrom(
  row: Jurisdiction,
  calledMin: number,
  startMin: number | null,
  from: 'called' | 'start' | 'locate-due',
): number {
  if (from === 'called' || startMin === null) return dayOf(calledMin)
  const start = dayOf(startMin)
  return from === 'locate-due' ? businessDaysBefore(start, 1, row.holidays) : start
}

/** Months between two days, the days of the month compared as well: a year to the day is twelve. */
function isStale(row: Jurisdiction, calledMin: number): boolean {
  const checkedMin = readCivil(row.checkedOn)
  if (checkedMin === null) return true
  const [year = 0, ...rest] = row.checkedOn.split('-')
  const until = readCivil([String(Number(year) + GOOD_FOR_MONTHS / 12), ...rest].join('-'))
  // The 29th of February has no anniversary in the year after: a year of 365 days then.
  const lastDay = until === null ? dayOf(checkedMin) + 365 : dayOf(until)
  return dayOf(calledMin) > lastDay
}

const NOTHING = {
  startMin: null,
  marksDueMin: null,
  expiryMin: null,
  expiryBecause: 'no-start',
  renewByMin: null,
} as const

/**
 * Start not before, expiry and renew-by of a call, by one row of the table. Help for planning only: the printed ticket
 * wins and alone counts. Nothing is worked out from a row checked more than twelve months before the call.
 */
export function noticeDates(row: Jurisdiction, calledMin: number, isMeeting = false): NoticeDates {
  if (isStale(row, calledMin)) return { ...NOTHING, startBecause: 'checked-too-long-ago' }
  if (isMeeting && row.meeting === null) return { ...NOTHING, startBecause: 'meeting-not-known' }
  const startMin = startOf(row, calledMin, isMeeting)
  return {
    startMin,
    startBecause: startMin === null ? 'no-clock-in-law' : 'counted',
    marksDueMin: marksDueOf(row, calledMin),
    ...endingOf(row, calledMin, startMin),
  }
}
