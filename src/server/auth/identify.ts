import type { Context } from 'hono'
import type { Access } from '../../store/access/access.ts'
import type { AppEnv } from '../api-error.ts'
import type { Asker } from './asker.ts'
import { type CookieKind, sessionCookie } from './cookie.ts'
import { roleNamed } from './roles.ts'
import { secretHash } from './secrets.ts'
import { isOver, isUseNews } from './session-life.ts'

const NOBODY: Asker = { kind: 'nobody' }
const BEARER = /^Bearer +(\S{1,200})$/i

async function byBearer({ tokens }: Access, token: string, now: Date): Promise<Asker> {
  const found = await tokens.byToken(secretHash(token))
  const role = found === null ? null : roleNamed(found.role)
  if (found === null || role === null) return NOBODY
  if (isUseNews(found.usedAt, now)) await tokens.touch(found.id, now)
  return { kind: 'token', id: found.id, name: found.name, role }
}

async function bySession({ sessions, accounts }: Access, token: string, now: Date, from: string) {
  const tokenHash = secretHash(token)
  const session = await sessions.byToken(tokenHash)
  if (session === null) return NOBODY
  if (isOver(session, now)) {
    await sessions.end(session.account, session.id)
    return NOBODY
  }
  const account = await accounts.find(session.account)
  const named = account === null ? null : roleNamed(account.role)
  if (account === null || named === null || !account.isActive) return NOBODY
  if (isUseNews(session.seenAt, now)) await sessions.touch(session.id, now, from)
  const role = named === 'owner' && !session.hasSecondFactor ? 'estimator' : named
  return { kind: 'account', account, session, tokenHash, role } satisfies Asker
}

/** Who asks, by a script's token or by the session of a browser. A header that names a token stands for itself alone. */
export function identify(
  c: Context<AppEnv>,
  access: Access,
  how: { readonly now: Date; readonly cookies: CookieKind },
): Promise<Asker> {
  const header = c.req.header('Authorization')
  if (header !== undefined) {
    const token = BEARER.exec(header.trim())?.[1]
    return token === undefined ? Promise.resolve(NOBODY) : byBearer(access, token, how.now)
  }
  const cookie = sessionCookie(c, how.cookies)
  if (cookie === undefined || cookie.length > 200) return Promise.resolve(NOBODY)
  return bySession(access, cookie, how.now, c.get('from'))
}
