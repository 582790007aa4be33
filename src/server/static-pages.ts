import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { serveStatic } from '@hono/node-server/serve-static'
import { Hono } from 'hono'
import { etag } from 'hono/etag'
import { type AppEnv, refuse } from './api-error.ts'

/** Vite puts files whose name carries a hash of their content here: they never change under one name. */
const HASHED = '/assets/'

/** The command line can serve the API before anybody has built the pages. */
export const pagesAreBuilt = (webRoot: string): boolean => existsSync(join(webRoot, 'index.html'))

const looksLikeFile = (path: string) => /\.[a-z0-9]{1,8}$/i.test(path)

/**
 * The built pages. Any other path is answered with the page itself, which finds its place from the address; a missing
 * file of the kind that scripts and styles are is a 404, not a page.
 */
export function staticPages(webRoot: string) {
  if (!pagesAreBuilt(webRoot)) return new Hono<AppEnv>().all('*', (c) => refuse(c, 404, 'not-found'))
  const page = serveStatic<AppEnv>({ root: webRoot, path: 'index.html' })
  return new Hono<AppEnv>()
    .use('*', async (c, next) => {
      await next()
      if (c.res.status >= 400) return
      const forGood = c.req.path.startsWith(HASHED)
      c.header('Cache-Control', forGood ? 'public, max-age=31536000, immutable' : 'no-cache')
    })
    .use('*', etag())
    .get('*', serveStatic<AppEnv>({ root: webRoot }))
    .get('*', (c, next) => (looksLikeFile(c.req.path) ? next() : page(c, next)))
    .all('*', (c) => refuse(c, 404, 'not-found'))
}
