import { readCivil, writeCivil } from '../../shared/core/digsafe/civil.ts'
import type { NoticeDates } from '../../shared/core/digsafe/notice-dates.ts'
import { type CalendarEntry, renewalCalendar } from '../../shared/text/renewal-calendar.ts'
import { textAt } from '../state/document-path.ts'
import type { JsonObject } from '../state/json.ts'
import { LOCATE } from './locate-words.ts'

type Dated = { readonly at: string; readonly isPrinted: boolean }

/** The printed date if there is one, else what was worked out. */
function dateOf(crossing: JsonObject, path: string, workedOut: number | null): Dated | null {
  const printed = readCivil(textAt(crossing, path))
  if (printed !== null) return { at: writeCivil(printed), isPrinted: true }
  return workedOut === null ? null : { at: writeCivil(workedOut), isPrinted: false }
}

/** Entries of one crossing's ticket: renew by, expires. */
export function ticketEntries(crossing: JsonObject, dates: NoticeDates | null): readonly CalendarEntry[] {
  const name = textAt(crossing, 'name')
  const number = textAt(crossing, 'locate.ticket.number')
  const place = textAt(crossing, 'locate.ticket.site') || textAt(crossing, 'emergency.address')
  const entry = (what: string, summary: string, dated: Dated | null): readonly CalendarEntry[] => {
    if (dated === null) return []
    const notes = [number, place, dated.isPrinted ? LOCATE.fromTicket : LOCATE.workedOut]
    return [
      {
        uid: `${what}-${encodeURIComponent(number || name)}-${dated.at}@underlane`,
        at: dated.at,
        summary,
        description: notes.filter((each) => each !== '').join('\n'),
      },
    ]
  }
  const printedExpiry = textAt(crossing, 'locate.ticket.expires') !== ''
  // With a printed expiry a date worked out from another start would only mislead.
  const renewal = dateOf(
    crossing,
    'locate.ticket.renewBy',
    printedExpiry ? null : (dates?.renewByMin ?? null),
  )
  const expiry = dateOf(crossing, 'locate.ticket.expires', dates?.expiryMin ?? null)
  return [
    ...entry('renew', LOCATE.renewEvent(name), renewal),
    ...entry('expires', LOCATE.expireEvent(name), expiry),
  ]
}

export const ticketCalendar = (entries: readonly CalendarEntry[], now: Date): string =>
  renewalCalendar(entries, now.toISOString().replace(/[-:]|\.\d+/g, ''))
