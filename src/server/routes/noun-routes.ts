import { Hono } from 'hono'
import { z } from 'zod'
import { done, type Issue } from '../../../shared/core/outcome.ts'
import { documentToKeep } from '../../document-to-keep.ts'
import type { Store } from '../../store/noun.ts'
import { type NamedDocument, NOUNS, type NounPath } from '../../store/nouns.ts'
import type { Stores } from '../../store/open-store.ts'
import { actOf } from '../act.ts'
import { type AppEnv, refuse } from '../api-error.ts'
import { addsOthersCrossings } from '../auth/own.ts'
import { heldTools } from '../held-tools.ts'
import { uuidOf } from '../id-in-path.ts'
import { jsonBody, limitedBody } from '../json-body.ts'
import { answerChange, answerKept, versionWanted } from '../kept-answer.ts'
import { AFTER_ID, AFTER_VERSION, pageRequest } from '../page-request.ts'
import type { Planner } from '../planning/plan-task.ts'

const notAUuid = (given: string): Issue => ({
  path: 'id',
  code: 'wrong-type',
  given: given.slice(0, 64),
  accepted: 'a UUID',
})

const civilDay = z.iso.date()

const notADay = (given: string): Issue => ({
  path: 'on',
  code: 'wrong-type',
  given: given.slice(0, 64),
  accepted: 'a day such as 2026-03-02',
})

const REMOVED = ['true', 'false']
const notYesOrNo = (given: string): Issue => ({
  path: 'removed',
  code: 'unknown-choice',
  given: given.slice(0, 64),
  accepted: REMOVED.join(', '),
})

/** What a list is asked for by, or what is wrong with how it is asked. */
function listRequest({ removed = 'false', of, on, ...query }: Readonly<Record<string, string>>) {
  const asked = pageRequest(query, AFTER_ID)
  const belongsTo = of === undefined ? null : uuidOf(of)
  const issues = [
    ...(asked.ok ? [] : asked.issues),
    ...(REMOVED.includes(removed) ? [] : [notYesOrNo(removed)]),
    ...(of !== undefined && belongsTo === null ? [{ ...notAUuid(of), path: 'of' }] : []),
    ...(on === undefined || civilDay.safeParse(on).success ? [] : [notADay(on)]),
  ]
  if (!asked.ok || issues.length > 0) return { ok: false as const, issues }
  return {
    ok: true as const,
    request: { ...asked.page, removed: removed === 'true', belongsTo, onDay: on ?? null },
  }
}

const readRoutes = (kept: Store<NamedDocument>) =>
  new Hono<AppEnv>()
    .get('/', async (c) => {
      const asked = listRequest(c.req.query())
      if (!asked.ok) return refuse(c, 400, 'bad-request', asked.issues)
      return c.json(await kept.list(asked.request))
    })
    .get('/:id', async (c) => {
      const id = uuidOf(c.req.param('id'))
      const found = id === null ? null : await kept.find(id)
      return found === null ? refuse(c, 404, 'not-found') : answerKept(c, found, 200)
    })
    .get('/:id/history', async (c) => {
      const asked = pageRequest(c.req.query(), AFTER_VERSION)
      if (!asked.ok) return refuse(c, 400, 'bad-request', asked.issues)
      const id = uuidOf(c.req.param('id'))
      const page = id === null ? { items: [], next: null } : await kept.history(id, asked.page)
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

/** What the routes of a noun work with. */
export type NounWorld = { readonly planner: Planner; readonly now: () => Date }

/** As `documentToKeep`, with the planning of a crossing done where it holds nobody up. */
async function toKeep(path: NounPath, given: unknown, planner: Planner, signal: AbortSignal) {
  if (path !== 'crossings') return documentToKeep(path, given)
  const made = await planner.keep(given, signal)
  return made.ok ? done({ document: NOUNS.crossings.read(given), made: made.value }) : made
}

const saveRoute = (path: NounPath, store: Stores, { planner, now }: NounWorld) =>
  new Hono<AppEnv>().put('/:id', limitedBody(), async (c) => {
    const id = uuidOf(c.req.param('id'))
    if (id === null) return refuse(c, 400, 'bad-request', [notAUuid(c.req.param('id'))])
    const body = await jsonBody(c)
    if (!body.ok) return body.answer
    const how = actOf(c, now())
    if (!how.ok) return refuse(c, 400, 'bad-request', how.issues)
    const parsed = await toKeep(path, body.value, planner, c.req.raw.signal)
    if (!parsed.ok) return refuse(c, 422, 'refused', parsed.issues)
    if (path === 'days' && (await addsOthersCrossings(store, c.get('asker'), id, parsed.value.document))) {
      return refuse(c, 403, 'not-allowed')
    }
    const held = path === 'days' ? await heldTools(store, id, parsed.value.document) : []
    if (held.length > 0) return refuse(c, 422, 'refused', held)
    const kept = store[path]
    const { act, expectedVersion } = how.asked
    const entry = { id, ...parsed.value }
    const changed =
      expectedVersion === null
        ? await kept.insert({ ...entry, demo: false }, act)
        : await kept.replace({ ...entry, expectedVersion }, act)
    return answerChange(c, changed, { expectedVersion, doneStatus: expectedVersion === null ? 201 : 200 })
  })

const removeRoutes = (kept: Store<NamedDocument>, { now }: NounWorld) =>
  new Hono<AppEnv>()
    .delete('/:id', async (c) => {
      const how = actOf(c, now())
      if (!how.ok) return refuse(c, 400, 'bad-request', how.issues)
      const id = uuidOf(c.req.param('id'))
      const { act, expectedVersion } = how.asked
      if (id === null) return refuse(c, 404, 'not-found')
      if (expectedVersion === null) return versionWanted(c)
      const changed = await kept.remove({ id, expectedVersion }, act)
      return answerChange(c, changed, { expectedVersion, doneStatus: 200 })
    })
    .post('/:id/restore', async (c) => {
      const how = actOf(c, now())
      if (!how.ok) return refuse(c, 400, 'bad-request', how.issues)
      const id = uuidOf(c.req.param('id'))
      const { act, expectedVersion } = how.asked
      if (id === null) return refuse(c, 404, 'not-found')
      if (expectedVersion === null) return versionWanted(c)
      const changed = await kept.restore({ id, expectedVersion }, act)
      return answerChange(c, changed, { expectedVersion, doneStatus: 200 })
    })

/** The documents of one noun as they are kept: read by anyone, changed only from the version last seen. */
export const nounRoutes = (path: NounPath, store: Stores, world: NounWorld) =>
  new Hono<AppEnv>()
    .route('/', readRoutes(store[path]))
    .route('/', saveRoute(path, store, world))
    .route('/', removeRoutes(store[path], world))
