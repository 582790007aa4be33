import { Hono } from 'hono'
import { z } from 'zod'
import type { Issue } from '../../../shared/core/outcome.ts'
import type { CrossingDocument } from '../../store/crossing-noun.ts'
import type { Store } from '../../store/noun.ts'
import { type AppEnv, refuse } from '../api-error.ts'

const DEFAULT_LIMIT = 100
const MOST_AT_ONCE = 500

const uuid = z.guid()
const limitText = z.string().regex(/^\d{1,4}$/)

function pageProblems(after: string | undefined, limit: string | undefined): Issue[] {
  const problems: Issue[] = []
  if (after !== undefined && !uuid.safeParse(after).success) {
    problems.push({
      path: 'after',
      code: 'wrong-type',
      given: after.slice(0, 64),
      accepted: 'the `next` of a page',
    })
  }
  if (limit !== undefined && !limitText.safeParse(limit).success) {
    problems.push({
      path: 'limit',
      code: 'wrong-type',
      given: limit.slice(0, 64),
      accepted: 'a whole number',
    })
  } else if (limit !== undefined && (Number(limit) < 1 || Number(limit) > MOST_AT_ONCE)) {
    problems.push({
      path: 'limit',
      code: 'out-of-range',
      given: limit,
      values: { min: 1, max: MOST_AT_ONCE },
    })
  }
  return problems
}

/** Crossings as they are kept. */
export const crossingRoutes = (crossings: Store<CrossingDocument>) =>
  new Hono<AppEnv>()
    .get('/', async (c) => {
      const { after, limit } = c.req.query()
      const problems = pageProblems(after, limit)
      if (problems.length > 0) return refuse(c, 400, 'bad-request', problems)
      return c.json(await crossings.list({ after: after ?? null, limit: Number(limit ?? DEFAULT_LIMIT) }))
    })
    .get('/:id', async (c) => {
      const id = c.req.param('id').toLowerCase()
      const found = uuid.safeParse(id).success ? await crossings.find(id) : null
      if (found === null) return refuse(c, 404, 'not-found')
      c.header('ETag', `"${found.version}"`)
      return c.json(found)
    })
