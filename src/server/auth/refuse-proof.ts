import type { Context } from 'hono'
import { type AppEnv, refuse } from '../api-error.ts'
import type { Proved } from './prove.ts'

/** The answer to a try that was none: the same whether the name, the password or the account was wrong. */
export function refuseProof(c: Context<AppEnv>, proved: Exclude<Proved, { readonly outcome: 'done' }>) {
  switch (proved.outcome) {
    case 'wait':
      c.header('Retry-After', String(Math.ceil(proved.waitMs / 1000)))
      return refuse(c, 429, 'too-many-tries')
    case 'factor-wanted':
      return refuse(c, 401, 'code-wanted')
    case 'factor-wrong':
      return refuse(c, 401, 'wrong-code')
    case 'wrong':
      return refuse(c, 401, 'wrong-credentials')
  }
}
