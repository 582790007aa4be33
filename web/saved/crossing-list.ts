import { effect, type Signal, signal, untracked } from '@preact/signals'
import { connection } from '../offline/connection.ts'
import { dropChange, keepCrossings, keptList, outboxCount } from '../offline/kept-crossings.ts'
import type { Outbox, QueuedChange } from '../offline/outbox.ts'
import type { JsonObject } from '../state/json.ts'
import { fetchList, restoreCrossing, type Sent } from './crossing-requests.ts'
import { type Row, rowOfListed, rowsOfCopies } from './listed-rows.ts'
import { newId } from './new-id.ts'
import { SAVED } from './saved-words.ts'
import { flush, removeOrQueue, sendOrQueue, whenSent } from './send-or-queue.ts'

type Listing =
  | { readonly state: 'loading' }
  | { readonly state: 'here'; readonly rows: readonly Row[] }
  /** No connection: what this browser keeps. */
  | { readonly state: 'kept'; readonly rows: readonly Row[] }
  | { readonly state: 'trouble' }

/** Deleted on this page, and can be brought back. */
export type Deleted = {
  readonly id: string
  readonly version: number
  readonly name: string
  /** The server has not got it yet: under this key it waits, and is simply not sent when taken back. */
  readonly waitingKey: string | null
}

export type CrossingList = {
  readonly listing: Signal<Listing>
  readonly deleted: Signal<readonly Deleted[]>
  /** What came of the last thing done. */
  readonly said: Signal<string>
  load(): Promise<void>
  /** Loads again when the server is back, and when what waited has gone there; gives the end of it. */
  followConnection(): () => void
  /** Whether it is gone. */
  remove(row: Row): Promise<boolean>
  undo(deleted: Deleted): Promise<void>
  /** The id of the copy; null when it could not be made. */
  duplicate(row: Row): Promise<string | null>
}

const troubleWords = (sent: Exclude<Sent, { readonly state: 'done' }>, name: string): string =>
  SAVED.notDone[sent.state](name)

const isWaiting = ({ kind, state }: QueuedChange): boolean =>
  kind === 'delete' && (state === 'waiting' || state === 'sent')

/** Deletions that wait, by the names of what they are to take away. */
async function waitingDeletions(outbox: Outbox, rows: readonly Row[]): Promise<readonly Deleted[]> {
  const waiting = outbox.filter(isWaiting)
  if (waiting.length === 0) return []
  const names = new Map((await keptList()).map(({ id, document }) => [id, document.name]))
  return waiting.map(({ id, key, baseVersion }) => ({
    id,
    version: baseVersion ?? 1,
    name: rows.find((row) => row.id === id)?.name ?? String(names.get(id) ?? id),
    waitingKey: key,
  }))
}

/** The rows, and what was taken away from among them. */
function createListing() {
  const listing = signal<Listing>({ state: 'loading' })
  const deleted = signal<readonly Deleted[]>([])
  const said = signal('')

  /** What waits to be taken away is not listed, and can be brought back; what came of it is heard. */
  const withoutWaiting = async (outbox: Outbox, rows: readonly Row[]) => {
    const waiting = await waitingDeletions(outbox, rows)
    const isSettled = ({ waitingKey }: Deleted) => waitingKey === null
    deleted.value = [...deleted.value.filter(isSettled), ...waiting]
    for (const entry of waiting) {
      if (entry.waitingKey !== null) whenSent(entry.waitingKey, (sent) => takeSent(entry, sent))
    }
    return rows.filter(({ id }) => waiting.every((each) => each.id !== id))
  }

  const takeSent = (entry: Deleted, sent: Sent) => {
    const others = deleted.value.filter(({ id }) => id !== entry.id)
    if (sent.state === 'done') {
      deleted.value = [...others, { ...entry, version: sent.kept.version, waitingKey: null }]
      return
    }
    deleted.value = others
    if (sent.state === 'absent') return
    // It stays, as the server has it: whoever wanted it gone looks at that first.
    if (entry.waitingKey !== null) void dropChange(entry.waitingKey)
    said.value = troubleWords(sent, entry.name)
  }

  const load = async () => {
    const outbox = await flush()
    const answer = await fetchList()
    if (answer.state === 'answered') {
      listing.value = {
        state: 'here',
        rows: await withoutWaiting(outbox, answer.items.map(rowOfListed)),
      }
      void keepCrossings(
        answer.items.map(({ id, version, demo, document }) => ({ id, version, demo, document })),
      )
    } else if (answer.state === 'unreachable') {
      const rows = await rowsOfCopies(await keptList())
      listing.value = { state: 'kept', rows: await withoutWaiting(outbox, rows) }
    } else listing.value = { state: 'trouble' }
  }

  return { listing, deleted, said, load }
}

/** The list as the server has it, else as this browser keeps it, and what can be done to its rows. */
export function createCrossingList(): CrossingList {
  const { listing, deleted, said, load } = createListing()
  return {
    listing,
    deleted,
    said,
    load,
    followConnection() {
      let waited = outboxCount.peek()
      return effect(() => {
        const isBack = connection.value === 'online' && listing.value.state === 'kept'
        const hasGone = outboxCount.value < waited
        waited = outboxCount.value
        if (isBack || hasGone) untracked(() => void load())
      })
    },
    async remove({ id, version, name }) {
      const sent = await removeOrQueue({ id, version, requestKey: newId() })
      if (sent.state === 'waiting') said.value = sent.isKept ? '' : SAVED.notDone.unreachable(name)
      else said.value = sent.state === 'done' ? '' : troubleWords(sent, name)
      if (sent.state === 'done') {
        deleted.value = [...deleted.value, { id, version: sent.kept.version, name, waitingKey: null }]
      }
      await load()
      return sent.state === 'done' || (sent.state === 'waiting' && sent.isKept)
    },
    async undo(asked) {
      // It may have gone, or go now that it can: then it is brought back from the server.
      if (asked.waitingKey !== null) await flush()
      const entry = deleted.value.find(({ id }) => id === asked.id) ?? asked
      if (entry.waitingKey !== null) {
        await dropChange(entry.waitingKey)
        deleted.value = deleted.value.filter((each) => each !== entry)
        said.value = SAVED.restored(entry.name)
        await load()
        return
      }
      const sent = await restoreCrossing(entry)
      if (sent.state === 'done' || sent.state === 'absent') {
        deleted.value = deleted.value.filter((each) => each !== entry)
      }
      said.value = sent.state === 'done' ? SAVED.restored(entry.name) : troubleWords(sent, entry.name)
      await load()
    },
    async duplicate({ document, name }) {
      const id = newId()
      const copyName = SAVED.copyOf(name)
      const copy: JsonObject = { ...document, name: copyName }
      const sent = await sendOrQueue({ id, document: copy, from: null, requestKey: newId() }, false)
      if (sent.state === 'done') said.value = SAVED.duplicated(copyName)
      else if (sent.state === 'waiting') said.value = SAVED.waitingToGo(copyName)
      else said.value = troubleWords(sent, name)
      await load()
      return sent.state === 'done' || sent.state === 'waiting' ? id : null
    },
  }
}
