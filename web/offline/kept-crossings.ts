import { type ReadonlySignal, signal } from '@preact/signals'
import { type BrowserStore, type CrossingCopy, openBrowserStore } from './browser-store.ts'
import {
  type Change,
  type MayGo,
  type Outbox,
  ofAnybody,
  type QueuedChange,
  queued,
  type Send,
  sendAll,
} from './outbox.ts'

export type CrossingToKeep = Omit<CrossingCopy, 'keptAtMs'>

/** Why this browser does not keep what it should: it refuses to keep anything, or has no room left. */
export type KeepingTrouble = 'refused' | 'no-room'

export type KeptCrossings = {
  /** How many changes the server has not got. */
  readonly outboxCount: ReadonlySignal<number>
  /** Whose changes the server has not got, by the name they signed in with. */
  readonly waitingFor: ReadonlySignal<readonly string[]>
  /** Changes the server did not take, which wait for a person. */
  readonly stuckChanges: ReadonlySignal<readonly QueuedChange[]>
  readonly keepingTrouble: ReadonlySignal<KeepingTrouble | null>
  /** Seconds since the crossing was kept here; null when it is not. Reads signals: a component that shows it stays true. */
  ageOf(id: string): number | null
  /** Keeps one as it was opened or saved. False, with the reason in `keepingTrouble`, when the browser will not. */
  keepCrossing(crossing: CrossingToKeep): Promise<boolean>
  keepCrossings(crossings: readonly CrossingToKeep[]): Promise<boolean>
  forgetCrossing(id: string): Promise<boolean>
  keptCrossing(id: string): Promise<CrossingCopy | null>
  /** All that is kept, by name. */
  keptList(): Promise<readonly CrossingCopy[]>
  /** Takes a change in to be sent later. False: it is kept nowhere, and whoever made it must be told so. */
  queueChange(change: Change): Promise<boolean>
  /** Gives a change up, unsent. */
  dropChange(key: string): Promise<boolean>
  /** Sends what waits, in order; gives what is left. One at a time, over all tabs; a second call while one runs sends nothing. */
  flushOutbox(send: Send, mayGo?: MayGo): Promise<Outbox>
  /** Reads again what other tabs may have changed, and the time. */
  refresh(): Promise<void>
}

type Surroundings = {
  readonly now: () => number
  /** Runs the work unless the same is under way in any tab; null then. */
  readonly alone: (work: () => Promise<Outbox>) => Promise<Outbox | null>
}

const nameOf = ({ document, id }: CrossingCopy): string =>
  typeof document.name === 'string' ? document.name : id

/** What is shown of all this, as it changes. */
function createShown(now: () => number) {
  const outbox = signal<Outbox>([])
  const outboxCount = signal(0)
  const stuckChanges = signal<readonly QueuedChange[]>([])
  const waitingFor = signal<readonly string[]>([])
  const keepingTrouble = signal<KeepingTrouble | null>(null)
  const keptAtMs = signal<ReadonlyMap<string, number>>(new Map())
  const nowMs = signal(now())
  return {
    outbox,
    outboxCount,
    stuckChanges,
    waitingFor,
    keepingTrouble,
    keptAtMs,
    nowMs,
    showOutbox(found: Outbox) {
      outbox.value = found
      outboxCount.value = found.length
      waitingFor.value = [...new Set(found.flatMap(({ by }) => (by ? [by] : [])))].sort()
      stuckChanges.value = found.filter(({ state }) => state === 'conflict' || state === 'refused')
    },
    showAges(copies: readonly CrossingCopy[]) {
      nowMs.value = now()
      keptAtMs.value = new Map([
        ...keptAtMs.value,
        ...copies.map((copy) => [copy.id, copy.keptAtMs] as const),
      ])
    },
    /** What the browser refuses is a state that is shown, not an error. */
    async attempt<Value>(work: () => Promise<Value>, otherwise: Value): Promise<Value> {
      try {
        const value = await work()
        return value
      } catch (error) {
        if (!(error instanceof DOMException)) throw error
        keepingTrouble.value = error.name === 'QuotaExceededError' ? 'no-room' : 'refused'
        return otherwise
      }
    },
  }
}
type Shown = ReturnType<typeof createShown>

/** Crossings kept in this browser. */
function copiesOf(store: BrowserStore, shown: Shown, now: () => number) {
  const { attempt, showAges, keepingTrouble, keptAtMs, nowMs } = shown
  const keepCrossings = (crossings: readonly CrossingToKeep[]) =>
    attempt(async () => {
      const copies = crossings.map((each) => ({ ...each, keptAtMs: now() }))
      await store.putCopies(copies)
      showAges(copies)
      keepingTrouble.value = null
      return true
    }, false)
  return {
    ageOf(id: string) {
      const at = keptAtMs.value.get(id)
      return at === undefined ? null : Math.max(0, (nowMs.value - at) / 1000)
    },
    keepCrossing: (crossing: CrossingToKeep) => keepCrossings([crossing]),
    keepCrossings,
    forgetCrossing: (id: string) =>
      attempt(async () => {
        await store.removeCopy(id)
        keptAtMs.value = new Map([...keptAtMs.value].filter(([each]) => each !== id))
        return true
      }, false),
    keptCrossing: (id: string) =>
      attempt(async () => {
        const copy = await store.copy(id)
        if (copy !== null) showAges([copy])
        return copy
      }, null),
    keptList: () =>
      attempt<readonly CrossingCopy[]>(async () => {
        const copies = await store.copies()
        showAges(copies)
        return [...copies].sort((a, b) => nameOf(a).localeCompare(nameOf(b)))
      }, []),
  }
}

export function createKeptCrossings(store: BrowserStore, { now, alone }: Surroundings): KeptCrossings {
  const shown = createShown(now)
  const { attempt, outbox, keepingTrouble } = shown
  const change = async (edit: (outbox: Outbox) => Outbox) => {
    const after = await store.changeOutbox(edit)
    shown.showOutbox(after)
    return after
  }
  return {
    outboxCount: shown.outboxCount,
    stuckChanges: shown.stuckChanges,
    waitingFor: shown.waitingFor,
    keepingTrouble,
    ...copiesOf(store, shown, now),
    queueChange: (asked) =>
      attempt(async () => {
        await change((found) => queued(found, asked, now()))
        keepingTrouble.value = null
        return true
      }, false),
    dropChange: (key) =>
      attempt(async () => {
        await change((found) => found.filter((each) => each.key !== key))
        return true
      }, false),
    flushOutbox: async (send, mayGo = ofAnybody) =>
      (await attempt(() => alone(() => sendAll(change, send, mayGo)), null)) ?? outbox.value,
    refresh: async () => {
      shown.nowMs.value = now()
      await attempt(() => change((found) => found), [])
    },
  }
}

/** Over all tabs where the browser has locks, in this one otherwise; keys make a double send harmless. */
function aloneInAllTabs() {
  let isUnderWay = false
  return async (work: () => Promise<Outbox>): Promise<Outbox | null> => {
    if (isUnderWay) return null
    isUnderWay = true
    try {
      if (!('locks' in navigator)) return await work()
      return await navigator.locks.request('underlane-outbox', { ifAvailable: true }, async (lock) =>
        lock === null ? null : work(),
      )
    } finally {
      isUnderWay = false
    }
  }
}

const kept = createKeptCrossings(openBrowserStore(), { now: () => Date.now(), alone: aloneInAllTabs() })

export const {
  outboxCount,
  stuckChanges,
  waitingFor,
  keepingTrouble,
  ageOf,
  keepCrossing,
  keepCrossings,
  forgetCrossing,
  keptCrossing,
  keptList,
  queueChange,
  dropChange,
  flushOutbox,
  refresh,
} = kept

/** An idempotency key; also where there is no randomUUID, over plain http. */
export function newKey(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16))
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('')
}
