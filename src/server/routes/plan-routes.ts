import { Hono } from 'hono'
import type { Issue } from '../../../shared/core/outcome.ts'
import { planWithText } from '../../plan-with-text.ts'
import { unitsOfFile } from '../../units-of-file.ts'
import { type AppEnv, refuse } from '../api-error.ts'
import { jsonBody, limitedBody } from '../json-body.ts'
import { languageOf } from '../language.ts'
import type { Planner } from '../planning/plan-task.ts'

/** More draws are for a crossing that is kept and quoted from; a passing question is answered with fewer. */
const MOST_DRAWS = 16_384

/** The draws asked for when they are too many for here; whether they are a number at all is the contract's to say. */
function tooManyDraws(file: unknown): Issue | null {
  const spread = file !== null && typeof file === 'object' && 'spread' in file ? file.spread : null
  const draws = spread !== null && typeof spread === 'object' && 'draws' in spread ? spread.draws : null
  if (typeof draws !== 'number' || draws <= MOST_DRAWS) return null
  return {
    path: 'spread.draws',
    code: 'out-of-range',
    given: String(draws),
    values: { min: 64, max: MOST_DRAWS },
  }
}

/** Plans without storing. */
export const planRoutes = (planner: Planner) =>
  new Hono<AppEnv>().post('/', limitedBody(), async (c) => {
    const body = await jsonBody(c)
    if (!body.ok) return body.answer
    const tooMany = tooManyDraws(body.value)
    if (tooMany !== null) return refuse(c, 422, 'refused', [tooMany])
    const outcome = await planner.plan(body.value, c.req.raw.signal)
    if (!outcome.ok) return refuse(c, 422, 'refused', outcome.issues)
    // Codes and values for a script; with their sentences for a reader who names a language.
    if (c.req.header('accept-language') === undefined) return c.json(outcome.value)
    const say = { lang: languageOf(c), system: unitsOfFile(body.value) }
    return c.json(planWithText(outcome.value, say))
  })
