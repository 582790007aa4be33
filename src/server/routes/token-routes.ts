import { randomUUID } from 'node:crypto'
import { Hono } from 'hono'
import { tokenRequest } from '../../../shared/contracts/access.ts'
import { type AppEnv, refuse } from '../api-error.ts'
import { type AccountsWorld, accessAct } from '../auth/accounts-world.ts'
import { whoOf } from '../auth/asker.ts'
import { readBody } from '../auth/read-body.ts'
import { newApiToken, secretHash } from '../auth/secrets.ts'
import { idInPath } from '../id-in-path.ts'
import { limitedBody } from '../json-body.ts'

/** Tokens for scripts: each has a name and one role, is told once, and can be taken back. */
export const tokenRoutes = (world: AccountsWorld | null) =>
  new Hono<AppEnv>()
    .get('/', async (c) => c.json({ items: (await world?.access.tokens.list()) ?? [], next: null }))
    .post('/', limitedBody(), async (c) => {
      const body = await readBody(c, tokenRequest)
      if (!body.ok) return body.answer
      if (world === null) return refuse(c, 404, 'not-found')
      const token = newApiToken()
      const about = { id: randomUUID(), ...body.value, madeBy: whoOf(c.get('asker')) }
      const item = await world.access.tokens.add(about, secretHash(token), accessAct(c, world.now()))
      return c.json({ item, token }, 201)
    })
    .delete('/:id', async (c) => {
      if (world === null) return refuse(c, 404, 'not-found')
      const id = idInPath(c)
      const isRevoked = await world.access.tokens.revoke(id, accessAct(c, world.now()))
      return isRevoked ? c.json({ status: 'revoked' }) : refuse(c, 404, 'not-found')
    })
