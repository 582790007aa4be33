import { goesNow, worksAs } from '../access/session-state.ts'
import { flushOutbox, forgetCrossing, keepCrossing, queueChange } from '../offline/kept-crossings.ts'
import type { Outbox, QueuedChange, Send } from '../offline/outbox.ts'
import { type Change, deleteCrossing, type Sent, sendCrossing } from './crossing-requests.ts'

/** Waiting: it goes when the server can be reached. `isKept` false: only while this page stays open. */
export type SentOrWaiting =
  | Exclude<Sent, { readonly state: 'unreachable' }>
  | { readonly state: 'waiting'; readonly isKept: boolean }

/** Those who have sent something and want to know what came of it. */
const listeners = new Map<string, (sent: Sent) => void>()

export function whenSent(requestKey: string, listener: (sent: Sent) => void): () => void {
  listeners.set(requestKey, listener)
  return () => void listeners.delete(requestKey)
}

const sendOne = ({ id, kind, document, baseVersion, key }: QueuedChange): Promise<Sent> => {
  if (kind === 'put' && document !== null) {
    return sendCrossing({ id, document, from: baseVersion, requestKey: key })
  }
  return deleteCrossing({ id, version: baseVersion ?? 1 }, key)
}

/** Sends one change that waited, and tells the page that waits with it. */
const sendQueued: Send = async (change) => {
  const sent = await sendOne(change)
  if (sent.state === 'unreachable' || sent.state === 'trouble') return { state: 'unreachable' }
  if (change.kind === 'delete') {
    if (sent.state === 'done' || sent.state === 'absent') await forgetCrossing(change.id)
  } else if (sent.state === 'done') await keepAnswered(sent)
  listeners.get(change.key)?.(sent)
  listeners.delete(change.key)
  if (sent.state === 'done') return { state: 'done', version: sent.kept.version }
  // Somebody else has taken it away: what was wanted is so.
  if (change.kind === 'delete' && sent.state === 'absent') return { state: 'done', version: null }
  return { state: sent.state === 'refused' ? 'refused' : 'conflict' }
}

export const flush = (): Promise<Outbox> => flushOutbox(sendQueued, ({ by }) => goesNow(by ?? null))

/** Whether changes of this crossing are left waiting after all that could go has gone. */
export const flushFor = async (id: string): Promise<boolean> =>
  (await flush()).some(
    (change) => change.id === id && (change.state === 'waiting' || change.state === 'sent'),
  )

const keepAnswered = ({ kept }: Extract<Sent, { readonly state: 'done' }>): Promise<boolean> =>
  keepCrossing({ id: kept.id, version: kept.version, demo: kept.demo, document: kept.document })

async function queue({ id, document, from, requestKey }: Change, wasSent: boolean): Promise<SentOrWaiting> {
  const isKept = await queueChange({
    id,
    kind: 'put',
    baseVersion: from,
    document,
    key: requestKey,
    wasSent,
    by: worksAs(),
  })
  if (isKept) await keepCrossing({ id, version: from, demo: false, document })
  return { state: 'waiting', isKept }
}

/** Sends a change now, or takes it in to be sent when the server can be reached. */
export async function sendOrQueue(change: Change, isBehindOthers: boolean): Promise<SentOrWaiting> {
  // Without a network nothing leaves, so the next save may stand for this one.
  if (isBehindOthers || !navigator.onLine) return queue(change, false)
  const sent = await sendCrossing(change)
  if (sent.state === 'unreachable') return queue(change, true)
  if (sent.state === 'done') await keepAnswered(sent)
  return sent
}

/** As known where it is taken away; `version` null while only this browser has it. */
export type ToRemove = { readonly id: string; readonly version: number | null; readonly requestKey: string }

/** Takes a crossing away now, or when the server can be reached; until then this browser keeps its copy, for the way back. */
export async function removeOrQueue({ id, version, requestKey }: ToRemove): Promise<SentOrWaiting> {
  const isBehindOthers = await flushFor(id)
  const wait = async (wasSent: boolean): Promise<SentOrWaiting> => ({
    state: 'waiting',
    isKept: await queueChange({
      id,
      kind: 'delete',
      baseVersion: version,
      document: null,
      key: requestKey,
      wasSent,
      by: worksAs(),
    }),
  })
  if (version === null || isBehindOthers || !navigator.onLine) return wait(false)
  const sent = await deleteCrossing({ id, version }, requestKey)
  if (sent.state === 'unreachable') return wait(true)
  if (sent.state === 'done') await forgetCrossing(id)
  return sent
}
