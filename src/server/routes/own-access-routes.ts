import { Hono } from 'hono'
import { factorRequest, factorStartRequest, passwordRequest } from '../../../shared/contracts/access.ts'
import { type AppEnv, refuse } from '../api-error.ts'
import { type AccountsWorld, accessAct, personAsking } from '../auth/accounts-world.ts'
import { passwordFault } from '../auth/passwords.ts'
import { prove } from '../auth/prove.ts'
import { readBody } from '../auth/read-body.ts'
import { refuseProof } from '../auth/refuse-proof.ts'
import { newTotpSecret, totpAddress, totpStep } from '../auth/second-factor.ts'
import { codeHash, newRecoveryCode } from '../auth/secrets.ts'
import { openSession } from '../auth/sessions.ts'
import { idInPath } from '../id-in-path.ts'
import { limitedBody } from '../json-body.ts'

const RECOVERY_CODES = 10

const deviceRoutes = (world: AccountsWorld | null) =>
  new Hono<AppEnv>()
    .get('/', async (c) => {
      const asker = personAsking(c)
      if (world === null || asker === null) return refuse(c, 404, 'not-found')
      const sessions = await world.access.sessions.of(asker.account.id)
      const items = sessions.map(({ id, device, madeAt, seenAt, seenFrom }) => ({
        id,
        device,
        madeAt,
        seenAt,
        seenFrom,
        isThis: id === asker.session.id,
      }))
      return c.json({ items, next: null })
    })
    .delete('/:id', async (c) => {
      const asker = personAsking(c)
      if (world === null || asker === null) return refuse(c, 404, 'not-found')
      const isEnded = await world.access.sessions.end(asker.account.id, idInPath(c))
      return isEnded ? c.json({ status: 'ended' }) : refuse(c, 404, 'not-found')
    })

const passwordRoute = (world: AccountsWorld | null) =>
  new Hono<AppEnv>().post('/', limitedBody(), async (c) => {
    const body = await readBody(c, passwordRequest)
    if (!body.ok) return body.answer
    const asker = personAsking(c)
    if (world === null || asker === null) return refuse(c, 404, 'not-found')
    const { account, session } = asker
    const proved = await provePassword(world, account.login, body.value.current, c.get('from'))
    if (proved !== null) return refuseProof(c, proved)
    const fault = passwordFault(body.value.password, [account.login, account.name])
    if (fault !== null) return refuse(c, 422, fault)
    const hash = await world.hashing.hash(body.value.password)
    await world.access.accounts.setPassword(account.id, hash, accessAct(c, world.now()))
    await world.access.sessions.endAll(account.id)
    await openSession(c, world, account, session.hasSecondFactor)
    return c.json({ status: 'done' })
  })

/** Whoever sits at an open screen must still know the password; a second factor is not asked for again. */
async function provePassword(world: AccountsWorld, login: string, password: string, from: string) {
  const proved = await prove(world, { login, password, code: null, from })
  return proved.outcome === 'done' ? null : proved
}

const factorRoutes = (world: AccountsWorld | null) =>
  new Hono<AppEnv>()
    .post('/', limitedBody(), async (c) => {
      const body = await readBody(c, factorStartRequest)
      if (!body.ok) return body.answer
      const asker = personAsking(c)
      if (world === null || asker === null) return refuse(c, 404, 'not-found')
      const { login } = asker.account
      const proved = await provePassword(world, login, body.value.password, c.get('from'))
      if (proved !== null) return refuseProof(c, proved)
      const secret = newTotpSecret()
      return c.json({ secret, address: totpAddress(secret, login) })
    })
    .put('/', limitedBody(), async (c) => {
      const body = await readBody(c, factorRequest)
      if (!body.ok) return body.answer
      const asker = personAsking(c)
      if (world === null || asker === null) return refuse(c, 404, 'not-found')
      const { secret, code, password } = body.value
      const { account } = asker
      const proved = await provePassword(world, account.login, password, c.get('from'))
      if (proved !== null) return refuseProof(c, proved)
      const step = totpStep(secret, code, world.now())
      if (step === null) return refuse(c, 422, 'wrong-code')
      const recoveryCodes = Array.from({ length: RECOVERY_CODES }, newRecoveryCode)
      const factor = { secret, step, codeHashes: recoveryCodes.map(codeHash) }
      await world.access.accounts.setSecondFactor(account.id, factor, accessAct(c, world.now()))
      await world.access.sessions.endAll(account.id)
      await openSession(c, world, account, true)
      return c.json({ recoveryCodes })
    })
    .post('/off', limitedBody(), async (c) => {
      const body = await readBody(c, factorStartRequest)
      if (!body.ok) return body.answer
      const asker = personAsking(c)
      if (world === null || asker === null) return refuse(c, 404, 'not-found')
      const { account } = asker
      const proved = await provePassword(world, account.login, body.value.password, c.get('from'))
      if (proved !== null) return refuseProof(c, proved)
      await world.access.accounts.setSecondFactor(account.id, null, accessAct(c, world.now()))
      await world.access.sessions.endAll(account.id)
      await openSession(c, world, account, false)
      return c.json({ status: 'done' })
    })

/** A person's own devices, password and second factor. Each change of a power begins a new session. */
export const ownAccessRoutes = (world: AccountsWorld | null) =>
  new Hono<AppEnv>()
    .route('/devices', deviceRoutes(world))
    .route('/password', passwordRoute(world))
    .route('/second-factor', factorRoutes(world))
