import { Hono } from 'hono'
import { answerRelation, relationList } from '../../relation-answer.ts'
import { type AppEnv, refuse } from '../api-error.ts'

/** The formulas: listed, and evaluated for what the address gives. */
export const relationRoutes = () =>
  new Hono<AppEnv>()
    .get('/', (c) => c.json({ items: relationList(), next: null }))
    .get('/:id', (c) => {
      const pairs = [...new URL(c.req.url).searchParams]
      const outcome = answerRelation(c.req.param('id'), pairs)
      if (outcome.ok) return c.json(outcome.value)
      const unknown = outcome.issues.some((issue) => issue.code === 'unknown-relation')
      return unknown ? refuse(c, 404, 'not-found', outcome.issues) : refuse(c, 422, 'refused', outcome.issues)
    })
