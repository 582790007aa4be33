import type { Context } from 'hono'
import type { Issue } from '../../shared/core/outcome.ts'
import type { Act } from '../store/noun.ts'
import type { AppEnv } from './api-error.ts'
import { whoOf } from './auth/asker.ts'

const KEY = /^[\x21-\x7e]{1,200}$/

type Asked = { readonly act: Act; readonly expectedVersion: number | null }

/** `"3"` as we give it in ETag; a proxy that compresses marks it weak. */
const VERSION = /^(?:W\/)?"?([1-9]\d{0,8})"?$/

/** Who asks for a change and from which version, or what is wrong with how it is asked. */
export function actOf(
  c: Context<AppEnv>,
  at: Date,
): { readonly ok: true; readonly asked: Asked } | { readonly ok: false; readonly issues: readonly Issue[] } {
  const issues: Issue[] = []
  const requestKey = c.req.header('Idempotency-Key') ?? null
  if (requestKey !== null && !KEY.test(requestKey)) {
    issues.push({
      path: 'Idempotency-Key',
      code: 'wrong-type',
      given: requestKey.slice(0, 64),
      accepted: '1 to 200 letters, digits and signs',
    })
  }
  const ifMatch = c.req.header('If-Match')
  const version = ifMatch === undefined ? undefined : VERSION.exec(ifMatch.trim())?.[1]
  if (ifMatch !== undefined && version === undefined) {
    issues.push({
      path: 'If-Match',
      code: 'wrong-type',
      given: ifMatch.slice(0, 64),
      accepted: 'the version as its ETag gave it, such as "3"',
    })
  }
  if (issues.length > 0) return { ok: false, issues }
  const expectedVersion = version === undefined ? null : Number(version)
  return {
    ok: true,
    asked: { act: { who: whoOf(c.get('asker')), at, from: c.get('from'), requestKey }, expectedVersion },
  }
}
