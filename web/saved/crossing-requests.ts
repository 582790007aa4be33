import type { z } from 'zod'
import {
  apiError,
  changeConflict,
  crossingPage,
  type KeptCrossing,
  keptCrossing,
  type ListedCrossing,
} from '../../shared/contracts/kept-crossing.ts'
import { ACCESS } from '../access/access-words.ts'
import { noteSignedOut } from '../access/session-state.ts'
import { noteReached } from '../offline/connection.ts'
import type { JsonObject } from '../state/json.ts'
import { language } from '../state/language-choice.ts'

export type AnsweredIssue = z.infer<typeof apiError>['issues'][number]

/** What came of asking the server for a change, or for one crossing. */
export type Sent =
  | { readonly state: 'done'; readonly kept: KeptCrossing }
  /** Something else is there than the asker had seen. */
  | { readonly state: 'conflict'; readonly current: KeptCrossing }
  | { readonly state: 'refused'; readonly issues: readonly AnsweredIssue[] }
  | { readonly state: 'absent' }
  /** Nobody answered: no signal, or no server. */
  | { readonly state: 'unreachable' }
  /** Somebody answered, but not as agreed: the server is in trouble. */
  | { readonly state: 'trouble' }

/** One version of one crossing, as a change names it. */
export type VersionOf = { readonly id: string; readonly version: number }

export type Change = {
  readonly id: string
  readonly document: JsonObject
  /** null: it is new. */
  readonly from: number | null
  /** The same change sent twice is made once. */
  readonly requestKey: string
}

/** A server that says nothing for so long is as good as none. */
const PATIENCE_MS = 20_000
const PAGE_SIZE = 500
/** Guards against an answer that names the same page for ever. */
const MOST_PAGES = 200

type Answer = { readonly status: number; readonly body: unknown }

/** null when nobody answered. */
async function ask(path: string, init: RequestInit = {}): Promise<Answer | null> {
  try {
    const answer = await fetch(path, { ...init, signal: AbortSignal.timeout(PATIENCE_MS) })
    const text = await answer.text()
    noteReached(true)
    // Nobody is signed in: as good as no answer, so what is sent waits until somebody is.
    if (answer.status === 401) {
      noteSignedOut()
      return null
    }
    return { status: answer.status, body: parsedOrNull(text) }
  } catch (error) {
    // TypeError without a connection; a DOMException when patience ran out.
    if (!(error instanceof TypeError || error instanceof DOMException)) throw error
    noteReached(false)
    return null
  }
}

function parsedOrNull(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch (error) {
    if (error instanceof SyntaxError) return null
    throw error
  }
}

const NOT_ALLOWED = (): AnsweredIssue => ({
  path: '',
  code: 'not-allowed',
  text: ACCESS.refused['not-allowed'] ?? '',
})

function sentFrom(answer: Answer | null): Sent {
  if (answer === null) return { state: 'unreachable' }
  const { status, body } = answer
  if (status === 200 || status === 201) {
    const kept = keptCrossing.safeParse(body)
    return kept.success ? { state: 'done', kept: kept.data } : { state: 'trouble' }
  }
  // 428 comes with `current` when what was thought to be new is there already.
  if (status === 409 || status === 428) {
    const conflict = changeConflict.safeParse(body)
    return conflict.success ? { state: 'conflict', current: conflict.data.current } : { state: 'trouble' }
  }
  if (status === 403) return { state: 'refused', issues: [NOT_ALLOWED()] }
  if (status === 404 || status === 410) return { state: 'absent' }
  const error = apiError.safeParse(body)
  const isRefusal = status === 400 || status === 413 || status === 415 || status === 422
  return isRefusal && error.success && error.data.issues.length > 0
    ? { state: 'refused', issues: error.data.issues }
    : { state: 'trouble' }
}

const addressOf = (id: string): string => `/api/crossings/${encodeURIComponent(id)}`
const jsonHeaders = () => ({ Accept: 'application/json', 'Accept-Language': language.value })

const named = (version: number | null): Record<string, string> =>
  version === null ? {} : { 'If-Match': `"${version}"` }

export const fetchCrossing = async (id: string): Promise<Sent> =>
  sentFrom(await ask(addressOf(id), { headers: jsonHeaders(), cache: 'no-store' }))

export const sendCrossing = async ({ id, document, from, requestKey }: Change): Promise<Sent> =>
  sentFrom(
    await ask(addressOf(id), {
      method: 'PUT',
      headers: {
        ...jsonHeaders(),
        'Content-Type': 'application/json',
        'Idempotency-Key': requestKey,
        ...named(from),
      },
      body: JSON.stringify(document),
    }),
  )

/** A deletion is a change like any other: from the version last seen, and done once however often it is sent. */
export const deleteCrossing = async ({ id, version }: VersionOf, requestKey: string): Promise<Sent> =>
  sentFrom(
    await ask(addressOf(id), {
      method: 'DELETE',
      headers: { ...jsonHeaders(), 'Idempotency-Key': requestKey, ...named(version) },
    }),
  )

export const restoreCrossing = async ({ id, version }: VersionOf): Promise<Sent> =>
  sentFrom(
    await ask(`${addressOf(id)}/restore`, {
      method: 'POST',
      headers: { ...jsonHeaders(), ...named(version) },
    }),
  )

export type ListAnswer =
  | { readonly state: 'answered'; readonly items: readonly ListedCrossing[] }
  | { readonly state: 'unreachable' | 'trouble' }

/** Every crossing that is kept, page by page. */
export async function fetchList(): Promise<ListAnswer> {
  const items: ListedCrossing[] = []
  let after: string | null = null
  for (let pages = 0; pages < MOST_PAGES; pages++) {
    const query: string = after === null ? '' : `&after=${encodeURIComponent(after)}`
    const answer = await ask(`/api/crossings?limit=${PAGE_SIZE}${query}`, {
      headers: jsonHeaders(),
      cache: 'no-store',
    })
    if (answer === null) return { state: 'unreachable' }
    const page = crossingPage.safeParse(answer.body)
    if (answer.status !== 200 || !page.success) return { state: 'trouble' }
    items.push(...page.data.items)
    after = page.data.next
    if (after === null) break
  }
  return { state: 'answered', items }
}
