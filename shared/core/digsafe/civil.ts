/**
 * Days and minutes as printed on a ticket: the proleptic Gregorian calendar, counted, with no time zone anywhere. A day
 * is its number from 1970-01-01; a moment is its number of minutes from the start of that day, on the clock of the place.
 */
export const MINUTES_PER_DAY = 1440
const DAYS_PER_ERA = 146_097
const YEARS_PER_ERA = 400
/** From 0000-03-01, where the count is easy because leap days end a year, to 1970-01-01. */
const EPOCH_SHIFT = 719_468

export type CivilDate = { readonly year: number; readonly month: number; readonly day: number }

/** Number of a day; the month may be any of 1 to 12, the day any whole number. */
export function dayNumber({ year, month, day }: CivilDate): number {
  const shifted = month <= 2 ? year - 1 : year
  const era = Math.floor(shifted / YEARS_PER_ERA)
  const yearOfEra = shifted - era * YEARS_PER_ERA
  const monthFromMarch = (month + 9) % 12
  const dayOfYear = Math.floor((153 * monthFromMarch + 2) / 5) + day - 1
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear
  return era * DAYS_PER_ERA + dayOfEra - EPOCH_SHIFT
}

/** The date of a day's number. */
export function civilDate(number: number): CivilDate {
  const shifted = number + EPOCH_SHIFT
  const era = Math.floor(shifted / DAYS_PER_ERA)
  const dayOfEra = shifted - era * DAYS_PER_ERA
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / 1460) +
      Math.floor(dayOfEra / 36_524) -
      Math.floor(dayOfEra / 146_096)) /
      365,
  )
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100))
  const monthFromMarch = Math.floor((5 * dayOfYear + 2) / 153)
  const month = monthFromMarch < 10 ? monthFromMarch + 3 : monthFromMarch - 9
  return {
    year: yearOfEra + era * YEARS_PER_ERA + (month <= 2 ? 1 : 0),
    month,
    day: dayOfYear - Math.floor((153 * monthFromMarch + 2) / 5) + 1,
  }
}

/** 1 for Monday to 7 for Sunday; 1970-01-01 was a Thursday. */
export const weekdayOf = (day: number): number => ((((day + 3) % 7) + 7) % 7) + 1

export const dayOf = (minute: number): number => Math.floor(minute / MINUTES_PER_DAY)
export const minuteOfDay = (minute: number): number => minute - dayOf(minute) * MINUTES_PER_DAY
export const atMinute = (day: number, minute: number): number => day * MINUTES_PER_DAY + minute

const NOTATION = /^(\d{4})-(\d{2})-(\d{2})(?:T(\d{2}):(\d{2})(?::(\d{2}))?)?$/

/** `2026-03-02` or `2026-03-02T09:10` as minutes; null for anything else, and for days no calendar has. */
export function readCivil(text: string): number | null {
  const found = NOTATION.exec(text)
  if (!found) return null
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0, second = 0] = found
    .slice(1)
    .map((part) => (part === undefined ? 0 : Number(part)))
  if (month < 1 || month > 12 || day < 1 || hour > 23 || minute > 59 || second > 59) return null
  const number = dayNumber({ year, month, day })
  const back = civilDate(number)
  return back.month === month && back.day === day ? atMinute(number, hour * 60 + minute) : null
}

const digits = (value: number, count: number): string => String(value).padStart(count, '0')

/** A day's number as `2026-03-02`. */
export function writeDay(number: number): string {
  const { year, month, day } = civilDate(number)
  return `${digits(year, 4)}-${digits(month, 2)}-${digits(day, 2)}`
}

/** Minutes as `2026-03-02T09:10`. */
export function writeCivil(minute: number): string {
  const rest = minuteOfDay(minute)
  return `${writeDay(dayOf(minute))}T${digits(Math.floor(rest / 60), 2)}:${digits(rest % 60, 2)}`
}
