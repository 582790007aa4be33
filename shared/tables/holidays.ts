/** A day off by rule, so that any year can be worked out. Weekdays are 1 for Monday to 7 for Sunday. */
export type HolidayRule =
  | {
      readonly on: 'date'
      readonly month: number
      readonly day: number
      /** Which day is kept when it falls on a Saturday or a Sunday; 0 stays, −1 is the day before. */
      readonly saturday: number
      readonly sunday: number
      /** For a Friday that is moved as well: Georgia keeps a Christmas Eve on a Friday on the Thursday. */
      readonly friday?: number
    }
  | {
      readonly on: 'weekday'
      readonly month: number
      readonly weekday: number
      /** 1 for the first; −1 for the last. */
      readonly nth: number
      /** The day kept, counted from that weekday: the Friday after Thanksgiving is 1. */
      readonly plusDays?: number
      readonly evenYears?: true
    }
  /** Days after Easter Sunday. */
  | { readonly on: 'easter'; readonly plusDays: number }
  /** One day of one year, by its number; an owner's own. */
  | { readonly on: 'once'; readonly day: number }
  /** The last such weekday before a date. */
  | { readonly on: 'weekday-before'; readonly month: number; readonly day: number; readonly weekday: number }

const date = (month: number, day: number, saturday = -1, sunday = 1): HolidayRule => ({
  on: 'date',
  month,
  day,
  saturday,
  sunday,
})
const weekday = (month: number, nth: number, day: number, plusDays = 0): HolidayRule => ({
  on: 'weekday',
  month,
  weekday: day,
  nth,
  plusDays,
})
const MONDAY = 1
const TUESDAY = 2
const THURSDAY = 4

const NEW_YEAR = date(1, 1)
const KING = weekday(1, 3, MONDAY)
const PRESIDENTS = weekday(2, 3, MONDAY)
const MEMORIAL = weekday(5, -1, MONDAY)
const JUNETEENTH = date(6, 19)
const INDEPENDENCE = date(7, 4)
const LABOR = weekday(9, 1, MONDAY)
const COLUMBUS = weekday(10, 2, MONDAY)
const VETERANS = date(11, 11)
const THANKSGIVING = weekday(11, 4, THURSDAY)
const AFTER_THANKSGIVING = weekday(11, 4, THURSDAY, 1)
const CHRISTMAS = date(12, 25)

/** 5 U.S.C. 6103: Saturday is kept on Friday, Sunday on Monday. Taken where a state's own list was not read. */
export const FEDERAL: readonly HolidayRule[] = [
  NEW_YEAR,
  KING,
  PRESIDENTS,
  MEMORIAL,
  JUNETEENTH,
  INDEPENDENCE,
  LABOR,
  COLUMBUS,
  VETERANS,
  THANKSGIVING,
  CHRISTMAS,
]

/** Fla. Stat. 556.102: its own list, with the Friday after Thanksgiving and Christmas Eve. */
export const FLORIDA: readonly HolidayRule[] = [
  NEW_YEAR,
  KING,
  MEMORIAL,
  INDEPENDENCE,
  LABOR,
  THANKSGIVING,
  AFTER_THANKSGIVING,
  // On a Sunday it leaves Monday to Christmas Day: nothing was read on it, and the later start is taken.
  { on: 'date', month: 12, day: 24, saturday: -1, sunday: 2 },
  CHRISTMAS,
]

/** O.C.G.A. 25-9-3: Christmas Eve on a Friday is kept on Thursday, on a Sunday on the Tuesday after. */
export const GEORGIA: readonly HolidayRule[] = [
  ...FEDERAL,
  AFTER_THANKSGIVING,
  { on: 'date', month: 12, day: 24, saturday: -1, sunday: 2, friday: -1 },
]

/** Election Day of even years beside the federal list (a centre's notice of 2022). */
export const WISCONSIN: readonly HolidayRule[] = [
  ...FEDERAL,
  { on: 'weekday', month: 11, weekday: MONDAY, nth: 1, plusDays: TUESDAY - MONDAY, evenYears: true },
]

const GOOD_FRIDAY: HolidayRule = { on: 'easter', plusDays: -2 }
const EASTER_MONDAY: HolidayRule = { on: 'easter', plusDays: 1 }
/** From memory. */
export const ENGLAND: readonly HolidayRule[] = [
  date(1, 1, 2, 1),
  GOOD_FRIDAY,
  EASTER_MONDAY,
  weekday(5, 1, MONDAY),
  weekday(5, -1, MONDAY),
  weekday(8, -1, MONDAY),
  date(12, 25, 2, 2),
  date(12, 26, 2, 2),
]

/** From memory; the civic holiday of August is counted, which no law asks for and many keep. */
export const ONTARIO: readonly HolidayRule[] = [
  date(1, 1, 2, 1),
  weekday(2, 3, MONDAY),
  GOOD_FRIDAY,
  { on: 'weekday-before', month: 5, day: 25, weekday: MONDAY },
  date(7, 1, 2, 1),
  weekday(8, 1, MONDAY),
  weekday(9, 1, MONDAY),
  weekday(10, 2, MONDAY),
  date(12, 25, 2, 2),
  date(12, 26, 2, 2),
]

/** From memory: what most states share; each has days of its own. */
export const AUSTRALIA: readonly HolidayRule[] = [
  date(1, 1, 2, 1),
  date(1, 26, 2, 1),
  GOOD_FRIDAY,
  EASTER_MONDAY,
  date(4, 25, 0, 1),
  weekday(6, 2, MONDAY),
  date(12, 25, 2, 2),
  date(12, 26, 2, 2),
]
