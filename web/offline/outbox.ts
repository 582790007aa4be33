import type { JsonObject } from '../state/json.ts'

/** One change of a kept crossing, as whoever made it knows it. */
export type Change = {
  readonly id: string
  readonly kind: 'put' | 'delete'
  /** The version it was made from, for If-Match; null creates. */
  readonly baseVersion: number | null
  /** What is put; null when deleting. */
  readonly document: JsonObject | null
  /** Sent as Idempotency-Key: asked twice, done once. */
  readonly key: string
  /** True when it has been sent and no answer came: the server may hold it already. */
  readonly wasSent: boolean
  /** Whoever was signed in; null or absent: nobody who is known. */
  readonly by?: string | null
}

/** waiting: never sent. sent: may have arrived. conflict and refused wait for a person. */
export type QueuedChange = Omit<Change, 'wasSent'> & {
  readonly state: 'waiting' | 'sent' | 'conflict' | 'refused'
  readonly queuedAtMs: number
}

export type Outbox = readonly QueuedChange[]

/** What came of sending one. `version` is the crossing's new one; null when the answer names none. */
export type Sent =
  | { readonly state: 'done'; readonly version: number | null }
  | { readonly state: 'unreachable' }
  | { readonly state: 'conflict' }
  | { readonly state: 'refused' }

export type Send = (change: QueuedChange) => Promise<Sent>

const isStuck = ({ state }: QueuedChange): boolean => state === 'conflict' || state === 'refused'

const madeBy = ({ by }: { readonly by?: string | null }): string | null => by ?? null

/** May it go now, by whoever is signed in? A change goes under the name of whoever made it, or waits for them. */
export type MayGo = (change: QueuedChange) => boolean

export const ofAnybody: MayGo = () => true

/**
 * Takes one more change in. A later change of the same crossing stands for an earlier one that never left; one that may
 * have arrived stays, since only its own key tells the server that both are the same. Those that wait for a person are
 * answered by the new change, which is made from what the person saw.
 */
export function queued(outbox: Outbox, change: Change, nowMs: number): Outbox {
  const { wasSent, ...asked } = change
  if (outbox.some(({ key }) => key === change.key)) return outbox
  const others = outbox.filter((each) => each.id !== change.id || !isStuck(each))
  const entry: QueuedChange = { ...asked, state: wasSent ? 'sent' : 'waiting', queuedAtMs: nowMs }
  const last = others.findLast(({ id }) => id === change.id)
  // A deletion stands behind a change that waits, not for it: taken back, the change is still there.
  const isMeant = last?.state === 'waiting' && last.kind === change.kind && madeBy(last) === madeBy(change)
  if (!isMeant) return [...others, entry]
  return others.map((each) => (each === last ? { ...entry, baseVersion: last.baseVersion } : each))
}

const without = (outbox: Outbox, key: string): Outbox => outbox.filter((each) => each.key !== key)

/** The oldest change that can go: nothing goes past an earlier change of its crossing that waits for a person. */
export function nextToSend(outbox: Outbox, mayGo: MayGo = ofAnybody): QueuedChange | null {
  const held = new Set<string>()
  for (const each of outbox) {
    if (held.has(each.id)) continue
    if (!isStuck(each) && mayGo(each)) return each
    held.add(each.id)
  }
  return null
}

export const inState = (outbox: Outbox, key: string, state: QueuedChange['state']): Outbox =>
  outbox.map((each) => (each.key === key ? { ...each, state } : each))

/** The server has it: it leaves, and later changes of the same crossing are made from the version it became. */
export function settled(outbox: Outbox, key: string, version: number | null): Outbox {
  const done = outbox.find((each) => each.key === key)
  return without(outbox, key).map((each) =>
    each.id === done?.id && version !== null ? { ...each, baseVersion: version } : each,
  )
}

/** Reads and changes the outbox in one step that nothing comes between. */
export type ChangeOutbox = (change: (outbox: Outbox) => Outbox) => Promise<Outbox>

/**
 * Sends in order until all are gone, the server cannot be reached, or only what waits for a person is left. A change is
 * marked before it is sent and leaves only when the server has said that it holds it.
 */
export async function sendAll(
  changeOutbox: ChangeOutbox,
  send: Send,
  mayGo: MayGo = ofAnybody,
): Promise<Outbox> {
  let outbox = await changeOutbox((now) => now)
  for (;;) {
    const next = nextToSend(outbox, mayGo)
    if (next === null) return outbox
    const { key } = next
    outbox = await changeOutbox((now) => inState(now, key, 'sent'))
    const asItIs = outbox.find((each) => each.key === key)
    // A newer change took its place meanwhile.
    if (asItIs === undefined) continue
    const answer = await send(asItIs)
    if (answer.state === 'unreachable') return outbox
    outbox = await changeOutbox((now) =>
      answer.state === 'done' ? settled(now, key, answer.version) : inState(now, key, answer.state),
    )
  }
}
