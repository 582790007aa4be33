import { z } from 'zod'
import { noteReached } from '../offline/connection.ts'
import type { JsonObject } from '../state/json.ts'

/** A server that says nothing for so long is as good as none. */
const PATIENCE_MS = 20_000
/** Guards against an answer that names the same page for ever. */
const MOST_PAGES = 40

/** As it was parsed from JSON, whatever its keys. */
export const jsonObject = z.custom<JsonObject>(
  (value) => value !== null && typeof value === 'object' && !Array.isArray(value),
)

const entry = z.object({
  id: z.string(),
  version: z.number(),
  demo: z.boolean(),
  document: jsonObject,
})
const page = z.object({ items: z.array(entry), next: z.string().nullable() })
/** What of a kept crossing tells how a bore wears a tool. */
const planned = z.object({
  result: z
    .looseObject({
      bore: z.looseObject({ lengthM: z.number() }),
      run: z.looseObject({
        advanceMPerS: z.looseObject({ p50: z.number() }),
        hammerTimeS: z.looseObject({ p50: z.number() }).nullable(),
        giveUpTimeS: z.number(),
        blowRateHz: z.number(),
      }),
    })
    .nullable()
    .catch(null),
  document: jsonObject,
})

export type Entry = {
  readonly id: string
  readonly version: number
  readonly demo: boolean
  readonly document: JsonObject
}
export type PlannedCrossing = z.infer<typeof planned>

/** null when nobody answered. */
async function ask(path: string, init: RequestInit = {}): Promise<Response | null> {
  try {
    const answer = await fetch(path, { ...init, signal: AbortSignal.timeout(PATIENCE_MS) })
    noteReached(true)
    return answer
  } catch (error) {
    // TypeError without a connection; a DOMException when patience ran out.
    if (!(error instanceof TypeError || error instanceof DOMException)) throw error
    noteReached(false)
    return null
  }
}

const bodyOf = (answer: Response): Promise<unknown> => answer.json().catch(() => null)

/** All of a noun; null when the server cannot be heard or answers otherwise than agreed. */
export async function fetchAll(noun: string): Promise<readonly Entry[] | null> {
  const found: Entry[] = []
  let after = ''
  for (let pages = 0; pages < MOST_PAGES; pages++) {
    const answer = await ask(`/api/${noun}?limit=500${after}`, { cache: 'no-store' })
    if (answer === null || !answer.ok) return null
    const read = page.safeParse(await bodyOf(answer))
    if (!read.success) return null
    found.push(...read.data.items)
    if (read.data.next === null) break
    after = `&after=${encodeURIComponent(read.data.next)}`
  }
  return found
}

export async function fetchPlanned(id: string): Promise<PlannedCrossing | null> {
  const answer = await ask(`/api/crossings/${encodeURIComponent(id)}`, { cache: 'no-store' })
  if (answer === null || !answer.ok) return null
  const read = planned.safeParse(await bodyOf(answer))
  return read.success ? read.data : null
}

export type Put = {
  readonly noun: string
  readonly id: string
  /** null: it is new. */
  readonly version: number | null
  readonly document: JsonObject
}

/** `refused`: it was answered, and not taken. */
export async function put({ noun, id, version, document }: Put): Promise<'done' | 'refused' | 'unreachable'> {
  const answer = await ask(`/api/${noun}/${id}`, {
    method: 'PUT',
    headers: {
      Accept: 'application/json',
      'Content-Type': 'application/json',
      ...(version === null ? {} : { 'If-Match': `"${version}"` }),
    },
    body: JSON.stringify(document),
  })
  if (answer === null || answer.status >= 500) return 'unreachable'
  return answer.ok ? 'done' : 'refused'
}
