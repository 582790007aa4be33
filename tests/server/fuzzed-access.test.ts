import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { ROUTE_TABLE } from '../../src/server/auth/route-table.ts'
import type { OpenStore } from '../../src/store/open-store.ts'
import { type Client, type Office, officeOver, PASSWORD } from '../support/office.ts'
import { DATABASES, openAt, type Places } from '../support/store-places.ts'

const REQUESTS = 600
const SEED = 20_261_124

const odd = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 40 }),
  fc.constantFrom(
    '',
    '\u0000',
    '\ud800',
    "' or 1=1 --",
    '😀',
    '__proto__',
    PASSWORD,
    'olga',
    'x'.repeat(5000),
  ),
)
const id = fc.oneof(fc.uuid(), odd)
const KEYS = ['login', 'password', 'code', 'name', 'role', 'current', 'secret', 'crossing', 'days', 'token']
const value = fc.oneof(odd, fc.uuid(), fc.constantFrom('owner', 'viewer', 7, 90, null, true, [], {}))
const body = fc.oneof(
  {
    weight: 5,
    arbitrary: fc
      .dictionary(fc.constantFrom(...KEYS), value, { maxKeys: 5 })
      .map((each) => JSON.stringify(each)),
  },
  { weight: 1, arbitrary: fc.json({ maxDepth: 4 }) },
  { weight: 1, arbitrary: odd },
)
const route = fc.constantFrom(...Object.keys(ROUTE_TABLE))
const header = fc.stringMatching(/^[\x20-\x7e]{0,40}$/)
const headers = fc.record(
  {
    'Content-Type': fc.oneof({ weight: 8, arbitrary: fc.constant('application/json') }, header),
    'If-Match': fc.oneof(fc.constant('"1"'), header),
    'X-Forwarded-For': fc.oneof(fc.ipV4(), header),
    'User-Agent': header,
  },
  { requiredKeys: ['Content-Type'] },
)
const request = fc.record({ route, id, body, headers })

describe.each(DATABASES)('on %s', (_name, makePlaces) => {
  let places: Places
  let store: OpenStore
  let office: Office
  let askers: readonly Client[]
  beforeAll(async () => {
    places = await makePlaces()
    store = await openAt(await places.fresh())
    office = officeOver(store, 'secure', 1)
    const owner = await office.owner()
    const lead = await office.member(owner, 'crew-lead', 'lee')
    const broken = ['Bearer \t', 'Bearer underlane_x', 'x'.repeat(4000)].map((Authorization) =>
      office.stranger({ Authorization }),
    )
    const strange = office.stranger()
    strange.cookie = `__Host-underlane=${'%00'.repeat(20)}; __Host-underlane=x`
    askers = [owner, lead, office.stranger(), strange, ...broken]
  }, 60_000)
  afterAll(async () => {
    await store.close()
    await places.end()
  })

  test(`${REQUESTS} odd requests at the doors of access: none is our failure, and no refusal has another shape`, async () => {
    const seen = new Set<number>()
    for (const [at, each] of fc.sample(request, { numRuns: REQUESTS, seed: SEED }).entries()) {
      const [method = '', path = ''] = each.route.split(' ')
      const asker = askers[at % askers.length]
      // A session that ends on the way would leave nothing to try.
      if (asker === undefined || (method === 'DELETE' && path === '/api/session')) continue
      const asked = path.replace(/:\w+/, encodeURIComponent(each.id.replace(/\p{Cs}/gu, '')) || 'x')
      const answer = await office.app.request(asked, {
        method,
        ...(method === 'GET' || method === 'DELETE' ? {} : { body: each.body }),
        headers: {
          ...each.headers,
          ...asker.headers,
          ...(asker.cookie === null ? {} : { Cookie: asker.cookie }),
        },
      })
      seen.add(answer.status)
      expect(answer.status, `${each.route} ${JSON.stringify(each).slice(0, 400)}`).toBeLessThan(500)
      if (answer.status < 400) continue
      expect(await answer.json()).toMatchObject({ code: expect.any(String), requestId: expect.any(String) })
    }
    expect(office.logged).toEqual([])
    expect([...seen]).toEqual(expect.arrayContaining([200, 400, 401, 403, 404, 415, 422]))
  }, 120_000)

  test('an id that one database could not even look for is answered as one that is not there', async () => {
    for (const path of Object.keys(ROUTE_TABLE).filter((each) => each.includes(':id'))) {
      const [method = '', pattern = ''] = path.split(' ')
      for (const asker of askers.slice(0, 2)) {
        const { status } = await asker.send(
          method,
          pattern.replace(':id', '%00'),
          method === 'GET' ? undefined : {},
        )
        expect(status, path).toBeLessThan(500)
        expect(status, path).toBeGreaterThanOrEqual(400)
      }
    }
    expect(office.logged).toEqual([])
  })
})
