import { Hono } from 'hono'
import { planDocument } from '../../plan-document.ts'
import { type AppEnv, refuse } from '../api-error.ts'
import { jsonBody, limitedBody } from '../json-body.ts'

/** Plans without storing. */
export const planRoutes = () =>
  new Hono<AppEnv>().post('/', limitedBody(), async (c) => {
    const body = await jsonBody(c)
    if (!body.ok) return body.answer
    const outcome = planDocument(body.value)
    if (!outcome.ok) return refuse(c, 422, 'refused', outcome.issues)
    return c.json(outcome.value)
  })
