import { effect, type Signal, signal, untracked } from '@preact/signals'
import { connection } from '../offline/connection.ts'
import { forgetCrossing, keepCrossings, keptList, outboxCount } from '../offline/kept-crossings.ts'
import type { JsonObject } from '../state/json.ts'
import { deleteCrossing, fetchList, restoreCrossing, type Sent } from './crossing-requests.ts'
import { type Row, rowOfListed, rowsOfCopies } from './listed-rows.ts'
import { newId } from './new-id.ts'
import { SAVED } from './saved-words.ts'
import { flush, sendOrQueue } from './send-or-queue.ts'

type Listing =
  | { readonly state: 'loading' }
  | { readonly state: 'here'; readonly rows: readonly Row[] }
  /** No connection: what this browser keeps. */
  | { readonly state: 'kept'; readonly rows: readonly Row[] }
  | { readonly state: 'trouble' }

/** Deleted on this page, and can be brought back. */
export type Deleted = { readonly id: string; readonly version: number; readonly name: string }

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

/** The list as the server has it, else as this browser keeps it, and what can be done to its rows. */
export function createCrossingList(): CrossingList {
  const listing = signal<Listing>({ state: 'loading' })
  const deleted = signal<readonly Deleted[]>([])
  const said = signal('')

  const load = async () => {
    await flush()
    const answer = await fetchList()
    if (answer.state === 'answered') {
      listing.value = { state: 'here', rows: answer.items.map(rowOfListed) }
      void keepCrossings(
        answer.items.map(({ id, version, demo, document }) => ({ id, version, demo, document })),
      )
    } else if (answer.state === 'unreachable') {
      listing.value = { state: 'kept', rows: await rowsOfCopies(await keptList()) }
    } else listing.value = { state: 'trouble' }
  }

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
      if (version === null) {
        said.value = SAVED.notDone.unreachable(name)
        return false
      }
      const sent = await deleteCrossing({ id, version })
      said.value = sent.state === 'done' ? '' : troubleWords(sent, name)
      if (sent.state === 'done') {
        deleted.value = [...deleted.value, { id, version: sent.kept.version, name }]
        void forgetCrossing(id)
      }
      if (sent.state !== 'unreachable') await load()
      return sent.state === 'done'
    },
    async undo(entry) {
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
