import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { buildApp } from '../../src/server/app.ts'
import { type OpenStore, openStore } from '../../src/store/open-store.ts'

let folder: string
let store: OpenStore
let app: ReturnType<typeof buildApp>

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'underlane-about-'))
  store = await openStore(join(folder, 'data'))
  app = buildApp({ store, webRoot: folder, hosts: [], now: () => new Date(0), log: () => {} })
})
afterAll(async () => {
  await store.close()
  rmSync(folder, { recursive: true, force: true })
})

/** What the API says of itself is not part of what it says. */
const ABOUT = ['/api', '/api/page.css', '/api/openapi.json']

describe('the OpenAPI document', () => {
  test('names every route there is, and no other', async () => {
    const { paths } = await (await app.request('/api/openapi.json')).json()
    const said = Object.entries<Record<string, unknown>>(paths).flatMap(([path, methods]) =>
      Object.keys(methods).map((method) => `${method.toUpperCase()} ${path}`),
    )
    const routes = app.routes
      .filter(({ method, path }) => method !== 'ALL' && path.startsWith('/api') && !ABOUT.includes(path))
      .map(({ method, path }) => `${method} ${path.replace(/:(\w+)/g, '{$1}')}`)
    expect(said.sort()).toEqual([...new Set(routes)].sort())
  })

  test('every reference leads somewhere, and every part is referred to', async () => {
    const text = await (await app.request('/api/openapi.json')).text()
    const { components } = JSON.parse(text)
    const wanted = [...text.matchAll(/"#\/components\/schemas\/([^"]+)"/g)].map((match) => match[1])
    expect([...new Set(wanted)].sort()).toEqual(Object.keys(components.schemas).sort())
  })

  test('every placeholder of a path is a parameter', async () => {
    type Operation = { parameters?: { name: string; in: string; required: boolean }[]; responses: object }
    const { paths } = await (await app.request('/api/openapi.json')).json()
    for (const [path, methods] of Object.entries<Record<string, Operation>>(paths)) {
      const placeholders = [...path.matchAll(/\{(\w+)\}/g)].map((match) => match[1])
      for (const { parameters = [], responses } of Object.values(methods)) {
        const named = parameters
          .filter((each) => each.in === 'path' && each.required)
          .map((each) => each.name)
        expect(named).toEqual(placeholders)
        expect(Object.keys(responses).length).toBeGreaterThan(0)
      }
    }
  })
})

describe('the page about the API', () => {
  test('says every operation, and fetches nothing from elsewhere', async () => {
    const answer = await app.request('/api')
    expect(answer.headers.get('Content-Type')).toContain('text/html')
    const html = await answer.text()
    expect(html).toContain('PUT /api/crossings/{id}')
    expect(html).not.toMatch(/(src|href)="(https?:)?\/\//)
    expect(html).not.toMatch(/<script|style=/)
  })

  test('its style is served', async () => {
    expect((await app.request('/api/page.css')).headers.get('Content-Type')).toContain('text/css')
  })
})
