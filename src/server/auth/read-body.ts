import type { Context } from 'hono'
import type { z } from 'zod'
import { parseWith } from '../../../shared/contracts/zod-issues.ts'
import type { Issue } from '../../../shared/core/outcome.ts'
import { type AppEnv, refuse } from '../api-error.ts'
import { jsonBody } from '../json-body.ts'

const SECRETS = ['password', 'current', 'code', 'secret', 'token']

/** An answer never repeats a secret, however wrong it was. */
function withoutSecrets(issue: Issue): Issue {
  if (!SECRETS.includes(issue.path)) return issue
  const { given: _secret, ...rest } = issue
  return rest
}

/** The body as a schema reads it, or the answer to give instead. */
export async function readBody<Schema extends z.ZodType>(
  c: Context<AppEnv>,
  schema: Schema,
): Promise<
  { readonly ok: true; readonly value: z.output<Schema> } | { readonly ok: false; readonly answer: Response }
> {
  const body = await jsonBody(c)
  if (!body.ok) return body
  const parsed = parseWith(schema, body.value)
  if (parsed.ok) return { ok: true, value: parsed.value }
  return { ok: false, answer: refuse(c, 422, 'refused', parsed.issues.map(withoutSecrets)) }
}
