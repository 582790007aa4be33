import './saved.css'
import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import { useLocation } from 'preact-iso'
import { isSignedOut } from '../access/session-state.ts'
import { SignInNote } from '../access/sign-in-note.tsx'
import { EMPTY_CROSSING } from '../crossings/presets.ts'
import { connection } from '../offline/connection.ts'
import { saveFile } from '../state/crossing-file.ts'
import type { CrossingModel } from '../state/crossing-model.ts'
import type { JsonObject } from '../state/json.ts'
import { bringIn, type ImportDoors } from './bring-in.ts'
import { type CrossingList, createCrossingList, type Deleted } from './crossing-list.ts'
import { openInDraft } from './draft-place.ts'
import { FilesBroughtIn } from './files-brought-in.tsx'
import { ListRow, rowLinkId } from './list-row.tsx'
import { type Order, type Row, rowsShown } from './listed-rows.ts'
import { SAVED } from './saved-words.ts'
import { sendOrQueue } from './send-or-queue.ts'

/** Each deletion with its way back, until the page is left. */
function UndoBar({ list }: { readonly list: CrossingList }) {
  const last = useRef<HTMLButtonElement>(null)
  const { value: deleted } = list.deleted
  const count = deleted.length
  // The button that was pressed is gone with its row: the way back is the next thing wanted.
  useEffect(() => {
    if (count > 0) last.current?.focus()
  }, [count])
  const undo = async (entry: Deleted) => {
    await list.undo(entry)
    document.getElementById(rowLinkId(entry.id))?.focus()
  }
  return (
    <div class="undo-bar" role="status">
      {deleted.map((entry, place) => (
        <div key={entry.id} class="undo-line">
          <p>{(entry.waitingKey === null ? SAVED.deleted : SAVED.deletedLater)(entry.name)}</p>
          <button
            ref={place === count - 1 ? last : null}
            type="button"
            aria-label={SAVED.undoWhich(entry.name)}
            onClick={() => void undo(entry)}
          >
            {SAVED.undo}
          </button>
        </div>
      ))}
      {list.said.value !== '' && <p class="said">{list.said.value}</p>}
    </div>
  )
}

type ToolsProps = {
  readonly sought: string
  readonly order: Order
  readonly onSeek: (text: string) => void
  readonly onOrder: (order: Order) => void
}

const orders = (): readonly (readonly [Order, string])[] => [
  ['date', SAVED.byDate],
  ['name', SAVED.byName],
]

const ListTools = ({ sought, order, onSeek, onOrder }: ToolsProps) => (
  <div class="list-tools fields">
    <div class="field">
      <label for="saved-find">{SAVED.find}</label>
      <input
        id="saved-find"
        type="search"
        autocomplete="off"
        value={sought}
        onInput={(event) => onSeek(event.currentTarget.value)}
      />
    </div>
    <div class="field">
      <label for="saved-order">{SAVED.sort}</label>
      <select
        id="saved-order"
        value={order}
        onChange={(event) => onOrder(event.currentTarget.value === 'name' ? 'name' : 'date')}
      >
        {orders().map(([value, words]) => (
          <option key={value} value={value}>
            {words}
          </option>
        ))}
      </select>
    </div>
  </div>
)

/** The whole of what is listed, as one file that can be brought in again. */
const exportRows = (rows: readonly Row[]): void => {
  const documents = rows.map(({ document }) => document)
  const [only] = documents
  const whole: JsonObject | readonly JsonObject[] =
    only !== undefined && documents.length === 1 ? only : documents
  saveFile(SAVED.allName, `${JSON.stringify(whole, null, 2)}\n`)
}

function Rows({ list, rows }: { readonly list: CrossingList; readonly rows: readonly Row[] }) {
  const [sought, setSought] = useState('')
  const [order, setOrder] = useState<Order>('date')
  const found = rowsShown(rows, sought, order)
  const duplicate = async (row: Row) => {
    const id = await list.duplicate(row)
    if (id !== null) document.getElementById(rowLinkId(id))?.focus()
  }
  if (rows.length === 0) return <p class="empty">{SAVED.empty}</p>
  return (
    <>
      <ListTools sought={sought} order={order} onSeek={setSought} onOrder={setOrder} />
      <p role="status" class="fine">
        {found.length === 0 ? SAVED.noneFound(sought.trim()) : SAVED.count(found.length, rows.length)}
      </p>
      <ul class="crossing-list" aria-label={SAVED.list} hidden={found.length === 0}>
        {found.map((row) => (
          <ListRow
            key={row.id}
            row={row}
            onDuplicate={() => void duplicate(row)}
            onDelete={() => void list.remove(row)}
          />
        ))}
      </ul>
      {found.length > 0 && (
        <button type="button" class="quiet" onClick={() => exportRows(found)}>
          {SAVED.exportAll(found.length)}
        </button>
      )}
    </>
  )
}

function Listing({ list }: { readonly list: CrossingList }) {
  const listing = list.listing.value
  if (listing.state === 'loading') return <p role="status">{SAVED.loading}</p>
  if (listing.state === 'here') return <Rows list={list} rows={listing.rows} />
  const rows = listing.state === 'kept' ? listing.rows : []
  const isComing = listing.state === 'kept' && connection.value === 'online'
  const sentence = listing.state === 'trouble' ? SAVED.trouble : SAVED.unreachable
  if (isSignedOut.value) {
    return (
      <>
        <SignInNote />
        {rows.length > 0 && <Rows list={list} rows={rows} />}
      </>
    )
  }
  return (
    <>
      {isComing ? (
        <p role="status">{SAVED.loading}</p>
      ) : (
        <div class="former-note" role="status">
          <p>{listing.state === 'kept' && rows.length === 0 ? SAVED.unreachableNothing : sentence}</p>
          <button type="button" onClick={() => void list.load()}>
            {SAVED.again}
          </button>
        </div>
      )}
      {rows.length > 0 && <Rows list={list} rows={rows} />}
    </>
  )
}

function FileChoice({ doors }: { readonly doors: ImportDoors }) {
  const input = useRef<HTMLInputElement>(null)
  return (
    <>
      <button type="button" onClick={() => input.current?.click()}>
        {SAVED.chooseFiles}
      </button>
      <input
        ref={input}
        type="file"
        hidden
        accept=".json,.jsonl,application/json"
        multiple
        onChange={(event) => {
          const { currentTarget } = event
          void bringIn([...(currentTarget.files ?? [])], doors)
          // The same file may be chosen again once it is mended.
          currentTarget.value = ''
        }}
      />
    </>
  )
}

/** All that is saved: find it, open it, copy it, take it away and bring it back. */
export function SavedPage({ draft }: { readonly draft: CrossingModel }) {
  const list = useMemo(createCrossingList, [])
  const { route } = useLocation()
  useEffect(() => void list.load(), [list])
  useEffect(() => list.followConnection(), [list])
  const open = (document: JsonObject) => {
    openInDraft(draft, document)
    route('/')
  }
  const doors: ImportDoors = {
    open,
    save: (change) => sendOrQueue(change, false),
    whenSaved: () => void list.load(),
  }
  return (
    <main class="saved-page">
      <h1>{SAVED.heading}</h1>
      <div class="actions">
        <button type="button" class="save" onClick={() => open(EMPTY_CROSSING)}>
          {SAVED.fresh}
        </button>
        <FileChoice doors={doors} />
      </div>
      <p class="fine">{SAVED.intro}</p>
      <FilesBroughtIn doors={doors} />
      <UndoBar list={list} />
      <Listing list={list} />
    </main>
  )
}
