import { Hono } from 'hono'
import { jsonSchema, SCHEMA_NAMES } from '../../schemas.ts'
import { type AppEnv, refuse } from '../api-error.ts'

/** The JSON Schemas of files and answers, by name. */
export const schemaRoutes = () =>
  new Hono<AppEnv>()
    .get('/', (c) => c.json({ items: SCHEMA_NAMES, next: null }))
    .get('/:name', (c) => {
      const schema = jsonSchema(c.req.param('name'))
      return schema === null ? refuse(c, 404, 'not-found') : c.json(schema)
    })
