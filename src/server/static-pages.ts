import { join, sep } from 'node:path'
import { serveStatic } from '@hono/node-server/serve-static'
import { Hono } from 'hono'
import { etag } from 'hono/etag'
import { type AppEnv, refuse } from './api-error.ts'

/** Vite puts files whose name carries a hash of their content here: they never change under one name. */
const HASHED = `${sep}assets${sep}`

/**
 * The built pages. Any other path is answered with the page itself, which finds its place from the address; a missing
 * file of the kind that scripts and styles are is a 404, not a page.
 */
export function staticPages(webRoot: string) {
  const files = serveStatic<AppEnv>({
    root: webRoot,
    onFound: (path, c) => {
      c.header('Cache-Control', path.includes(HASHED) ? 'public, max-age=31536000, immutable' : 'no-cache')
    },
  })
  const page = serveStatic<AppEnv>({
    root: webRoot,
    path: 'index.html',
    onFound: (_path, c) => {
      c.header('Cache-Control', 'no-cache')
    },
  })
  const looksLikeFile = (path: string) => /\.[a-z0-9]{1,8}$/i.test(path)
  return new Hono<AppEnv>()
    .use('*', etag())
    .get('*', files)
    .get('*', (c, next) => (looksLikeFile(c.req.path) ? next() : page(c, next)))
    .all('*', (c) => refuse(c, 404, 'not-found'))
}

/** The page whose presence tells that the pages have been built. */
export const pageFile = (webRoot: string) => join(webRoot, 'index.html')
