import { Hono } from 'hono'
import { type ReleaseAsked, releaseOf } from '../../release-of.ts'
import { type AppEnv, refuse } from '../api-error.ts'
import { jsonBody, limitedBody } from '../json-body.ts'
import type { Planner } from '../planning/plan-task.ts'

/** What was sent, each part still to be looked at. */
function askedIn(body: unknown): ReleaseAsked {
  const given = body !== null && typeof body === 'object' && !Array.isArray(body) ? body : {}
  const { crossing, signOffs = [], now, bore = 1 } = given as Record<string, unknown>
  return { crossing, signOffs, now, bore: typeof bore === 'number' ? bore : 0 }
}

/** What a plan and its sign-offs amount to: hold or check. Nobody is told ready by a server. */
export const releaseRoutes = (planner: Planner) =>
  new Hono<AppEnv>().post('/', limitedBody(), async (c) => {
    const body = await jsonBody(c)
    if (!body.ok) return body.answer
    const asked = askedIn(body.value)
    const planned = await planner.plan(asked.crossing, c.req.raw.signal)
    const released = releaseOf(asked, planned)
    return released.ok ? c.json(released.value.answer) : refuse(c, 422, 'refused', released.issues)
  })
