import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { RoleName } from '../../shared/contracts/access.ts'
import { newTokenAnswer } from '../../shared/contracts/access.ts'
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
}

/** Who may use what is about no noun. */
const OTHERS: Readonly<Record<string, readonly RoleName[]>> = {
  'POST /api/plans': ROLES,
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

  test('an id that is written another way is no way round', async () => {
    const id = await madeBy('crossings', 'somebody')
    const lead = clientOf('crew-lead')
    for (const written of [
      id.toUpperCase(),
      `%${id.charCodeAt(0).toString(16)}${id.slice(1)}`,
      `${id}%20`,
      `./${id}`,
    ]) {
      for (const tail of [written, `${written}/`, `../crossings/${written}`]) {
        const { status } = await lead.send('PUT', `/api/crossings/${tail}`, CROSSING, version(1))
        expect([400, 403, 404], `${tail} ${status}`).toContain(status)
      }
    }
    expect((await store.crossings.find(id))?.version).toBe(1)
  })

  describe('what is assigned is one’s own', () => {
    test('a crossing on a day of one’s crew, its logs and the day; not the day of another crew', async () => {
      const [person, card, crew, foreign] = [randomUUID(), randomUUID(), randomUUID(), randomUUID()]
      const insert = (noun: NounPath, id: string, document: { name: string }) =>
        store[noun].insert({ id, document, made: null, demo: false }, actOf('somebody'))
      await insert('people', person, { name: 'Lee' })
      await insert('people', card, Object.assign({ name: 'Kim' }, { crew }))
      await insert('crews', crew, Object.assign({ name: 'North' }, { people: [person] }))
      await insert('crews', foreign, { name: 'South' })
      const mine = await madeBy('crossings', 'somebody')
      const theirs = await madeBy('crossings', 'somebody')
      const day = randomUUID()
      const theirDay = randomUUID()
      const onDay = (id: string, of: string, crossing: string) =>
        insert(
          'days',
          id,
          Object.assign({ name: 'Monday' }, { on: '2026-03-02', crew: of, crossings: [crossing] }),
        )
      await onDay(day, crew, mine)
      await onDay(theirDay, foreign, theirs)
      const log = randomUUID()
      await insert(
        'bore-logs',
        log,
        Object.assign({ name: 'log' }, { ...EXAMPLES['bore-logs'], crossing: mine }),
      )
      for (const [login, who] of [
        ['lee', person],
        ['kim', card],
      ] as const) {
        const lead = await office.member(owner, 'crew-lead', login, who)
        const put = async (path: string, document: unknown, at: number) =>
          (await lead.send('PUT', `/api/${path}`, document, version(at))).status
        const at = async (noun: NounPath, id: string) => (await store[noun].find(id))?.version ?? 0
        const put1 = async (noun: NounPath, id: string, document: unknown) =>
          put(`${noun}/${id}`, document, await at(noun, id))
        expect(await put1('crossings', mine, CROSSING)).toBe(200)
        expect(await put1('crossings', theirs, CROSSING)).toBe(403)
        expect(await put1('bore-logs', log, { ...EXAMPLES['bore-logs'], crossing: mine })).toBe(200)
        const monday = { name: 'Monday', on: '2026-03-02', crew, crossings: [mine] }
        expect(await put1('days', day, monday)).toBe(200)
        expect(await put1('days', theirDay, monday)).toBe(403)
        // Nobody makes a crossing theirs by putting it on a day of their own.
        expect(await put1('days', day, { ...monday, crossings: [mine, theirs] })).toBe(403)
        const fresh = await lead.send('PUT', `/api/days/${randomUUID()}`, { ...monday, crossings: [theirs] })
        expect(fresh.status).toBe(403)
      }
      const stranger = await office.member(owner, 'crew-lead', 'max')
      expect((await stranger.send('PUT', `/api/crossings/${mine}`, CROSSING, version(3))).status).toBe(403)
    })
  })

  test('a change is in the history under the login of whoever made it, or the name of the script', async () => {
    const id = randomUUID()
    await clientOf('estimator').send('PUT', `/api/jobs/${id}`, EXAMPLES.jobs)
    const made = newTokenAnswer.parse(
      (await owner.post('/api/tokens', { name: 'night job', role: 'estimator' })).body,
    )
    const script = office.stranger({ Authorization: `Bearer ${made.token}` })
    expect(
      (await script.send('PUT', `/api/jobs/${id}`, { ...EXAMPLES.jobs, name: 'b' }, version(1))).status,
    ).toBe(200)
    const { items } = await store.jobs.history(id, { after: null, limit: 9 })
    expect(items.map(({ who }) => who)).toEqual([
      'estimator',
      `token night job (${made.item.id.slice(0, 8)})`,
    ])
  })
})
