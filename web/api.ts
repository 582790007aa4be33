import { z } from 'zod'
import { noteSignedOut } from './access/session-state.ts'
import { noteReached } from './offline/connection.ts'
import type { JsonObject } from './state/json.ts'

const page = z.object({
  items: z.array(
    z.object({
      id: z.string(),
      version: z.number(),
      demo: z.boolean(),
      document: z.record(z.string(), z.json()),
    }),
  ),
  next: z.string().nullable(),
})

export type KeptCrossing = {
  readonly id: string
  readonly name: string
  readonly version: number | null
  readonly demo: boolean
  readonly document: JsonObject
}

/** What came of asking the server. */
export type Asked<Value> =
  | { readonly state: 'answered'; readonly value: Value }
  | { readonly state: 'failed' }

/** A page names at most this many; more than a few pages are for a list of their own. */
const MOST_PAGES = 10

async function askJson(path: string): Promise<unknown> {
  const answer = await fetch(path, { headers: { Accept: 'application/json' } })
  noteReached(true)
  if (answer.status === 401) noteSignedOut()
  return answer.ok ? answer.json() : null
}

/** The crossings the server keeps. No signal, a server gone or an answer that is not ours is one and the same: failed. */
export async function listCrossings(): Promise<Asked<readonly KeptCrossing[]>> {
  const found: KeptCrossing[] = []
  let after: string | null = null
  try {
    for (let pages = 0; pages < MOST_PAGES; pages++) {
      const query: string = after === null ? '' : `?after=${encodeURIComponent(after)}`
      const parsed = page.safeParse(await askJson(`/api/crossings${query}`))
      if (!parsed.success) return { state: 'failed' }
      for (const each of parsed.data.items) {
        const { name } = each.document
        found.push({ ...each, name: typeof name === 'string' ? name : each.id })
      }
      after = parsed.data.next
      if (after === null) break
    }
  } catch (error) {
    // fetch throws TypeError without a connection; json() throws SyntaxError for what is not JSON.
    if (error instanceof TypeError) noteReached(false)
    if (error instanceof TypeError || error instanceof SyntaxError) return { state: 'failed' }
    throw error
  }
  return { state: 'answered', value: found.sort((a, b) => a.name.localeCompare(b.name)) }
}
