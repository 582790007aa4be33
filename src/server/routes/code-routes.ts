import { randomUUID } from 'node:crypto'
import { Hono } from 'hono'
import {
  type CodeLookAnswer,
  codeLookRequest,
  codeRequest,
  type SessionAnswer,
} from '../../../shared/contracts/access.ts'
import type { Issue } from '../../../shared/core/outcome.ts'
import type { Account } from '../../store/access/accounts.ts'
import type { OneTimeCode } from '../../store/access/one-time-codes.ts'
import { type AppEnv, refuse } from '../api-error.ts'
import { type AccountsWorld, accessAct } from '../auth/accounts-world.ts'
import { needsFirstOwner } from '../auth/first-owner.ts'
import { passwordFault } from '../auth/passwords.ts'
import { readBody } from '../auth/read-body.ts'
import { codeHash } from '../auth/secrets.ts'
import { openSession, signedInAnswer } from '../auth/sessions.ts'
import { limitedBody } from '../json-body.ts'

type Found = { readonly code: OneTimeCode; readonly account: Account | null }

/** A code that may still be used, and whose account it is about. */
async function usableCode({ access, now }: AccountsWorld, typed: string): Promise<Found | null> {
  const code = await access.codes.find(codeHash(typed))
  if (code === null || code.expiresAt <= now().toISOString()) return null
  if (code.account === null) return (await needsFirstOwner(access)) ? { code, account: null } : null
  const account = await access.accounts.find(code.account)
  return account?.isActive ? { code, account } : null
}

const required = (path: string): Issue => ({ path, code: 'required' })

/** The account the code is for: the one it names, or the first owner's, made now. */
async function accountFor(
  { access, now }: AccountsWorld,
  found: Found,
  wanted: { readonly login: string; readonly name: string },
  from: string,
): Promise<Account | null> {
  if (found.account !== null) return found.account
  const id = randomUUID()
  const { login, name } = wanted
  const act = { who: 'first owner', at: now(), from, requestKey: null }
  const account = { id, login, name, role: 'owner', person: null, isActive: true }
  return (await access.accounts.add(account, act)) ? access.accounts.find(id) : null
}

/** A code from the console, from an owner or from `owner reset`: whoever has it chooses a password, once. */
export const codeRoutes = (world: AccountsWorld | null) =>
  new Hono<AppEnv>()
    .post('/look', limitedBody(), async (c) => {
      const body = await readBody(c, codeLookRequest)
      if (!body.ok) return body.answer
      if (world === null) return refuse(c, 404, 'not-found')
      const found = await usableCode(world, body.value.code)
      if (found === null) return refuse(c, 401, 'wrong-code')
      const { purpose } = found.code
      const { login = null, name = null } = found.account ?? {}
      return c.json({ purpose, login, name } satisfies CodeLookAnswer)
    })
    .post('/', limitedBody(), async (c) => {
      const body = await readBody(c, codeRequest)
      if (!body.ok) return body.answer
      if (world === null) return refuse(c, 404, 'not-found')
      const { access, hashing } = world
      const { code: typed, password } = body.value
      const found = await usableCode(world, typed)
      if (found === null) return refuse(c, 401, 'wrong-code')
      const login = found.account?.login ?? body.value.login
      const name = found.account?.name ?? body.value.name
      if (login === undefined || name === undefined) {
        const missing = [...(login === undefined ? ['login'] : []), ...(name === undefined ? ['name'] : [])]
        return refuse(c, 422, 'refused', missing.map(required))
      }
      const fault = passwordFault(password, [login, name])
      if (fault !== null) return refuse(c, 422, fault)
      const hash = await hashing.hash(password)
      if (!(await access.codes.take(codeHash(typed)))) return refuse(c, 401, 'wrong-code')
      const account = await accountFor(world, found, { login, name }, c.get('from'))
      if (account === null) return refuse(c, 409, 'login-taken')
      const act = accessAct(c, world.now(), account.login)
      if (found.code.purpose === 'reset' && account.totpSecret !== null) {
        await access.accounts.setSecondFactor(account.id, null, act)
      }
      await access.accounts.setPassword(account.id, hash, act)
      await access.sessions.endAll(account.id)
      const now = (await access.accounts.find(account.id)) ?? account
      // An invitation renewed for one who has a second factor leaves it, and does not stand for it.
      if (now.totpSecret !== null) return c.json({ accounts: true, needsFirstOwner: false, signedIn: null })
      await openSession(c, world, now, false)
      const signedIn = await signedInAnswer(access, now, false)
      return c.json({ accounts: true, needsFirstOwner: false, signedIn } satisfies SessionAnswer)
    })
