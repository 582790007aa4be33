import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { buildApp } from '../../src/server/app.ts'
import { type OpenStore, openStore } from '../../src/store/open-store.ts'
import { DEMO_NAMES, demoDocument } from '../support/crossings.ts'

const REQUESTS = 500
const SEED = 20_261_124
const ID = '00000000-0000-4000-8000-000000000001'

let folder: string
let store: OpenStore
let app: ReturnType<typeof buildApp>
const logged: string[] = []
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'underlane-fuzz-'))
  store = await openStore(folder)
  app = buildApp({
    store,
    webRoot: folder,
    hosts: [],
    now: () => new Date('2026-03-02T09:00:00Z'),
    log: (line) => logged.push(line),
  })
})
afterAll(async () => {
  await store.close()
  rmSync(folder, { recursive: true, force: true })
})

const headerText = fc.stringMatching(/^[\x20-\x7e]{0,30}$/)
const oddText = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 40 }),
  fc.constantFrom('../..', '%00', '%', '%ff', "' or 1=1 --", '\u0000', '😀', ID, ID.toUpperCase()),
)
const mostly = (usual: fc.Arbitrary<string>, odd = headerText) =>
  fc.oneof({ weight: 6, arbitrary: usual }, { weight: 1, arbitrary: odd })
const path = fc.oneof(
  { weight: 6, arbitrary: fc.nat(5).map((n) => `/api/crossings/${ID.slice(0, -1)}${n}`) },
  {
    weight: 3,
    arbitrary: fc.constantFrom('restore', 'history', 'x').map((tail) => `/api/crossings/${ID}/${tail}`),
  },
  {
    weight: 3,
    arbitrary: fc
      .constantFrom('crossings', 'plans', 'relations/deviation', 'schemas/crossing', '')
      .map((tail) => `/api/${tail}`),
  },
  { weight: 1, arbitrary: oddText.map((text) => `/api/crossings/${encodeURIComponent(text)}`) },
  { weight: 1, arbitrary: fc.stringMatching(/^[!-~]{0,30}$/).map((text) => `/api/${text}`) },
)
const query = fc.dictionary(fc.constantFrom('after', 'limit', 'removed', 'station', '__proto__'), oddText, {
  maxKeys: 3,
})

/** A whole crossing with something put in the place of one of its parts. */
const spoiled = fc
  .tuple(
    fc.constantFrom(...DEMO_NAMES),
    fc.string({ maxLength: 8 }),
    fc.jsonValue({ maxDepth: 3 }),
    fc.nat(20),
  )
  .map(([name, key, value, at]) => {
    const document = demoDocument(name)
    const keys = Object.keys(document)
    return JSON.stringify({ ...document, [at < keys.length ? (keys[at] ?? key) : key]: value })
  })
const body = fc.oneof(
  { weight: 4, arbitrary: spoiled },
  { weight: 5, arbitrary: fc.constantFrom(...DEMO_NAMES).map((name) => JSON.stringify(demoDocument(name))) },
  { weight: 2, arbitrary: fc.json({ maxDepth: 6 }) },
  { weight: 1, arbitrary: oddText },
  {
    weight: 1,
    arbitrary: fc.constantFrom('{"__proto__":1}', '['.repeat(50_000), '1e999', '{"name":"\\ud800"}', ''),
  },
)
const headers = fc.record(
  {
    'Content-Type': mostly(fc.constant('application/json')),
    'If-Match': mostly(fc.integer({ min: 1, max: 3 }).map((version) => `"${version}"`)),
    'Idempotency-Key': mostly(fc.constantFrom('k1', 'k2', 'k3')),
    'Accept-Language': mostly(fc.constantFrom('es', 'en;q=0.1, es')),
    'Accept-Encoding': mostly(fc.constant('gzip')),
    Origin: mostly(fc.constant('http://localhost')),
  },
  { requiredKeys: ['Content-Type'] },
)
const method = fc.constantFrom('GET', 'PUT', 'PUT', 'PUT', 'POST', 'DELETE', 'PATCH', 'OPTIONS', 'HEAD')
const request = fc.record({ method, path, query, headers, body })

test(`${REQUESTS} odd requests: none is our failure, and every refusal has the one shape`, async () => {
  const seen = new Map<number, number>()
  const requests = fc.sample(request, { numRuns: REQUESTS, seed: SEED })
  for (const each of requests) {
    const isBodiless = each.method === 'GET' || each.method === 'HEAD'
    const asked = new URL(each.path, 'http://localhost')
    for (const [key, value] of Object.entries(each.query)) asked.searchParams.set(key, value)
    const answer = await app.request(asked.href, {
      method: each.method,
      headers: { ...each.headers },
      ...(isBodiless ? {} : { body: each.body }),
    })
    seen.set(answer.status, (seen.get(answer.status) ?? 0) + 1)
    expect(answer.status, JSON.stringify(each).slice(0, 500)).toBeLessThan(500)
    const isReadable = each.method !== 'HEAD' && !answer.headers.has('Content-Encoding')
    if (answer.status >= 400 && isReadable) {
      expect(await answer.json()).toMatchObject({ code: expect.any(String), requestId: expect.any(String) })
    }
  }
  expect(logged).toEqual([])
  // Odd, yet not so odd that all of them fall at the first fence.
  expect([...seen.keys()]).toEqual(expect.arrayContaining([200, 201, 400, 403, 404, 409, 415, 422, 428]))
}, 60_000)
