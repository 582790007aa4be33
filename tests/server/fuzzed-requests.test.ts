import { createHash } from 'node:crypto'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { newTokenAnswer } from '../../shared/contracts/access.ts'
import { buildApp } from '../../src/server/app.ts'
import { verifyHistory } from '../../src/store/audit.ts'
import { NOUN_PATHS, type NounPath } from '../../src/store/nouns.ts'
import { type OpenStore, openDatabase, openStore } from '../../src/store/open-store.ts'
import { DEMO_NAMES, demoDocument } from '../support/crossings.ts'
import { EXAMPLES } from '../support/noun-examples.ts'
import { officeOver, PASSWORD } from '../support/office.ts'
import { photoOfATelephone } from '../support/photos.ts'

type App = ReturnType<typeof buildApp>

const REQUESTS = process.env.UNDERLANE_SLOW === '1' ? 50_000 : 2000
const ID = '00000000-0000-4000-8000-000000000001'
const PHOTO = photoOfATelephone('image/jpeg', 6, 'N 38.0293')

let folder: string
let store: OpenStore
let app: App
const logged: string[] = []
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'underlane-fuzz-'))
  store = await openStore(join(folder, 'one'))
  const now = () => new Date('2026-03-02T09:00:00Z')
  app = buildApp({ store, webRoot: folder, hosts: [], now, log: (line) => logged.push(line) })
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
const mostly = <Value>(usual: fc.Arbitrary<Value>, odd: fc.Arbitrary<Value>) =>
  fc.oneof({ weight: 20, arbitrary: usual }, { weight: 1, arbitrary: odd })

/** One of few, so that requests meet. */
const id = fc.nat(3).map((n) => `${ID.slice(0, -1)}${n}`)
const query = fc.dictionary(
  fc.constantFrom('after', 'limit', 'removed', 'of', 'on', 'station', '__proto__'),
  fc.oneof(fc.constantFrom('1', ID, 'true', '2026-03-02', '30 ft'), oddText),
  { maxKeys: 3 },
)
const headers = fc.record(
  {
    'Content-Type': mostly(fc.constant(''), headerText),
    'If-Match': mostly(
      fc.integer({ min: 1, max: 3 }).map((version) => `"${version}"`),
      headerText,
    ),
    'Idempotency-Key': mostly(fc.constantFrom('k1', 'k2', 'k3'), headerText),
    'Accept-Language': mostly(fc.constantFrom('es', 'en;q=0.1, es'), headerText),
    'Accept-Encoding': mostly(fc.constant('gzip'), headerText),
    Authorization: mostly(fc.constantFrom('', 'Bearer x'), headerText),
    Cookie: mostly(fc.constant(''), headerText),
    Origin: mostly(fc.constant('http://localhost'), headerText),
  },
  { requiredKeys: ['Content-Type'] },
)

type Body = string | Uint8Array
const examples = {
  ...EXAMPLES,
  crossings: demoDocument(DEMO_NAMES[0] ?? ''),
  attachments: {
    ...EXAMPLES.attachments,
    byteCount: PHOTO.length,
    sha256: createHash('sha256').update(PHOTO).digest('hex'),
  },
} as const satisfies Readonly<Record<NounPath, Record<string, unknown>>>

/** A whole document with something put in the place of one of its parts, or into one of them. */
const spoiled = (document: Record<string, unknown>): fc.Arbitrary<Body> =>
  fc
    .tuple(
      fc.oneof(fc.constantFrom(...Object.keys(document)), fc.string({ maxLength: 8 })),
      fc.jsonValue({ maxDepth: 3 }),
      fc.boolean(),
    )
    .map(([key, value, isInside]) => {
      const part = document[key]
      const put = isInside && Array.isArray(part) ? [...part, value] : value
      return JSON.stringify({ ...document, [key]: put })
    })
const odd: fc.Arbitrary<Body> = fc.oneof(
  fc.json({ maxDepth: 6 }),
  oddText,
  fc.uint8Array({ maxLength: 60 }),
  fc.constantFrom(
    '{"__proto__":1}',
    '['.repeat(50_000),
    '1e999',
    '{"name":"\\ud800"}',
    '{"name":"\\u0000"}',
    '',
  ),
)
const cutPhoto: fc.Arbitrary<Body> = fc
  .tuple(fc.nat(PHOTO.length), fc.uint8Array({ maxLength: 8 }))
  .map(([at, put]) => Buffer.concat([PHOTO.subarray(0, at), put, PHOTO.subarray(at)]))

/** What the doors of people, scripts and links get. */
const ACCESS_BODIES: readonly (readonly [
  string,
  readonly [Record<string, unknown>, ...Record<string, unknown>[]],
])[] = [
  ['/api/session', [{ login: 'olga', password: PASSWORD }, { code: 'ABCD-EFGH' }, { password: PASSWORD }]],
  ['/api/accounts', [{ login: 'ada', name: 'Ada', role: 'viewer' }]],
  ['/api/tokens', [{ name: 'night job', role: 'viewer' }]],
  ['/api/shares', [{ crossing: ID, name: 'the town', days: 30 }]],
  ['/api/shared', [{ token: 'x' }]],
]

/** What a route usually gets, and what it does not. */
function bodyFor(path: string): fc.Arbitrary<Body> {
  if (path.endsWith('/content')) return fc.oneof(fc.constant<Body>(PHOTO), cutPhoto, odd)
  const access = ACCESS_BODIES.find(([start]) => path.startsWith(start))?.[1]
  if (access !== undefined) {
    return fc.oneof(
      fc.constantFrom(...access.map((each): Body => JSON.stringify(each))),
      spoiled(access[0]),
      odd,
    )
  }
  const noun = NOUN_PATHS.find((each) => path.startsWith(`/api/${each}`)) ?? 'crossings'
  const document = examples[noun]
  const named = fc.constantFrom('a', 'b').map((name): Body => JSON.stringify({ ...document, name }))
  return fc.oneof(
    { weight: 4, arbitrary: named },
    { weight: 3, arbitrary: spoiled(document) },
    { weight: 1, arbitrary: odd },
  )
}

type Route = { readonly method: string; readonly path: string }

const requestTo = ({ method, path }: Route) =>
  fc.record({
    method: mostly(
      fc.constant(method),
      fc.constantFrom('GET', 'PUT', 'POST', 'DELETE', 'PATCH', 'OPTIONS', 'HEAD'),
    ),
    path: fc
      .array(mostly(id, oddText.map(encodeURIComponent)), { minLength: 3, maxLength: 3 })
      .map((parts) => parts.reduce((filled, part) => filled.replace(/:\w+(\{[^}]*\})?/, part), path)),
    query,
    headers,
    body: bodyFor(path),
  })

/** Every way in there is, found in the server itself: a route nobody has thought of here is fuzzed too. */
function everyRoute(server: App): readonly Route[] {
  const found = server.routes.filter(({ method, path }) => method !== 'ALL' && path.startsWith('/api'))
  const byName = new Map(found.map(({ method, path }) => [`${method} ${path}`, { method, path }]))
  return [...byName.values()]
}

const usualType = (path: string) => (path.endsWith('/content') ? 'image/jpeg' : 'application/json')

function anyRequestTo(server: App) {
  const routes = everyRoute(server)
  expect(routes.length).toBeGreaterThan(NOUN_PATHS.length * 6)
  const changes = routes.filter(({ method }) => method !== 'GET')
  const saves = routes.filter(({ method, path }) => method === 'PUT' && path.endsWith('/:id'))
  expect(saves.length).toBeGreaterThanOrEqual(NOUN_PATHS.length)
  const nowhere = fc.stringMatching(/^[!-~]{0,30}$/).map((text) => ({ method: 'GET', path: `/api/${text}` }))
  return fc.oneof(
    { weight: 2, arbitrary: fc.constantFrom(...saves).chain(requestTo) },
    { weight: 3, arbitrary: fc.constantFrom(...changes).chain(requestTo) },
    { weight: 2, arbitrary: fc.constantFrom(...routes).chain(requestTo) },
    { weight: 1, arbitrary: nowhere.chain(requestTo) },
  )
}

type Asked = { readonly pathname: string; readonly method: string; readonly status: number }
type OddRequest = typeof anyRequestTo extends (server: App) => fc.Arbitrary<infer Each> ? Each : never

async function askAndLook(server: App, each: OddRequest, more: Record<string, string>): Promise<Asked> {
  const isBodiless = each.method === 'GET' || each.method === 'HEAD'
  const asked = new URL(each.path, 'http://localhost')
  for (const [key, value] of Object.entries(each.query)) asked.searchParams.set(key, value)
  const type = each.headers['Content-Type'] || usualType(asked.pathname)
  const answer = await server.request(asked.href, {
    method: each.method,
    headers: { ...each.headers, ...more, 'Content-Type': type },
    ...(isBodiless ? {} : { body: typeof each.body === 'string' ? each.body : new Uint8Array(each.body) }),
  })
  expect(answer.status).toBeLessThan(500)
  const isReadable = each.method !== 'HEAD' && !answer.headers.has('Content-Encoding')
  if (answer.status >= 400 && isReadable) {
    expect(await answer.json()).toMatchObject({ code: expect.any(String), requestId: expect.any(String) })
  }
  return { pathname: asked.pathname, method: each.method, status: answer.status }
}

/** Each request meets what the ones before have left; so what fails is not made smaller. */
const go = <Each>(numRuns: number, each: fc.Arbitrary<Each>, ask: (each: Each) => Promise<void>) =>
  fc.assert(fc.asyncProperty(each, ask), { numRuns, endOnFailure: true })

async function expectWholeHistory(data: string): Promise<void> {
  const database = await openDatabase({ dataFolder: join(folder, data), databaseUrl: null })
  expect((await verifyHistory(database)).broken).toBeNull()
  await database.queries.destroy()
}

test(`${REQUESTS} odd requests: none is our failure, and every refusal has the one shape`, async () => {
  const seen = new Set<number>()
  const reached = new Set<string>()
  await go(REQUESTS, anyRequestTo(app), async (each) => {
    const { pathname, method, status } = await askAndLook(app, each, {})
    seen.add(status)
    if (status < 300) reached.add(`${method} ${pathname.split('/')[2]}`)
  })
  expect(logged).toEqual([])
  // Odd, yet not so odd that all of them fall at the first fence: each noun has been written to.
  expect([...seen]).toEqual(expect.arrayContaining([200, 201, 400, 403, 404, 409, 415, 422, 428]))
  expect(NOUN_PATHS.filter((path) => !reached.has(`PUT ${path}`))).toEqual([])
  await expectWholeHistory('one')
}, 1_200_000)

test(`${REQUESTS / 4} more to a server of an office, from its owner, a script and strangers`, async () => {
  const kept = await openStore(join(folder, 'office'))
  const office = officeOver(kept)
  const owner = await office.owner()
  const made = await owner.post('/api/tokens', { name: 'night job', role: 'estimator' })
  const { token } = newTokenAnswer.parse(made.body)
  const askers = fc.constantFrom<Record<string, string>[]>(
    { Cookie: owner.cookie ?? '' },
    { Authorization: `Bearer ${token}` },
    {},
  )
  const seen = new Set<number>()
  await go(REQUESTS / 4, fc.tuple(anyRequestTo(office.app), askers), async ([each, asker]) => {
    // Who signs out is a stranger from then on, and there would be little left to see.
    const isSignOut = each.method === 'DELETE' && each.path.startsWith('/api/session')
    const { status } = await askAndLook(office.app, each, isSignOut ? {} : asker)
    seen.add(status)
  })
  expect(office.logged).toEqual([])
  expect([...seen]).toEqual(expect.arrayContaining([200, 201, 400, 401, 403, 404, 422]))
  await kept.close()
  await expectWholeHistory('office')
}, 1_200_000)
