import { describe, expect, test } from 'vitest'
import { jurisdictionEdit } from '../../../shared/contracts/jurisdiction-edit.ts'
import { settingsFile } from '../../../shared/contracts/settings.ts'
import { readCivil, writeCivil } from '../../../shared/core/digsafe/civil.ts'
import { withEdits } from '../../../shared/core/digsafe/edited-row.ts'
import { noticeDates } from '../../../shared/core/digsafe/notice-dates.ts'
import { JURISDICTIONS } from '../../../shared/tables/jurisdictions.ts'

const TENNESSEE = JURISDICTIONS.find((row) => row.id === 'US-TN')
const MADE = { id: 'US-TN', on: '2026-11-20', by: 'Rosa' }
const startOf = (called: string, ...edits: readonly object[]) => {
  if (!TENNESSEE) throw new Error('no row')
  const row = withEdits(
    TENNESSEE,
    edits.map((edit) => jurisdictionEdit.parse({ ...MADE, ...edit })),
  )
  const { startMin, expiryMin, startBecause } = noticeDates(row, readCivil(called) ?? 0)
  return {
    start: startMin === null ? startBecause : writeCivil(startMin),
    expires: expiryMin === null ? null : writeCivil(expiryMin),
  }
}
const MONDAY = '2026-03-02T10:00'

describe('an owner’s change of a row', () => {
  test('another way of counting, a day off of its own, another life', () => {
    expect(startOf(MONDAY).start).toBe('2026-03-06T00:00')
    expect(startOf(MONDAY, { notice: { family: 'nth-day', count: 3 } }).start).toBe('2026-03-05T00:00')
    expect(startOf(MONDAY, { holidays: ['2026-03-04'] }).start).toBe('2026-03-09T00:00')
    expect(startOf(MONDAY, { lifeDays: { count: 10, of: 'calendar' } }).expires).toBe('2026-03-16T23:59')
  })

  test('the later one stands, whatever the order they are kept in', () => {
    const first = { on: '2026-11-01', notice: { family: 'full-days', count: 5 } }
    const second = { on: '2026-11-10', notice: { family: 'full-days', count: 2 } }
    expect(startOf(MONDAY, second, first)).toEqual(startOf(MONDAY, first, second))
    expect(startOf(MONDAY, second, first).start).toBe('2026-03-05T00:00')
  })

  test('sources read again carry a row past its twelve months', () => {
    expect(startOf('2027-12-06T10:00').start).toBe('checked-too-long-ago')
    expect(startOf('2027-12-06T10:00', { checkedOn: '2027-12-01' }).start).toBe('2027-12-10T00:00')
  })

  test('needs a name and a day, and a place there is', () => {
    expect(
      settingsFile.safeParse({ name: 'Firm', jurisdictions: [{ id: 'US-TN', on: '2026-11-20' }] }).success,
    ).toBe(false)
    expect(settingsFile.safeParse({ name: 'Firm', jurisdictions: [{ ...MADE, id: 'US-ZZ' }] }).success).toBe(
      false,
    )
    expect(
      settingsFile.safeParse({ name: 'Firm', jurisdictions: [{ ...MADE, zone: '24 in' }] }).success,
    ).toBe(true)
    expect(settingsFile.safeParse({ name: 'Firm' }).success).toBe(true)
  })
})
