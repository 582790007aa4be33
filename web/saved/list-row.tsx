import { StatusWord } from '../crossings/answers/release-panel.tsx'
import { StatusMark } from '../crossings/answers/status-mark.tsx'
import { shown } from '../fields/shown.ts'
import { saveCrossingFile } from '../state/crossing-file.ts'
import type { Row } from './listed-rows.ts'
import { SAVED } from './saved-words.ts'
import { whenWords } from './when.ts'

function RowStatus({ status }: { readonly status: Row['status'] }) {
  if (status === 'hold' || status === 'check') return <StatusWord status={status} />
  return (
    <span class="status status-none">
      <StatusMark shape="note" />
      <span>{status === 'no-plan' ? SAVED.noPlan : SAVED.notWorkedOut}</span>
    </span>
  )
}

/** Where the name of a crossing is a link in the list. */
export const rowLinkId = (id: string): string => `crossing-${id}`

type Props = {
  readonly row: Row
  readonly onDuplicate: () => void
  readonly onDelete: () => void
}

/** One crossing: what it is, and what can be done with it. */
export function ListRow({ row, onDuplicate, onDelete }: Props) {
  const action = (words: string, act: () => void, whole = words) => (
    <button type="button" class="quiet" aria-label={SAVED.ofRow(whole, row.name)} onClick={act}>
      {words}
    </button>
  )
  return (
    <li class="list-row">
      <div class="row-name">
        <a id={rowLinkId(row.id)} href={`/crossings/${row.id}`}>
          {row.name}
        </a>
      </div>
      <RowStatus status={row.status} />
      <p class="row-length">
        <span class="unseen">{SAVED.length} </span>
        {row.lengthM === null ? SAVED.noLength : shown(row.lengthM, 'length')}
      </p>
      <p class="row-when fine">
        {row.demo && <span class="demo-mark">{SAVED.demo}</span>}
        {row.version === null && <span class="demo-mark">{SAVED.notSent}</span>}
        <time dateTime={row.updatedAt}>
          {(row.isCopy ? SAVED.kept : SAVED.changed)(whenWords(row.updatedAt))}
        </time>
      </p>
      <div class="row-actions">
        {action(SAVED.duplicate, onDuplicate)}
        {action(SAVED.export, () => saveCrossingFile(row.document), SAVED.exportWhole)}
        {action(SAVED.delete, onDelete)}
      </div>
    </li>
  )
}
