import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { buildApp } from '../../src/server/app.ts'
import { type OpenStore, openStore } from '../../src/store/open-store.ts'
import { StoreError } from '../../src/store/store-error.ts'

const FIRST = '11111111-1111-4111-8111-111111111111'
const SECOND = '22222222-2222-4222-8222-222222222222'
const AT = new Date('2026-03-02T09:00:00Z')
const ACT = { who: 'Ada', at: AT, from: 'test', requestKey: null }

let folder: string
let store: OpenStore
let app: ReturnType<typeof buildApp>
const logged: string[] = []

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'underlane-server-'))
  const webRoot = join(folder, 'web')
  mkdirSync(join(webRoot, 'assets'), { recursive: true })
  writeFileSync(join(webRoot, 'index.html'), '<!doctype html><title>Underlane</title>')
  writeFileSync(join(webRoot, 'assets', 'main-abc123.js'), 'export {}')
  store = await openStore(join(folder, 'data'))
  for (const [id, name] of [
    [FIRST, 'Alder Road 14'],
    [SECOND, 'Birch Lane 2'],
  ] as const) {
    await store.crossings.insert({ id, document: { name }, made: null, demo: true }, ACT)
  }
  app = buildApp({ store, webRoot, hosts: [], now: () => AT, log: (line) => logged.push(line) })
})
afterAll(async () => {
  await store.close()
  rmSync(folder, { recursive: true, force: true })
})

type ErrorAnswer = { code: string; requestId: string; issues: { path: string; code: string; text: string }[] }
async function errorOf(answer: Response): Promise<ErrorAnswer> {
  const body: ErrorAnswer = await answer.json()
  expect(Object.keys(body).sort()).toEqual(['code', 'issues', 'requestId'])
  expect(body.requestId).toBe(answer.headers.get('X-Request-Id'))
  return body
}
const post = (body: string, headers: Record<string, string> = { 'Content-Type': 'application/json' }) =>
  app.request('/api/plans', { method: 'POST', body, headers })

describe('POST /api/plans turns away', () => {
  test('what is not JSON by its type, before reading it', async () => {
    const form = await post('name=x', { 'Content-Type': 'application/x-www-form-urlencoded' })
    expect(form.status).toBe(415)
    expect((await errorOf(form)).code).toBe('not-json')
    expect((await post('{}', { 'Content-Type': 'text/plain' })).status).toBe(415)
  })

  test('what is not JSON by its content', async () => {
    const answer = await post('{"name":')
    expect(answer.status).toBe(400)
    expect((await errorOf(answer)).code).toBe('bad-json')
  })

  test('more than a megabyte', async () => {
    const answer = await post(JSON.stringify({ name: 'x'.repeat(1_100_000) }))
    expect(answer.status).toBe(413)
    expect((await errorOf(answer)).code).toBe('body-too-large')
  })

  test('a crossing with something missing, all of it at once, each with a sentence', async () => {
    const answer = await post('{"name":"Alder Road 14","depht":{}}', {
      'Content-Type': 'application/json; charset=utf-8',
    })
    expect(answer.status).toBe(422)
    const error = await errorOf(answer)
    expect(error.code).toBe('refused')
    expect(error.issues.map((issue) => issue.path)).toEqual(
      expect.arrayContaining(['line', 'depth', 'depht', 'ground']),
    )
    for (const issue of error.issues) expect(issue.text.length).toBeGreaterThan(5)
  })

  test.each(['null', '[]', '"x"', '7'])('the JSON %s', async (body) => {
    expect((await post(body)).status).toBe(422)
  })

  test('in the language the reader prefers', async () => {
    const headers = {
      'Content-Type': 'application/json',
      'Accept-Language': 'de;q=0.9, es-MX;q=0.8, en;q=0.2',
    }
    const spanish = await errorOf(await post('{}', headers))
    const english = await errorOf(await post('{}'))
    expect(spanish.issues.map((issue) => issue.code)).toEqual(english.issues.map((issue) => issue.code))
    expect(spanish.issues[0]?.text).not.toBe(english.issues[0]?.text)
  })
})

describe('GET /api/crossings', () => {
  test('gives them in pages', async () => {
    const first = await (await app.request('/api/crossings?limit=1')).json()
    expect(first.items.map((item: { id: string }) => item.id)).toEqual([FIRST])
    const second = await (await app.request(`/api/crossings?limit=1&after=${first.next}`)).json()
    expect(second.items.map((item: { id: string }) => item.id)).toEqual([SECOND])
    expect(second.next).toBeNull()
  })

  test.each(['limit=501', 'limit=0', 'limit=ten', 'limit=-1', 'after=x'])('refuses %s', async (query) => {
    const answer = await app.request(`/api/crossings?${query}`)
    expect(answer.status).toBe(400)
    expect((await errorOf(answer)).issues).toHaveLength(1)
  })

  test('gives one with its version as a tag', async () => {
    const answer = await app.request(`/api/crossings/${FIRST}`)
    expect(answer.headers.get('ETag')).toBe('"1"')
    expect(await answer.json()).toMatchObject({
      id: FIRST,
      version: 1,
      demo: true,
      document: { name: 'Alder Road 14' },
    })
  })

  test.each(['33333333-3333-4333-8333-333333333333', 'nothing', '%00'])('does not know %s', async (id) => {
    const answer = await app.request(`/api/crossings/${id}`)
    expect(answer.status).toBe(404)
    expect((await errorOf(answer)).code).toBe('not-found')
  })
})

describe('relations and schemas', () => {
  test('lists relations with what they take and give', async () => {
    const { items } = await (await app.request('/api/relations')).json()
    const deviation = items.find((item: { id: string }) => item.id === 'deviation')
    expect(deviation).toMatchObject({ inputs: { station: { kind: 'length' } } })
  })

  test('evaluates one from the address', async () => {
    const answer = await app.request('/api/relations/deviation?station=30%20ft')
    expect(answer.status).toBe(200)
    const body = await answer.json()
    expect(body.schema).toBe('underlane/relation@1')
    expect(body.outputs.sigmaM).toBeGreaterThan(0)
  })

  test('refuses what is missing, what is not known and what is said twice', async () => {
    expect((await app.request('/api/relations/deviation')).status).toBe(422)
    expect((await app.request('/api/relations/deviation?station=30%20ft&colour=red')).status).toBe(422)
    expect((await app.request('/api/relations/deviation?station=30%20ft&station=31%20ft')).status).toBe(422)
    expect((await app.request('/api/relations/deviatoin?station=30%20ft')).status).toBe(404)
  })

  test('gives JSON Schemas by short and by full name', async () => {
    const short = await (await app.request('/api/schemas/crossing')).json()
    const full = await (await app.request('/api/schemas/crossing@1')).json()
    expect(short).toEqual(full)
    expect(short).toMatchObject({
      type: 'object',
      required: expect.arrayContaining(['name', 'line', 'depth']),
    })
    expect((await app.request('/api/schemas/nothing')).status).toBe(404)
  })
})

describe('pages', () => {
  test.each(['/', '/crossings/1', '/workings'])('%s is the page, asked for anew each time', async (path) => {
    const answer = await app.request(path)
    expect(answer.status).toBe(200)
    expect(answer.headers.get('Content-Type')).toContain('text/html')
    expect(answer.headers.get('Cache-Control')).toBe('no-cache')
    const tag = answer.headers.get('ETag') ?? ''
    expect(tag).not.toBe('')
    expect((await app.request(path, { headers: { 'If-None-Match': tag } })).status).toBe(304)
  })

  test('a file with a hash in its name is kept for good', async () => {
    const answer = await app.request('/assets/main-abc123.js')
    expect(answer.headers.get('Cache-Control')).toContain('immutable')
    expect(answer.headers.get('Content-Type')).toContain('javascript')
  })

  test.each([
    '/assets/gone-1.js',
    '/api/nothing',
    '/../data/underlane.sqlite',
    '/%2e%2e/data/underlane.sqlite',
  ])('%s is not found, and is no page', async (path) => {
    expect((await app.request(path)).status).toBe(404)
  })

  test('nothing from elsewhere runs in them', async () => {
    const policy = (await app.request('/')).headers.get('Content-Security-Policy') ?? ''
    expect(policy).toContain("script-src 'self'")
    expect(policy).not.toContain('unsafe')
    expect(policy).toContain("worker-src 'self'")
    expect(policy).toContain("frame-ancestors 'none'")
  })
})

describe('health and failures', () => {
  test('says it is well', async () => {
    const answer = await app.request('/api/health')
    expect(answer.status).toBe(200)
    expect(answer.headers.get('Cache-Control')).toBe('no-store')
    expect(await answer.json()).toMatchObject({ status: 'ok' })
  })

  const failing = (error: Error) => {
    const fails = () => Promise.reject(error)
    return buildApp({
      store: {
        ...store,
        crossings: {
          find: fails,
          list: fails,
          history: fails,
          insert: fails,
          replace: fails,
          remove: fails,
          restore: fails,
        },
      },
      webRoot: folder,
      hosts: [],
      now: () => AT,
      log: (line) => logged.push(line),
    })
  }

  test('a store that is away is 503, and says when to try again', async () => {
    const answer = await failing(new StoreError('unavailable', '/some/where', 'disk full')).request(
      '/api/health',
    )
    expect(answer.status).toBe(503)
    expect(answer.headers.get('Retry-After')).not.toBeNull()
    expect((await errorOf(answer)).code).toBe('store-unavailable')
  })

  test('a bug of ours is 500, tells the log and not the client', async () => {
    const answer = await failing(new Error('secret detail')).request(`/api/crossings/${FIRST}`)
    expect(answer.status).toBe(500)
    const error = await errorOf(answer)
    expect(JSON.stringify(error)).not.toContain('secret detail')
    expect(logged.at(-1)).toContain('secret detail')
    expect(logged.at(-1)).toContain(error.requestId)
  })
})
