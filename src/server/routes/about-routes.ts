import { Hono } from 'hono'
import type { AppEnv } from '../api-error.ts'
import { API_PAGE_CSS, apiPage } from '../api-page.ts'
import { openApiDocument } from '../openapi.ts'

/** What the API says of itself, to people and to programs. Made when first asked for: most starts never are. */
export function aboutRoutes() {
  let document: ReturnType<typeof openApiDocument> | null = null
  let html: string | null = null
  return new Hono<AppEnv>()
    .get('/', (c) => {
      html ??= apiPage()
      return c.html(html)
    })
    .get('/page.css', (c) => c.body(API_PAGE_CSS, 200, { 'Content-Type': 'text/css; charset=utf-8' }))
    .get('/openapi.json', (c) => {
      document ??= openApiDocument()
      return c.json(document)
    })
}
