import { randomUUID } from 'node:crypto'
import { type Context, Hono } from 'hono'
import { type AccountAnswer, accountChange, accountRequest } from '../../../shared/contracts/access.ts'
import type { Account } from '../../store/access/accounts.ts'
import { actOf } from '../act.ts'
import { type AppEnv, refuse } from '../api-error.ts'
import { type AccountsWorld, accessAct, personAsking } from '../auth/accounts-world.ts'
import { readBody } from '../auth/read-body.ts'
import { roleNamed } from '../auth/roles.ts'
import { codeHash, newOneTimeCode } from '../auth/secrets.ts'
import { idInPath } from '../id-in-path.ts'
import { limitedBody } from '../json-body.ts'
import { versionWanted } from '../kept-answer.ts'

const CODE_LIFE_MS = 7 * 24 * 60 * 60 * 1000

const answerOf = (account: Account): AccountAnswer => ({
  id: account.id,
  version: account.version,
  login: account.login,
  name: account.name,
  role: roleNamed(account.role) ?? 'viewer',
  person: account.person,
  isActive: account.isActive,
  hasPassword: account.passwordHash !== null,
  hasSecondFactor: account.totpSecret !== null,
})

/** A code with which whoever the account is for chooses a password: the owner never knows it. */
async function withCode(c: Context<AppEnv>, world: AccountsWorld, account: Account, status: 200 | 201) {
  const code = newOneTimeCode()
  const expiresAt = new Date(world.now().getTime() + CODE_LIFE_MS).toISOString()
  const purpose = account.passwordHash === null ? 'invitation' : 'reset'
  await world.access.codes.put({ purpose, account: account.id, expiresAt }, codeHash(code))
  return c.json({ account: answerOf(account), code, expiresAt }, status)
}

const changeRoute = (world: AccountsWorld | null) =>
  new Hono<AppEnv>().put('/:id', limitedBody(), async (c) => {
    const body = await readBody(c, accountChange)
    if (!body.ok) return body.answer
    if (world === null) return refuse(c, 404, 'not-found')
    const { accounts, sessions } = world.access
    const how = actOf(c, world.now())
    if (!how.ok) return refuse(c, 400, 'bad-request', how.issues)
    const { expectedVersion } = how.asked
    if (expectedVersion === null) return versionWanted(c)
    const before = await accounts.find(idInPath(c))
    if (before === null) return refuse(c, 404, 'not-found')
    const { person = null, ...rest } = body.value
    const act = accessAct(c, world.now())
    const outcome = await accounts.describe(before.id, expectedVersion, { ...rest, person }, act)
    if (outcome === 'last-owner') return refuse(c, 409, 'last-owner')
    if (outcome === 'conflict') return refuse(c, 409, 'conflict')
    const hasOtherPowers =
      rest.role !== before.role || rest.isActive !== before.isActive || person !== before.person
    // Other powers begin with another sign-in: nothing of the old ones lives on in a session.
    if (hasOtherPowers) await sessions.endAll(before.id)
    const after = await accounts.find(before.id)
    return after === null ? refuse(c, 404, 'not-found') : c.json(answerOf(after))
  })

/** The people who may come in; owners only. An account is never taken away, for the history names its login. */
export const accountRoutes = (world: AccountsWorld | null) =>
  new Hono<AppEnv>()
    .get('/', async (c) => {
      if (world === null) return c.json({ items: [], next: null })
      return c.json({ items: (await world.access.accounts.list()).map(answerOf), next: null })
    })
    .post('/', limitedBody(), async (c) => {
      const body = await readBody(c, accountRequest)
      if (!body.ok) return body.answer
      if (world === null) return refuse(c, 404, 'not-found')
      const { login, name, role, person = null } = body.value
      const id = randomUUID()
      const account = { id, login, name, role, person, isActive: true }
      const isAdded = await world.access.accounts.add(account, accessAct(c, world.now()))
      const added = isAdded ? await world.access.accounts.find(id) : null
      return added === null ? refuse(c, 409, 'login-taken') : withCode(c, world, added, 201)
    })
    .route('/', changeRoute(world))
    .post('/:id/code', async (c) => {
      if (world === null) return refuse(c, 404, 'not-found')
      const found = await world.access.accounts.find(idInPath(c))
      if (found === null) return refuse(c, 404, 'not-found')
      // One's own password is changed with the old one; a code for oneself would be a way round the second factor.
      const isOwn = personAsking(c)?.account.id === found.id
      return isOwn || !found.isActive
        ? refuse(c, 409, 'not-for-this-account')
        : withCode(c, world, found, 200)
    })
