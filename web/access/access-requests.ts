import { z } from 'zod'
import { sessionAnswer } from '../../shared/contracts/access.ts'
import { noteReached } from '../offline/connection.ts'
import { language } from '../state/language-choice.ts'
import { noteSession, noteSignedOut } from './session-state.ts'

/** What came of asking: what was asked for, or a code that says why not. */
export type Answered<Value> =
  | { readonly state: 'done'; readonly value: Value }
  | { readonly state: 'refused'; readonly code: string; readonly waitS: number; readonly text: string }
  | { readonly state: 'unreachable' }

type Method = 'GET' | 'POST' | 'PUT' | 'DELETE'
type Ask = {
  readonly body?: unknown
  /** The version the change was made from. */
  readonly version?: number
}

const PATIENCE_MS = 20_000
const refusalBody = z.object({
  code: z.string(),
  issues: z.array(z.object({ text: z.string() })).default([]),
})

/** Answers of these are about what was typed, not about a session that has ended. */
const ABOUT_WHAT_WAS_TYPED = ['wrong-credentials', 'wrong-code', 'code-wanted']

const headersOf = ({ body, version }: Ask): Record<string, string> => ({
  Accept: 'application/json',
  'Accept-Language': language.value,
  ...(body === undefined ? {} : { 'Content-Type': 'application/json' }),
  ...(version === undefined ? {} : { 'If-Match': `"${version}"` }),
})

async function fetched(method: Method, path: string, ask: Ask) {
  try {
    const answer = await fetch(path, {
      method,
      headers: headersOf(ask),
      cache: 'no-store',
      signal: AbortSignal.timeout(PATIENCE_MS),
      ...(ask.body === undefined ? {} : { body: JSON.stringify(ask.body) }),
    })
    const body: unknown = await answer.json()
    noteReached(true)
    return { answer, body }
  } catch (error) {
    // TypeError: no connection. DOMException: patience ran out. SyntaxError: somebody else answered.
    if (error instanceof SyntaxError) return null
    if (!(error instanceof TypeError || error instanceof DOMException)) throw error
    noteReached(false)
    return null
  }
}

/** Asks the server about access, and reads its answer by a schema. */
export async function askAccess<Schema extends z.ZodType>(
  method: Method,
  path: string,
  schema: Schema,
  ask: Ask = {},
): Promise<Answered<z.output<Schema>>> {
  const found = await fetched(method, path, ask)
  if (found === null) return { state: 'unreachable' }
  const { answer, body } = found
  if (answer.ok) {
    const parsed = schema.safeParse(body)
    return parsed.success ? { state: 'done', value: parsed.data } : { state: 'unreachable' }
  }
  const refusal = refusalBody.safeParse(body)
  const code = refusal.success ? refusal.data.code : ''
  if (answer.status === 401 && !ABOUT_WHAT_WAS_TYPED.includes(code)) noteSignedOut()
  const text = refusal.success ? refusal.data.issues.map((issue) => issue.text).join(' ') : ''
  return { state: 'refused', code, waitS: Number(answer.headers.get('Retry-After') ?? 0), text }
}

/** An answer nobody reads more of than that it came. */
export const DONE = z.looseObject({})

/** Asks who is signed in, and lets the whole page know. */
export async function askSession(): Promise<void> {
  const answer = await askAccess('GET', '/api/session', sessionAnswer)
  if (answer.state === 'done') noteSession(answer.value)
}

/** A change of the session; what the server says of it afterwards is known to the whole page. */
export async function changeSession(
  method: 'POST' | 'DELETE',
  path: string,
  body?: unknown,
): Promise<Answered<z.output<typeof sessionAnswer>>> {
  const answer = await askAccess(method, path, sessionAnswer, body === undefined ? {} : { body })
  if (answer.state === 'done') noteSession(answer.value)
  return answer
}
