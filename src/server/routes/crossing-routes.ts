import { Hono } from 'hono'
import { z } from 'zod'
import type { Issue } from '../../../shared/core/outcome.ts'
import { planToKeep } from '../../plan-to-keep.ts'
import { CROSSING, type CrossingDocument } from '../../store/crossing-noun.ts'
import type { Store } from '../../store/noun.ts'
import { actOf } from '../act.ts'
import { type AppEnv, refuse } from '../api-error.ts'
import { jsonBody, limitedBody } from '../json-body.ts'
import { answerChange, answerKept, versionWanted } from '../kept-answer.ts'
import { AFTER_ID, AFTER_VERSION, pageRequest } from '../page-request.ts'

const uuid = z.guid()

/** Ids are compared as text, so they are always small letters; null for what is no UUID. */
const idOf = (given: string): string | null => uuid.safeParse(given).data?.toLowerCase() ?? null

const notAUuid = (given: string): Issue => ({
  path: 'id',
  code: 'wrong-type',
  given: given.slice(0, 64),
  accepted: 'a UUID',
})

const REMOVED = ['true', 'false']
const notYesOrNo = (given: string): Issue => ({
  path: 'removed',
  code: 'unknown-choice',
  given: given.slice(0, 64),
  accepted: REMOVED.join(', '),
})

const readRoutes = (crossings: Store<CrossingDocument>) =>
  new Hono<AppEnv>()
    .get('/', async (c) => {
      const { removed = 'false', ...query } = c.req.query()
      const asked = pageRequest(query, AFTER_ID)
      const issues = [
        ...(asked.ok ? [] : asked.issues),
        ...(REMOVED.includes(removed) ? [] : [notYesOrNo(removed)]),
      ]
      if (!asked.ok || issues.length > 0) return refuse(c, 400, 'bad-request', issues)
      return c.json(await crossings.list({ ...asked.page, removed: removed === 'true' }))
    })
    .get('/:id', async (c) => {
      const id = idOf(c.req.param('id'))
      const found = id === null ? null : await crossings.find(id)
      return found === null ? refuse(c, 404, 'not-found') : answerKept(c, found, 200)
    })
    .get('/:id/history', async (c) => {
      const asked = pageRequest(c.req.query(), AFTER_VERSION)
      if (!asked.ok) return refuse(c, 400, 'bad-request', asked.issues)
      const id = idOf(c.req.param('id'))
      const page = id === null ? { items: [], next: null } : await crossings.history(id, asked.page)
      if (page.items.length === 0 && asked.page.after === null) return refuse(c, 404, 'not-found')
      // Addresses and request keys are for whoever runs the server.
      const items = page.items.map(({ version, action, who, at, document }) => ({
        version,
        action,
        who,
        at,
        document,
      }))
      return c.json({ items, next: page.next })
    })

const changeRoutes = (crossings: Store<CrossingDocument>, now: () => Date) =>
  new Hono<AppEnv>()
    .put('/:id', limitedBody(), async (c) => {
      const id = idOf(c.req.param('id'))
      if (id === null) return refuse(c, 400, 'bad-request', [notAUuid(c.req.param('id'))])
      const body = await jsonBody(c)
      if (!body.ok) return body.answer
      const how = actOf(c, now())
      if (!how.ok) return refuse(c, 400, 'bad-request', how.issues)
      const kept = planToKeep(body.value)
      if (!kept.ok) return refuse(c, 422, 'refused', kept.issues)
      const { act, expectedVersion } = how.asked
      const entry = { id, document: CROSSING.read(body.value), made: kept.value }
      const changed =
        expectedVersion === null
          ? await crossings.insert({ ...entry, demo: false }, act)
          : await crossings.replace({ ...entry, expectedVersion }, act)
      return answerChange(c, changed, { expectedVersion, doneStatus: expectedVersion === null ? 201 : 200 })
    })
    .delete('/:id', async (c) => {
      const how = actOf(c, now())
      if (!how.ok) return refuse(c, 400, 'bad-request', how.issues)
      const id = idOf(c.req.param('id'))
      const { act, expectedVersion } = how.asked
      if (id === null) return refuse(c, 404, 'not-found')
      if (expectedVersion === null) return versionWanted(c)
      const changed = await crossings.remove({ id, expectedVersion }, act)
      return answerChange(c, changed, { expectedVersion, doneStatus: 200 })
    })
    .post('/:id/restore', async (c) => {
      const how = actOf(c, now())
      if (!how.ok) return refuse(c, 400, 'bad-request', how.issues)
      const id = idOf(c.req.param('id'))
      const { act, expectedVersion } = how.asked
      if (id === null) return refuse(c, 404, 'not-found')
      if (expectedVersion === null) return versionWanted(c)
      const changed = await crossings.restore({ id, expectedVersion }, act)
      return answerChange(c, changed, { expectedVersion, doneStatus: 200 })
    })

/** Crossings as they are kept: read by anyone, changed only from the version last seen. */
export const crossingRoutes = (crossings: Store<CrossingDocument>, now: () => Date) =>
  new Hono<AppEnv>().route('/', readRoutes(crossings)).route('/', changeRoutes(crossings, now))
