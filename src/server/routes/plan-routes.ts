import { Hono } from 'hono'
import { planDocument } from '../../plan-document.ts'
import { planWithText } from '../../plan-with-text.ts'
import { unitsOfFile } from '../../units-of-file.ts'
import { type AppEnv, refuse } from '../api-error.ts'
import { jsonBody, limitedBody } from '../json-body.ts'
import { languageOf } from '../language.ts'

/** Plans without storing. */
export const planRoutes = () =>
  new Hono<AppEnv>().post('/', limitedBody(), async (c) => {
    const body = await jsonBody(c)
    if (!body.ok) return body.answer
    const outcome = planDocument(body.value)
    if (!outcome.ok) return refuse(c, 422, 'refused', outcome.issues)
    // Codes and values for a script; with their sentences for a reader who names a language.
    if (c.req.header('accept-language') === undefined) return c.json(outcome.value)
    const say = { lang: languageOf(c), system: unitsOfFile(body.value) }
    return c.json(planWithText(outcome.value, say))
  })
