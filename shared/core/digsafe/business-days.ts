import type { HolidayRule } from '../../tables/holidays.ts'
import { PreconditionError } from '../outcome.ts'
import { civilDate, dayNumber, weekdayOf } from './civil.ts'

const FRIDAY = 5
const SATURDAY = 6
const SUNDAY = 7

/** Easter Sunday of the Gregorian calendar (the anonymous rule of 1876). */
function easterSunday(year: number): number {
  const golden = year % 19
  const century = Math.floor(year / 100)
  const inCentury = year % 100
  const skipped = Math.floor(century / 4)
  const moon = Math.floor((century - Math.floor((century + 8) / 25) + 1) / 3)
  const epact = (19 * golden + century - skipped - moon + 15) % 30
  const weekday = (32 + 2 * (century % 4) + 2 * Math.floor(inCentury / 4) - epact - (inCentury % 4)) % 7
  const late = Math.floor((golden + 11 * epact + 22 * weekday) / 451)
  const sum = epact + weekday - 7 * late + 114
  return dayNumber({ year, month: Math.floor(sum / 31), day: (sum % 31) + 1 })
}

/** The given weekday of a month: 1 for the first, −1 for the last. */
function nthWeekday(year: number, month: number, weekday: number, nth: number): number {
  if (nth > 0) {
    const first = dayNumber({ year, month, day: 1 })
    return first + ((weekday - weekdayOf(first) + 7) % 7) + 7 * (nth - 1)
  }
  const last = dayNumber({ year: month === 12 ? year + 1 : year, month: (month % 12) + 1, day: 1 }) - 1
  return last - ((weekdayOf(last) - weekday + 7) % 7)
}

/** The day kept under a rule in one year; null when the year has none. */
export function holidayIn(year: number, rule: HolidayRule): number | null {
  if (rule.on === 'once') return rule.day
  if (rule.on === 'easter') return easterSunday(year) + rule.plusDays
  if (rule.on === 'weekday') {
    if (rule.evenYears && year % 2 !== 0) return null
    return nthWeekday(year, rule.month, rule.weekday, rule.nth) + (rule.plusDays ?? 0)
  }
  const day = dayNumber({ year, month: rule.month, day: rule.day })
  const weekday = weekdayOf(day)
  if (rule.on === 'weekday-before') return day - ((weekday - rule.weekday + 6) % 7) - 1
  if (weekday === SATURDAY) return day + rule.saturday
  if (weekday === SUNDAY) return day + rule.sunday
  return day + (weekday === FRIDAY ? (rule.friday ?? 0) : 0)
}

/** Monday to Friday, and no holiday of the list; New Year's Day may be kept on the last day of the year before. */
export function isBusinessDay(day: number, holidays: readonly HolidayRule[]): boolean {
  if (weekdayOf(day) >= SATURDAY) return false
  const { year } = civilDate(day)
  return !holidays.some((rule) => holidayIn(year, rule) === day || holidayIn(year + 1, rule) === day)
}

/** More days off in a row than any list has. */
const MOST_DAYS_OFF = 30

function walk(day: number, count: number, step: 1 | -1, holidays: readonly HolidayRule[]): number {
  let at = day
  let left = count
  for (let walked = 0; walked < MOST_DAYS_OFF * (count + 1); walked++) {
    at += step
    if (isBusinessDay(at, holidays)) left -= 1
    if (left === 0) return at
  }
  throw new PreconditionError('a calendar without business days')
}

/** The nth business day after a day; with n = 0 the day itself. */
export const businessDaysAfter = (day: number, count: number, holidays: readonly HolidayRule[]): number =>
  count === 0 ? day : walk(day, count, 1, holidays)

export const businessDaysBefore = (day: number, count: number, holidays: readonly HolidayRule[]): number =>
  count === 0 ? day : walk(day, count, -1, holidays)

/** The day itself when it is one, else the next. */
export const businessDayFrom = (day: number, holidays: readonly HolidayRule[]): number =>
  isBusinessDay(day, holidays) ? day : businessDaysAfter(day, 1, holidays)
