import type { JsonObject } from '../state/json.ts'
import type { Outbox } from './outbox.ts'

/** A crossing as this browser keeps it. */
export type CrossingCopy = {
  readonly id: string
  /** The server's version of it; null while only this browser has it. */
  readonly version: number | null
  readonly demo: boolean
  readonly document: JsonObject
  readonly keptAtMs: number
}

/** What this browser keeps. Every call may reject with a DOMException: private windows, a full disk. */
export type BrowserStore = {
  putCopies(copies: readonly CrossingCopy[]): Promise<void>
  copy(id: string): Promise<CrossingCopy | null>
  copies(): Promise<readonly CrossingCopy[]>
  removeCopy(id: string): Promise<void>
  /** One read and one write in one transaction, so that two tabs do not lose each other's changes. */
  changeOutbox(change: (outbox: Outbox) => Outbox): Promise<Outbox>
}

const NAME = 'underlane'
const FORMAT = 1
const COPIES = 'crossings'
const OUTBOX = 'outbox'
const WHOLE = 'whole'

const answered = <Value>(request: IDBRequest<Value>): Promise<Value> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result)
    request.onerror = () => reject(request.error)
  })

const finished = (transaction: IDBTransaction): Promise<void> =>
  new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve()
    // A full disk aborts without an error on any request.
    transaction.onabort = () => reject(transaction.error ?? new DOMException('aborted', 'AbortError'))
  })

function opened(onGone: () => void): Promise<IDBDatabase> {
  // Some private windows have no such thing, others refuse when asked.
  if (typeof indexedDB === 'undefined') return Promise.reject(new DOMException('none', 'NotSupportedError'))
  const request = indexedDB.open(NAME, FORMAT)
  request.onupgradeneeded = () => {
    request.result.createObjectStore(COPIES, { keyPath: 'id' })
    request.result.createObjectStore(OUTBOX)
  }
  return answered(request).then((database) => {
    // A newer page in another tab wants to change the format: let go, and open again when next needed.
    database.onversionchange = () => {
      database.close()
      onGone()
    }
    database.onclose = onGone
    return database
  })
}

/** IndexedDB, opened at the first use. */
export function openBrowserStore(): BrowserStore {
  let open: Promise<IDBDatabase> | null = null
  const database = () => {
    open ??= opened(() => {
      open = null
    }).catch((error) => {
      open = null
      throw error
    })
    return open
  }
  const copiesOf = async (mode: IDBTransactionMode) => (await database()).transaction(COPIES, mode)
  return {
    async putCopies(copies) {
      const transaction = await copiesOf('readwrite')
      for (const copy of copies) transaction.objectStore(COPIES).put(copy)
      await finished(transaction)
    },
    async copy(id) {
      const found: CrossingCopy | undefined = await answered(
        (await copiesOf('readonly')).objectStore(COPIES).get(id),
      )
      return found ?? null
    },
    async copies() {
      return answered<CrossingCopy[]>((await copiesOf('readonly')).objectStore(COPIES).getAll())
    },
    async removeCopy(id) {
      const transaction = await copiesOf('readwrite')
      transaction.objectStore(COPIES).delete(id)
      await finished(transaction)
    },
    async changeOutbox(change) {
      const transaction = (await database()).transaction(OUTBOX, 'readwrite')
      const done = finished(transaction)
      const store = transaction.objectStore(OUTBOX)
      const before: Outbox = (await answered<Outbox | undefined>(store.get(WHOLE))) ?? []
      const after = change(before)
      if (after !== before) store.put(after, WHOLE)
      await done
      return after
    },
  }
}
