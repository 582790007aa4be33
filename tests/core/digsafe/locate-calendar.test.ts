import '../../support/one-seed.ts'
import fc from 'fast-check'
import { afterEach, describe, expect, it } from 'vitest'
import { evaluateRelation } from '../../../shared/contracts/relation-request.ts'
import { isBusinessDay } from '../../../shared/core/digsafe/business-days.ts'
import {
  civilDate,
  dayNumber,
  readCivil,
  weekdayOf,
  writeCivil,
  writeDay,
} from '../../../shared/core/digsafe/civil.ts'
import { earliestStart } from '../../../shared/core/digsafe/earliest-start.ts'
import { noticeDates } from '../../../shared/core/digsafe/notice-dates.ts'
import { JURISDICTIONS } from '../../../shared/tables/jurisdictions.ts'
import { isWorkday, walkedExpiry, walkedStart } from './calendar-by-walking.ts'

const formerZone = process.env.TZ
afterEach(() => {
  process.env.TZ = formerZone
})

const FIRST = dayNumber({ year: 2026, month: 1, day: 1 })
const DAYS = Array.from({ length: 3 * 365 }, (_each, index) => FIRST + index)
/** At night, before opening, in the morning, after closing, late: a different one each day. */
const HOURS = [0, 6, 10, 17, 23]

describe.each(['UTC', 'America/St_Johns', 'Pacific/Auckland'])('three years in %s', (zone) => {
  it.each(JURISDICTIONS.map((row) => [row.id, row] as const))('%s as walked day by day', (_id, row) => {
    process.env.TZ = zone
    expect(new Date(2026, 0, 1).getTimezoneOffset()).toBe(
      { UTC: 0, 'America/St_Johns': 210, 'Pacific/Auckland': -780 }[zone],
    )
    const fresh = { ...row, checkedOn: '2029-01-01' }
    const wrong: string[] = []
    for (const day of DAYS) {
      const called = `${writeDay(day)}T${String(HOURS[day % HOURS.length]).padStart(2, '0')}:00`
      const found = noticeDates(fresh, readCivil(called) ?? Number.NaN)
      const start = walkedStart(row, called)
      const ours = found.startMin === null ? null : writeCivil(found.startMin)
      if (ours !== start) wrong.push(`${called}: ${ours}, walked ${start}`)
      const expiry = walkedExpiry(row, called, start)
      if (expiry !== null && found.expiryMin !== null && writeCivil(found.expiryMin) !== expiry) {
        wrong.push(`${called}: expires ${writeCivil(found.expiryMin)}, walked ${expiry}`)
      }
    }
    expect(wrong).toEqual([])
  })
})

describe('civil days', () => {
  it('are those of the machine, for 800 years', () => {
    fc.assert(
      fc.property(fc.integer({ min: -100_000, max: 200_000 }), (day) => {
        const date = new Date(day * 86_400_000)
        expect(civilDate(day)).toEqual({
          year: date.getUTCFullYear(),
          month: date.getUTCMonth() + 1,
          day: date.getUTCDate(),
        })
        expect(dayNumber(civilDate(day))).toBe(day)
        expect(weekdayOf(day) % 7).toBe(date.getUTCDay())
      }),
    )
  })

  it('are read only when the calendar has them', () => {
    for (const bad of [
      '2026-02-29',
      '2026-13-01',
      '2026-00-10',
      '2026-04-31',
      '2026-03-02T24:00',
      '2026-3-2',
      '',
    ]) {
      expect(readCivil(bad), bad).toBeNull()
    }
    expect(readCivil('2028-02-29')).not.toBeNull()
    expect(writeCivil(readCivil('2026-03-02T09:10:59') ?? 0)).toBe('2026-03-02T09:10')
  })

  it('keep Easter where the almanac has it', () => {
    const goodFridays = ['2024-03-29', '2025-04-18', '2026-04-03', '2027-03-26', '2028-04-14', '2038-04-23']
    const ontario = JURISDICTIONS.find((row) => row.id === 'CA-ON')
    for (const text of goodFridays) {
      const day = Math.floor((readCivil(text) ?? 0) / 1440)
      expect(isBusinessDay(day, ontario?.holidays ?? []), text).toBe(false)
    }
  })
})

const evaluated = (given: Readonly<Record<string, string>>) => evaluateRelation(earliestStart, given)

describe('a start worked out from the table', () => {
  it('is never on or before the day of the call, and no later call starts earlier', () => {
    const minute = fc.integer({ min: FIRST * 1440, max: (FIRST + 300) * 1440 })
    fc.assert(
      fc.property(fc.constantFrom(...JURISDICTIONS), minute, minute, (row, one, other) => {
        const first = noticeDates(row, Math.min(one, other)).startMin
        const second = noticeDates(row, Math.max(one, other)).startMin
        if (first === null || second === null) return
        expect(Math.floor(first / 1440)).toBeGreaterThan(Math.floor(Math.min(one, other) / 1440))
        expect(second).toBeGreaterThanOrEqual(first)
      }),
    )
  })

  it('needs a row checked within twelve months of the call', () => {
    const row = JURISDICTIONS.find((each) => each.id === 'US-VA')
    if (!row) throw new Error('no Virginia')
    const on = (text: string) => noticeDates({ ...row, checkedOn: '2026-11-01' }, readCivil(text) ?? 0)
    expect(on('2027-11-01T10:00').startBecause).toBe('counted')
    expect(on('2027-11-02T10:00')).toEqual({
      startMin: null,
      startBecause: 'checked-too-long-ago',
      marksDueMin: null,
      expiryMin: null,
      expiryBecause: 'no-start',
      renewByMin: null,
    })
  })

  it('has words instead of a date where there is none', () => {
    const britain = evaluated({ jurisdiction: 'GB', called: '2026-03-02T10:00' })
    expect(britain.ok && britain.value.outputs).toMatchObject({
      startIso: null,
      startBecause: 'no-clock-in-law',
    })
    const meeting = evaluated({ jurisdiction: 'US-VA', called: '2026-03-02T10:00', meeting: 'yes' })
    expect(meeting.ok && meeting.value.outputs).toMatchObject({
      startIso: null,
      startBecause: 'meeting-not-known',
    })
    const open = evaluated({ jurisdiction: 'US-NY', called: '2026-03-02T10:00' })
    expect(open.ok && open.value.outputs).toMatchObject({
      expiryIso: null,
      expiryBecause: 'open-while-working',
      renewByIso: '2026-03-19T17:00',
    })
  })

  it('refuses a place and a time it does not know, and says what would do', () => {
    const place = evaluated({ jurisdiction: 'US-ZZ', called: '2026-03-02T10:00' })
    expect(!place.ok && place.issues[0]).toMatchObject({ path: 'jurisdiction', code: 'unknown-choice' })
    const time = evaluated({ jurisdiction: 'US-VA', called: '2026-02-30' })
    expect(!time.ok && time.issues[0]).toMatchObject({ path: 'called', code: 'wrong-type' })
  })

  it('reads a moment with its offset in the zone named, and asks without one', () => {
    const asked = evaluated({ jurisdiction: 'US-VA', called: '2026-03-03T03:30:00Z' })
    expect(!asked.ok && asked.issues[0]?.code).toBe('ask')
    const read = evaluated({
      jurisdiction: 'US-VA',
      called: '2026-03-03T03:30:00Z',
      zone: 'America/New_York',
    })
    // Half past ten on Monday evening there.
    expect(read.ok && read.value.inputs.called).toBe('2026-03-02T22:30')
    expect(read.ok && read.value.outputs.startIso).toBe('2026-03-05T07:00')
  })
})

describe('the rows', () => {
  it('have an own id, a source, and say what is from memory', () => {
    expect(new Set(JURISDICTIONS.map((row) => row.id)).size).toBe(JURISDICTIONS.length)
    expect(
      JURISDICTIONS.filter((row) => row.sources.length === 0 || readCivil(row.checkedOn) === null),
    ).toEqual([])
    expect(JURISDICTIONS.length).toBe(38)
  })

  it('take the same days off as the almanac', () => {
    const row = JURISDICTIONS.find((each) => each.id === 'US-GA')
    const wrong = DAYS.filter((day) => {
      const { year, month, day: ofMonth } = civilDate(day)
      return (
        isBusinessDay(day, row?.holidays ?? []) !== isWorkday('US-GA', new Date(year, month - 1, ofMonth, 12))
      )
    })
    expect(wrong.map(writeDay)).toEqual([])
  })
})
