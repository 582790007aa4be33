import { randomUUID } from 'node:crypto'
import { Hono } from 'hono'
import { sharedRequest, shareRequest } from '../../../shared/contracts/access.ts'
import type { Issue } from '../../../shared/core/outcome.ts'
import type { Stores } from '../../store/open-store.ts'
import { unitsOfFile } from '../../units-of-file.ts'
import { type AppEnv, refuse } from '../api-error.ts'
import { type AccountsWorld, accessAct } from '../auth/accounts-world.ts'
import { whoOf } from '../auth/asker.ts'
import { readBody } from '../auth/read-body.ts'
import { newLinkToken, secretHash } from '../auth/secrets.ts'
import { idInPath } from '../id-in-path.ts'
import { limitedBody } from '../json-body.ts'
import { languageOf } from '../language.ts'
import type { Planner } from '../planning/plan-task.ts'
import { sharedAnswer, sharedPart } from '../shared-plan.ts'

const DAY_MS = 24 * 60 * 60 * 1000
const MOST_ACCESSES = 500

const noSuchCrossing: Issue = {
  path: 'crossing',
  code: 'unknown-choice',
  accepted: 'a crossing that is kept',
}

/** Links that show one crossing to people without an account: for so many days, told once, taken back at any time. */
export const shareRoutes = (world: AccountsWorld | null, store: Stores) =>
  new Hono<AppEnv>()
    .get('/', async (c) => c.json({ items: (await world?.access.shares.list()) ?? [], next: null }))
    .post('/', limitedBody(), async (c) => {
      const body = await readBody(c, shareRequest)
      if (!body.ok) return body.answer
      if (world === null) return refuse(c, 404, 'not-found')
      const { crossing, name, days } = body.value
      if ((await store.crossings.find(crossing)) === null) return refuse(c, 422, 'refused', [noSuchCrossing])
      const token = newLinkToken()
      const expiresAt = new Date(world.now().getTime() + days * DAY_MS).toISOString()
      const about = { id: randomUUID(), crossing, name, expiresAt, madeBy: whoOf(c.get('asker')) }
      const item = await world.access.shares.add(about, secretHash(token), accessAct(c, world.now()))
      return c.json({ item, token }, 201)
    })
    .delete('/:id', async (c) => {
      if (world === null) return refuse(c, 404, 'not-found')
      const id = idInPath(c)
      const isRevoked = await world.access.shares.revoke(id, accessAct(c, world.now()))
      return isRevoked ? c.json({ status: 'revoked' }) : refuse(c, 404, 'not-found')
    })
    .get('/:id/accesses', async (c) => {
      const found = await world?.access.shares.find(idInPath(c))
      if (world === null || !found) return refuse(c, 404, 'not-found')
      return c.json({ items: await world.access.shares.accesses(found.id, MOST_ACCESSES), next: null })
    })

/** What a link shows. The token comes in the body, so that no log and no address bar of a proxy ever holds it. */
export const sharedRoute = (world: AccountsWorld | null, store: Stores, planner: Planner) =>
  new Hono<AppEnv>().post('/', limitedBody(), async (c) => {
    const body = await readBody(c, sharedRequest)
    if (!body.ok) return body.answer
    if (world === null) return refuse(c, 404, 'not-found')
    const { shares } = world.access
    const link = await shares.byToken(secretHash(body.value.token), world.now())
    const kept = link === null ? null : await store.crossings.find(link.crossing)
    if (link === null || kept === null) return refuse(c, 404, 'not-found')
    await shares.noteAccess(link.id, world.now(), c.get('from'))
    const about = { name: kept.name, changedAt: kept.updatedAt, expiresAt: link.expiresAt }
    const say = { lang: languageOf(c), system: body.value.units ?? unitsOfFile(kept.document) }
    const made = await planner.plan(kept.document, c.req.raw.signal)
    const plan = made.ok ? sharedPart(kept.document, made.value, say) : null
    return c.json(sharedAnswer(about, plan))
  })
