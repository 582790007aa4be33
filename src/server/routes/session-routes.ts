import { Hono } from 'hono'
import { type SessionAnswer, signInRequest } from '../../../shared/contracts/access.ts'
import { type AppEnv, refuse } from '../api-error.ts'
import type { AccountsWorld } from '../auth/accounts-world.ts'
import type { PersonAsking } from '../auth/asker.ts'
import { takeSessionCookie } from '../auth/cookie.ts'
import { needsFirstOwner } from '../auth/first-owner.ts'
import { prove } from '../auth/prove.ts'
import { readBody } from '../auth/read-body.ts'
import { refuseProof } from '../auth/refuse-proof.ts'
import { endPresented, openSession, signedInAnswer } from '../auth/sessions.ts'
import { limitedBody } from '../json-body.ts'
import { codeRoutes } from './code-routes.ts'
import { ownAccessRoutes } from './own-access-routes.ts'

const OPEN: SessionAnswer = { accounts: false, needsFirstOwner: false, signedIn: null }

async function sessionAnswer({ access }: AccountsWorld, asker: PersonAsking | null): Promise<SessionAnswer> {
  if (asker !== null) {
    const { account, session } = asker
    const signedIn = await signedInAnswer(access, account, session.hasSecondFactor)
    return { accounts: true, needsFirstOwner: false, signedIn }
  }
  return { accounts: true, needsFirstOwner: await needsFirstOwner(access), signedIn: null }
}

const signInRoutes = (world: AccountsWorld | null) =>
  new Hono<AppEnv>()
    .get('/', async (c) => {
      if (world === null) return c.json(OPEN)
      const asker = c.get('asker')
      return c.json(await sessionAnswer(world, asker.kind === 'account' ? asker : null))
    })
    .post('/', limitedBody(), async (c) => {
      const body = await readBody(c, signInRequest)
      if (!body.ok) return body.answer
      if (world === null) return refuse(c, 404, 'not-found')
      const { login, password, code } = body.value
      const proved = await prove(world, { login, password, code, from: c.get('from') })
      if (proved.outcome !== 'done') return refuseProof(c, proved)
      const { account } = proved
      const hasSecondFactor = account.totpSecret !== null
      await openSession(c, world, account, hasSecondFactor)
      const signedIn = await signedInAnswer(world.access, account, hasSecondFactor)
      return c.json({ accounts: true, needsFirstOwner: false, signedIn } satisfies SessionAnswer)
    })
    .delete('/', async (c) => {
      if (world === null) return refuse(c, 404, 'not-found')
      await endPresented(c, world)
      takeSessionCookie(c, world.cookies)
      return c.json({ accounts: true, needsFirstOwner: false, signedIn: null } satisfies SessionAnswer)
    })

/** Signing in and out, and what a person may see and do about their own access. */
export const sessionRoutes = (world: AccountsWorld | null) =>
  new Hono<AppEnv>()
    .route('/', signInRoutes(world))
    .route('/code', codeRoutes(world))
    .route('/', ownAccessRoutes(world))
