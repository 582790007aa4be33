import { randomUUID } from 'node:crypto'
import type { Context } from 'hono'
import type { SignedIn } from '../../../shared/contracts/access.ts'
import type { Access } from '../../store/access/access.ts'
import type { Account } from '../../store/access/accounts.ts'
import type { AppEnv } from '../api-error.ts'
import { type CookieKind, giveSessionCookie, sessionCookie } from './cookie.ts'
import { deviceName } from './device-name.ts'
import { roleNamed } from './roles.ts'
import { newSessionToken, secretHash } from './secrets.ts'
import { overBefore } from './session-life.ts'
import { forgottenBefore } from './tries.ts'

export type SessionWorld = {
  readonly access: Access
  readonly now: () => Date
  readonly cookies: CookieKind
}

/** Ends the session the browser came with, whoever's it is: no token lives on past a sign-in or a new power. */
export async function endPresented(c: Context<AppEnv>, { access, cookies }: SessionWorld): Promise<void> {
  const presented = sessionCookie(c, cookies)
  const session = presented === undefined ? null : await access.sessions.byToken(secretHash(presented))
  if (session !== null) await access.sessions.end(session.account, session.id)
}

/** Opens a session under a new token and gives it to the browser; the one it came with is over. */
export async function openSession(
  c: Context<AppEnv>,
  world: SessionWorld,
  account: Account,
  hasSecondFactor: boolean,
): Promise<void> {
  const { access, cookies } = world
  await endPresented(c, world)
  const now = world.now()
  await access.sessions.forget(overBefore(now))
  await access.failedTries.forget(forgottenBefore(now))
  const token = newSessionToken()
  const at = now.toISOString()
  const session = {
    id: randomUUID(),
    account: account.id,
    device: deviceName(c.req.header('User-Agent')),
    madeAt: at,
    seenAt: at,
    seenFrom: c.get('from'),
    hasSecondFactor,
  }
  await access.sessions.open(session, secretHash(token))
  giveSessionCookie(c, cookies, token)
}

/** An account as its bearer is told of it. */
export async function signedInAnswer(
  { accounts }: Access,
  account: Account,
  hasSecondFactor: boolean,
): Promise<SignedIn> {
  const role = roleNamed(account.role) ?? 'viewer'
  return {
    id: account.id,
    login: account.login,
    name: account.name,
    role,
    mayDo: role === 'owner' && !hasSecondFactor ? 'estimator' : role,
    hasSecondFactor: account.totpSecret !== null,
    recoveryCodesLeft: await accounts.recoveryCodesLeft(account.id),
  }
}
