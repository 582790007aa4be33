import { useEffect } from 'preact/hooks'
import { dayOf, minuteOfDay, readCivil, weekdayOf, writeCivil } from '../../shared/core/digsafe/civil.ts'
import { withEdits } from '../../shared/core/digsafe/edited-row.ts'
import { jurisdictionOf } from '../../shared/core/digsafe/jurisdiction-of.ts'
import { type NoticeDates, noticeDates } from '../../shared/core/digsafe/notice-dates.ts'
import { JURISDICTIONS, type Jurisdiction, UNKNOWN_ZONE_M } from '../../shared/tables/jurisdictions.ts'
import { saidQuantity } from '../../shared/text/say-quantity.ts'
import { Folded } from '../crossings/form/panel.tsx'
import { fileNameOf, saveFile } from '../state/crossing-file.ts'
import type { CrossingModel } from '../state/crossing-model.ts'
import { textAt } from '../state/document-path.ts'
import { language } from '../state/language-choice.ts'
import { say } from '../state/unit-choice.ts'
import { EditRow } from './edit-row.tsx'
import { fetchFirmEdits, firmEdits } from './firm-edits.ts'
import { LOCATE } from './locate-words.ts'
import { ticketCalendar, ticketEntries } from './ticket-calendar.ts'

/** 2026-01-05 was a Monday; only its name is wanted. */
const weekdayName = (weekday: number): string =>
  new Intl.DateTimeFormat(language.value, { weekday: 'short', timeZone: 'UTC' }).format(
    new Date(Date.UTC(2026, 0, 4 + weekday)),
  )

/** `Thu 2026-03-05 07:00`: a civil date with its weekday, for that is what a crew plans by. */
function dateText(minute: number): string {
  const [date = '', time = ''] = writeCivil(minute).split('T')
  return `${weekdayName(weekdayOf(dayOf(minute)))} ${date}${minuteOfDay(minute) === 0 ? '' : ` ${time}`}`
}

function Start({ dates }: { readonly dates: NoticeDates }) {
  const { startMin, startBecause, marksDueMin } = dates
  if (startMin !== null) {
    return (
      <>
        <p class="not-before">{LOCATE.notBefore(dateText(startMin))}</p>
        {marksDueMin !== null && <p>{LOCATE.marksDue(dateText(marksDueMin))}</p>}
      </>
    )
  }
  if (startBecause === 'no-clock-in-law') return <p>{LOCATE.noClock}</p>
  return <p>{startBecause === 'meeting-not-known' ? LOCATE.noMeeting : LOCATE.tooOld}</p>
}

function Ending({ dates }: { readonly dates: NoticeDates }) {
  const { expiryMin, expiryBecause, renewByMin } = dates
  const isOpen = expiryBecause === 'open-while-working'
  const runsOut = expiryBecause === 'life-not-known' ? LOCATE.runsOutUnknown : LOCATE.runsOut
  return (
    <>
      {isOpen && <p>{LOCATE.open}</p>}
      {expiryMin !== null && <p>{runsOut(dateText(expiryMin))}</p>}
      {renewByMin !== null && <p>{(isOpen ? LOCATE.beginBy : LOCATE.renewBy)(dateText(renewByMin))}</p>}
    </>
  )
}

/** Names of the days by the reader, the rule itself as it was read: in English, with its sources. */
function RowInWords({ row }: { readonly row: Jurisdiction }) {
  const parts = [
    'notice',
    'life',
    'renewal',
    'zone',
    'handDig',
    'trenchless',
    'response',
    'holidays',
    'notes',
  ] as const
  return (
    <>
      <dl class="rules-in-words">
        {parts
          .filter((part) => row.said[part] !== '')
          .map((part) => (
            <div key={part}>
              <dt>{LOCATE.rows[part]}</dt>
              <dd lang="en">{row.said[part]}</dd>
            </div>
          ))}
      </dl>
      {row.trenchless === 'not-read' && <p>{LOCATE.trenchlessNotRead}</p>}
      {row.fromMemory.length > 0 && (
        <p>{LOCATE.fromMemory(row.fromMemory.map((part) => LOCATE.parts[part]).join(', '))}</p>
      )}
      <p class="fine">
        {LOCATE.sources}: <span lang="en">{row.sources.join('; ')}</span>
      </p>
    </>
  )
}

/** Silence is counted: every owner on the ticket either answered or holds. */
function silentOwners(model: CrossingModel): number | null {
  const answers = model.answers.value
  if (answers.state === 'none') return null
  return answers.input.locate?.responses.filter((each) => each.answer === '').length ?? null
}

function Standing({ row }: { readonly row: Jurisdiction }) {
  const zone = saidQuantity(row.zoneM ?? UNKNOWN_ZONE_M, 'depth', say.value)
  return (
    <>
      <p>{row.zoneM === null ? LOCATE.zoneUnknown(zone) : LOCATE.zone(zone)}</p>
      <p class="fine">
        {LOCATE.checkedOn(row.checkedOn, LOCATE.confidence[row.confidence])}
        {row.changing && ` ${LOCATE.changing}`}
      </p>
    </>
  )
}

/** The rules of the place beside the ticket, and what they make of the call. The ticket counts; this only helps to plan. */
export function PlaceRules({ model }: { readonly model: CrossingModel }) {
  useEffect(() => void fetchFirmEdits(), [])
  const crossing = model.document.value
  const id = jurisdictionOf(textAt(crossing, 'locate.jurisdiction'))
  const own = JURISDICTIONS.find((each) => each.id === id)
  const calledMin = readCivil(textAt(crossing, 'locate.called'))
  const row = own === undefined ? null : withEdits(own, firmEdits.value)
  const isMeeting = textAt(crossing, 'locate.meeting') === 'true'
  const dates = row === null || calledMin === null ? null : noticeDates(row, calledMin, isMeeting)
  const entries = ticketEntries(crossing, dates)
  const printedMin = readCivil(textAt(crossing, 'locate.ticket.starts'))
  const isEarlier = dates?.startMin != null && printedMin !== null && printedMin < dates.startMin
  const silent = silentOwners(model)
  return (
    <div class="place-rules">
      {row !== null && (
        <>
          <h3>{LOCATE.heading(row.name)}</h3>
          <div role="status">
            {dates === null ? <p>{LOCATE.callFirst}</p> : <Start dates={dates} />}
            {dates !== null && <Ending dates={dates} />}
            {isEarlier && <p class="not-before">{LOCATE.ticketEarlier}</p>}
          </div>
          <Standing row={row} />
          {firmEdits.value
            .filter((edit) => edit.id === row.id)
            .map((edit) => (
              <p key={`${edit.on} ${edit.by}`} class="firm-edit">
                {LOCATE.editedBy(edit.by, edit.on)}
                {edit.why === null ? '' : `: ${edit.why}`}
              </p>
            ))}
          <Folded words={LOCATE.more}>
            <RowInWords row={row} />
          </Folded>
          <EditRow id={row.id} />
        </>
      )}
      {silent !== null && silent > 0 && <p class="not-before">{LOCATE.owner(silent)}</p>}
      {entries.length > 0 && (
        <button
          type="button"
          class="quiet"
          onClick={() =>
            saveFile(fileNameOf(crossing, 'ics'), ticketCalendar(entries, new Date()), 'text/calendar')
          }
        >
          {LOCATE.calendar}
        </button>
      )}
    </div>
  )
}
