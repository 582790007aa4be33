import type { HolidayRule } from '../../tables/holidays.ts'
import type { Jurisdiction, Notice } from '../../tables/jurisdictions.ts'
import { dayOf, readCivil } from './civil.ts'

/** What an owner has changed of a place's rules, dated and with a name; null where the row of the table stands. */
export type JurisdictionEdit = {
  readonly id: string
  readonly on: string
  readonly by: string
  readonly why: string | null
  readonly notice: Notice | null
  readonly lifeDays: { readonly count: number; readonly of: 'business' | 'calendar' } | null
  readonly renewDaysBefore: number | null
  readonly zoneM: number | null
  /** Days off beside those of the row's list. */
  readonly holidays: readonly string[]
  /** The day the sources were read again; null: as the row says. */
  readonly checkedOn: string | null
}

const once = (text: string): readonly HolidayRule[] => {
  const minute = readCivil(text)
  return minute === null ? [] : [{ on: 'once', day: dayOf(minute) }]
}

function edited(row: Jurisdiction, edit: JurisdictionEdit): Jurisdiction {
  const { life } = row
  const newLife =
    edit.lifeDays === null
      ? life
      : ({
          kind: 'days',
          ...edit.lifeDays,
          from: life.kind === 'days' ? life.from : 'called',
          firstDayCounts: life.kind === 'days' && life.firstDayCounts,
          endsMin: life.kind === 'days' ? life.endsMin : 1439,
        } as const)
  return {
    ...row,
    notice: edit.notice ?? row.notice,
    life: newLife,
    renewal: edit.renewDaysBefore === null ? row.renewal : { daysBefore: edit.renewDaysBefore },
    zoneM: edit.zoneM ?? row.zoneM,
    holidays: [...row.holidays, ...edit.holidays.flatMap(once)],
    checkedOn: edit.checkedOn ?? row.checkedOn,
  }
}

/** The row as a firm has it: each change laid over the one before, in the order of their days. */
export function withEdits(row: Jurisdiction, edits: readonly JurisdictionEdit[]): Jurisdiction {
  return edits
    .filter((edit) => edit.id === row.id)
    .sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0))
    .reduce(edited, row)
}
