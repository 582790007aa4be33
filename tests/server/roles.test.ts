import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { RoleName } from '../../shared/contracts/access.ts'
import { planToKeep } from '../../src/plan-to-keep.ts'
import { ROUTE_TABLE } from '../../src/server/auth/route-table.ts'
import { NOUN_PATHS, type NounPath } from '../../src/store/nouns.ts'
import type { OpenStore } from '../../src/store/open-store.ts'
import { demoDocument } from '../support/crossings.ts'
import { EXAMPLES } from '../support/noun-examples.ts'
import { type Client, type Office, officeOver } from '../support/office.ts'
import { DATABASES, openAt, type Places } from '../support/store-places.ts'

const ROLES: readonly RoleName[] = ['owner', 'estimator', 'crew-lead', 'mechanic', 'viewer']

/**
 * Written down a second time, by hand, in the order of ROLES: A changes any, O reads all and changes only what is theirs,
 * R reads, - not even that.
 */
const EXPECTED: Readonly<Record<NounPath, string>> = {
  crossings: 'AAORR',
  jobs: 'AAORR',
  customers: 'AAR--',
  tools: 'ARRAR',
  compressors: 'ARRAR',
  hoses: 'ARRAR',
  crews: 'AARRR',
  people: 'AARR-',
  'rate-books': 'AA---',
  quotes: 'AO---',
  days: 'AAORR',
  'bore-logs': 'AOORR',
  'sign-offs': 'AOOOR',
  attachments: 'AOOOR',
  settings: 'ARRRR',
  'tool-templates': 'ARRAR',
  parts: 'ARRAR',
  inspections: 'AROAR',
}

/** Who may use what is about no noun. */
const OTHERS: Readonly<Record<string, readonly RoleName[]>> = {
  'POST /api/plans': ROLES,
  'POST /api/release': ROLES,
  'GET /api/relations': ROLES,
  'GET /api/relations/:id': ROLES,
  'GET /api/session/devices': ROLES,
  'DELETE /api/session/devices/:id': ROLES,
  'POST /api/session/password': ROLES,
  'POST /api/session/second-factor': ROLES,
  'PUT /api/session/second-factor': ROLES,
  'POST /api/session/second-factor/off': ROLES,
  'GET /api/accounts': ['owner'],
  'POST /api/accounts': ['owner'],
  'PUT /api/accounts/:id': ['owner'],
  'POST /api/accounts/:id/code': ['owner'],
  'GET /api/tokens': ['owner'],
  'POST /api/tokens': ['owner'],
  'DELETE /api/tokens/:id': ['owner'],
  'GET /api/shares': ['owner', 'estimator'],
  'POST /api/shares': ['owner', 'estimator'],
  'DELETE /api/shares/:id': ['owner', 'estimator'],
  'GET /api/shares/:id/accesses': ['owner', 'estimator'],
}
const OPEN_TO_ANYONE = [
  'GET /api',
  'GET /api/page.css',
  'GET /api/openapi.json',
  'GET /api/health',
  'GET /api/schemas',
  'GET /api/schemas/:name',
  'GET /api/session',
  'POST /api/session',
  'DELETE /api/session',
  'POST /api/session/code',
  'POST /api/session/code/look',
  'POST /api/shared',
]

const CROSSING = demoDocument('firm-clay-service')
const MADE = planToKeep(CROSSING)
const documentOf = (noun: NounPath) => (noun === 'crossings' ? CROSSING : EXAMPLES[noun])

describe.each(DATABASES)('on %s', (_name, makePlaces) => {
  let places: Places
  let store: OpenStore
  let office: Office
  let owner: Client
  let clients: ReadonlyMap<RoleName, Client>
  beforeAll(async () => {
    places = await makePlaces()
    store = await openAt(await places.fresh())
    office = officeOver(store)
    owner = await office.owner()
    const members = new Map<RoleName, Client>([['owner', owner]])
    for (const role of ROLES.slice(1)) members.set(role, await office.member(owner, role, role))
    clients = members
  }, 60_000)
  afterAll(async () => {
    expect(office.logged).toEqual([])
    await store.close()
    await places.end()
  })

  const loginOf = (role: RoleName) => (role === 'owner' ? 'olga' : role)
  const clientOf = (role: RoleName): Client => {
    const client = clients.get(role)
    if (client === undefined) throw new Error(role)
    return client
  }
  const actOf = (who: string) => ({ who, at: office.at, from: 'test', requestKey: null })

  /** A document of a noun that `who` has made. */
  async function madeBy(noun: NounPath, who: string, bytes = false): Promise<string> {
    const id = randomUUID()
    const document = { name: noun, ...documentOf(noun), ...(bytes ? BYTES_OF : {}) }
    const made = noun === 'crossings' && MADE.ok ? MADE.value : null
    await store[noun].insert({ id, document, made, demo: false }, actOf(who))
    return id
  }
  const BYTES_OF = {
    byteCount: 4,
    sha256: '88d4266fd4e6338d13b845fcf289579d209c897823b9217da3e161936f031589',
  }
  const abcd = new TextEncoder().encode('abcd')

  type Route = (id: string, client: Client) => Promise<number>
  const version = (at: number) => ({ 'If-Match': `"${at}"` })
  const READS: Readonly<Record<string, (noun: NounPath) => Route>> = {
    'GET /api/NOUN': (noun) => async (_id, client) => (await client.get(`/api/${noun}`)).status,
    'GET /api/NOUN/:id': (noun) => async (id, client) => (await client.get(`/api/${noun}/${id}`)).status,
    'GET /api/NOUN/:id/history': (noun) => async (id, client) =>
      (await client.get(`/api/${noun}/${id}/history`)).status,
  }
  const CHANGES: Readonly<Record<string, (noun: NounPath) => Route>> = {
    'PUT /api/NOUN/:id': (noun) => async (id, client) =>
      (await client.send('PUT', `/api/${noun}/${id}`, documentOf(noun), version(1))).status,
    'DELETE /api/NOUN/:id': (noun) => async (id, client) =>
      (await client.send('DELETE', `/api/${noun}/${id}`, undefined, version(1))).status,
    'POST /api/NOUN/:id/restore': (noun) => async (id, client) => {
      await store[noun].remove({ id, expectedVersion: 1 }, actOf('somebody'))
      return (await client.send('POST', `/api/${noun}/${id}/restore`, undefined, version(2))).status
    },
  }

  test('every route is in the table, and the table names no other', () => {
    const routes = office.app.routes
      .filter(({ method, path }) => method !== 'ALL' && path.startsWith('/api'))
      .map(({ method, path }) => `${method} ${path.replace(/(.)\/$/, '$1')}`)
    expect(Object.keys(ROUTE_TABLE).sort()).toEqual([...new Set(routes)].sort())
  })

  test('every route of the table is walked here', () => {
    const nouns = NOUN_PATHS.flatMap((noun) =>
      [...Object.keys(READS), ...Object.keys(CHANGES)].map((route) => route.replace('NOUN', noun)),
    )
    const contents = ['GET /api/attachments/:id/content', 'PUT /api/attachments/:id/content']
    const walked = [...nouns, ...contents, ...Object.keys(OTHERS), ...OPEN_TO_ANYONE]
    expect(walked.sort()).toEqual(Object.keys(ROUTE_TABLE).sort())
  })

  describe.each(NOUN_PATHS)('%s', (noun) => {
    test.each(ROLES)('for the %s', async (role) => {
      const letter = EXPECTED[noun][ROLES.indexOf(role)]
      const client = clientOf(role)
      for (const whose of ['own', 'other'] as const) {
        const who = whose === 'own' ? loginOf(role) : 'somebody'
        for (const [route, walk] of Object.entries(READS)) {
          const status = await walk(noun)(await madeBy(noun, who), client)
          expect([route, whose, status]).toEqual([route, whose, letter === '-' ? 403 : 200])
        }
        const mayChange = letter === 'A' || (letter === 'O' && whose === 'own')
        for (const [route, walk] of Object.entries(CHANGES)) {
          const status = await walk(noun)(await madeBy(noun, who), client)
          expect([route, whose, status]).toEqual([route, whose, mayChange ? 200 : 403])
        }
        if (noun !== 'attachments') continue
        const id = await madeBy(noun, who, true)
        const content = await office.app.request(`/api/attachments/${id}/content`, {
          method: 'PUT',
          body: abcd,
          headers: { 'Content-Type': 'image/jpeg', Cookie: client.cookie ?? '' },
        })
        // Whether they are a picture is asked of those who may send them.
        expect(content.status).toBe(mayChange ? 415 : 403)
        const read = await office.app.request(`/api/attachments/${id}/content`, {
          headers: { Cookie: client.cookie ?? '' },
        })
        expect(read.status).toBe(404)
      }
      const made = await client.send('PUT', `/api/${noun}/${randomUUID()}`, {
        ...documentOf(noun),
        ...(noun === 'days' ? { crossings: [] } : {}),
      })
      expect(made.status).toBe(letter === 'A' || letter === 'O' ? 201 : 403)
    })

    test('for a stranger', async () => {
      const stranger = office.stranger()
      for (const walk of [...Object.values(READS), ...Object.values(CHANGES)]) {
        expect(await walk(noun)(await madeBy(noun, 'somebody'), stranger)).toBe(401)
      }
    })
  })

  test.each(Object.keys(OTHERS))('%s', async (route) => {
    const [method = '', path = ''] = route.split(' ')
    const asked = path.replace(':id', randomUUID())
    const body = method === 'POST' || method === 'PUT' ? { unheardOf: 1 } : undefined
    for (const role of ROLES) {
      const { status } = await clientOf(role).send(method, asked, body)
      const isRefused = status === 403
      expect([role, isRefused]).toEqual([role, !OTHERS[route]?.includes(role)])
      expect(status).not.toBe(401)
    }
    expect((await office.stranger().send(method, asked, body)).status).toBe(401)
  })

  test.each(OPEN_TO_ANYONE)('%s is open to anyone', async (route) => {
    const [method = '', path = ''] = route.split(' ')
    const answer = await office.app.request(path.replace(':name', 'crossing@1'), {
      method,
      ...(method === 'POST' ? { body: '{}', headers: { 'Content-Type': 'application/json' } } : {}),
    })
    expect([200, 422]).toContain(answer.status)
  })

  test('an owner without a second factor may do what an estimator may, and is told why not more', async () => {
    const half = await office.member(owner, 'owner', 'half')
    const answer = await half.get('/api/accounts')
    expect(answer.status).toBe(403)
    expect(answer.body).toMatchObject({ code: 'second-factor-needed' })
    expect((await half.get('/api/jobs')).status).toBe(200)
    const id = await madeBy('settings', 'somebody')
    expect((await half.send('PUT', `/api/settings/${id}`, EXAMPLES.settings, version(1))).status).toBe(403)
  })
})
