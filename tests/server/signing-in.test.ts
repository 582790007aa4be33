import { tmpdir } from 'node:os'
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest'
import { z } from 'zod'
import { sessionAnswer } from '../../shared/contracts/access.ts'
import { buildApp } from '../../src/server/app.ts'
import { firstOwnerCode } from '../../src/server/auth/first-owner.ts'
import { verifyHistory } from '../../src/store/audit.ts'
import { type OpenStore, openDatabase, type StorePlace } from '../../src/store/open-store.ts'
import { CHEAP, Client, type Office, officeOver, PASSWORD, type Sent } from '../support/office.ts'
import { DATABASES, openAt, type Places } from '../support/store-places.ts'

const HOUR_MS = 60 * 60 * 1000
const START = new Date('2026-03-02T09:00:00Z')
const later = (hours: number, from = START) => new Date(from.getTime() + hours * HOUR_MS)

const codeIn = ({ body }: Sent) => z.object({ code: z.string() }).parse(body).code
const sessionIn = ({ body }: Sent) => sessionAnswer.parse(body)

describe.each(DATABASES)('on %s', (_name, makePlaces) => {
  let places: Places
  let place: StorePlace
  let store: OpenStore
  let office: Office
  let owner: Client
  beforeAll(async () => {
    places = await makePlaces()
    place = await places.fresh()
    store = await openAt(place)
    office = officeOver(store)
    owner = await office.owner()
  }, 60_000)
  afterEach(() => {
    office.at = START
    expect(office.logged).toEqual([])
  })
  afterAll(async () => {
    const database = await openDatabase(place)
    expect((await verifyHistory(database)).broken).toBeNull()
    await database.queries.destroy()
    await store.close()
    await places.end()
  })

  /** A different place each time, so that one test's failures keep no other waiting. */
  let used = 0
  const elsewhere = () => office.stranger()
  const fresh = async (role: 'estimator' | 'viewer' = 'estimator') => {
    const login = `user${++used}`
    return { login, client: await office.member(owner, role, login) }
  }
  const signIn = (client: Client, login: string, rest: Record<string, string> = {}) =>
    client.post('/api/session', { login, password: PASSWORD, ...rest })

  test('the first owner needs the code of the console, and it works once', async () => {
    const empty = await openAt(await places.fresh())
    const other = officeOver(empty)
    const client = other.stranger()
    expect(sessionIn(await client.get('/api/session'))).toEqual({
      accounts: true,
      needsFirstOwner: true,
      signedIn: null,
    })
    const first = await firstOwnerCode(empty.access, other.at)
    const code = await firstOwnerCode(empty.access, other.at)
    const about = { password: PASSWORD, login: 'Olga', name: 'Olga' }
    // A second start takes the place of the first.
    expect((await client.post('/api/session/code', { ...about, code: first })).status).toBe(401)
    expect((await client.post('/api/session/code', { ...about, code: 'AAAA-BBBB-CCCC-DDDD' })).status).toBe(
      401,
    )
    expect((await client.post('/api/session/code/look', { code })).body).toMatchObject({
      purpose: 'first-owner',
    })
    expect((await client.post('/api/session/code', { password: PASSWORD, code })).status).toBe(422)
    const typed = ` ${code?.toLowerCase().replaceAll('-', ' ').replaceAll('0', 'o')}`
    const made = await client.post('/api/session/code', { ...about, code: typed })
    expect(made.status).toBe(200)
    expect(sessionIn(made).signedIn).toMatchObject({ login: 'olga', role: 'owner', mayDo: 'estimator' })
    expect((await other.stranger().post('/api/session/code', { ...about, code, login: 'eve' })).status).toBe(
      401,
    )
    expect(await firstOwnerCode(empty.access, other.at)).toBeNull()
    await empty.close()
  })

  test('a code is over after its day', async () => {
    const empty = await openAt(await places.fresh())
    const other = officeOver(empty)
    const code = await firstOwnerCode(empty.access, other.at)
    other.at = later(25)
    const about = { code, password: PASSWORD, login: 'olga', name: 'Olga' }
    expect((await other.stranger().post('/api/session/code', about)).status).toBe(401)
    await empty.close()
  })

  test('without a session only what is open to anyone is answered', async () => {
    const stranger = office.stranger()
    for (const path of ['/api/crossings', '/api/nothing', '/api/accounts', '/api/session/devices']) {
      const answer = await stranger.get(path)
      expect(answer.status, path).toBe(401)
      expect(codeIn(answer)).toBe('not-signed-in')
      expect(answer.headers.get('Cache-Control')).toBe('no-store')
    }
    expect((await stranger.get('/api/health')).status).toBe(200)
  })

  test('the cookie is for this host alone, over https, and out of reach of scripts', async () => {
    const { login } = await fresh()
    const given = (await signIn(elsewhere(), login)).headers.get('Set-Cookie') ?? ''
    expect(given).toMatch(/^__Host-underlane=[\w-]{43};/)
    for (const part of ['HttpOnly', 'Secure', 'SameSite=Lax', 'Path=/', 'Max-Age=2592000']) {
      expect(given).toContain(part)
    }
    expect(given).not.toContain('Domain')
    const plain = officeOver(store, 'plain').stranger()
    const answer = await signIn(plain, login)
    expect(answer.headers.get('Set-Cookie')).toMatch(/^underlane-session=[\w-]{43};(?!.*Secure).*HttpOnly/)
  })

  test('a name nobody has is answered as a wrong password is', async () => {
    const { login } = await fresh()
    const wrong = await elsewhere().post('/api/session', { login, password: 'wrong but long enough' })
    const unknown = await elsewhere().post('/api/session', { login: 'nobody-1', password: PASSWORD })
    for (const answer of [wrong, unknown]) {
      expect(answer.status).toBe(401)
      expect(answer.body).toMatchObject({ code: 'wrong-credentials', issues: [] })
      expect(answer.headers.get('Set-Cookie')).toBeNull()
    }
    expect(Object.keys(wrong.body ?? {})).toEqual(Object.keys(unknown.body ?? {}))
  })

  test('a name nobody has is verified as one that somebody has: once, against a hash of the same cost', async () => {
    const { login } = await fresh()
    const verified: string[] = []
    const counting = {
      ...CHEAP,
      verify: (hash: string, password: string) => {
        verified.push(hash.replace(/[^$]+\$[^$]+$/, ''))
        return CHEAP.verify(hash, password)
      },
    }
    const app = buildApp({
      store,
      webRoot: tmpdir(),
      hosts: [],
      now: () => START,
      log: () => {},
      accounts: { cookies: 'secure', hashing: counting },
    })
    for (const name of [login, 'nobody-3']) {
      await new Client(app).post('/api/session', { login: name, password: 'wrong but long enough' })
    }
    expect(verified).toEqual(['$argon2id$v=19$m=8,t=1,p=1$', '$argon2id$v=19$m=8,t=1,p=1$'])
  })

  test('each failure makes the next wait longer, known or not; nobody is locked out for good', async () => {
    const { login } = await fresh()
    const waits: Record<string, number[]> = {}
    for (const name of [login, 'nobody-2']) {
      office.at = START
      const proxied = officeOver(store, 'secure', 1)
      const client = proxied.stranger({ 'X-Forwarded-For': `10.1.1.${++used}` })
      const found: number[] = []
      for (let failures = 0; failures < 8; failures++) {
        proxied.at = new Date(office.at)
        let answer = await client.post('/api/session', { login: name, password: 'wrong but long enough' })
        let waited = 0
        while (answer.status === 429) {
          waited = Number(answer.headers.get('Retry-After'))
          expect(waited).toBeGreaterThan(0)
          proxied.at = new Date(proxied.at.getTime() + waited * 1000)
          answer = await client.post('/api/session', { login: name, password: 'wrong but long enough' })
        }
        expect(answer.status).toBe(401)
        office.at = proxied.at
        found.push(waited)
      }
      waits[name] = found
    }
    expect(waits[login]).toEqual([0, 0, 0, 1, 2, 4, 8, 16])
    expect(waits['nobody-2']).toEqual(waits[login])
    office.at = later(1)
    expect((await signIn(elsewhere(), login)).status).toBe(200)
  })

  test('many tries at once are no way round the waiting', async () => {
    const { login } = await fresh()
    const tries = Array.from({ length: 12 }, () =>
      elsewhere().post('/api/session', { login, password: 'wrong but long enough' }),
    )
    const statuses = (await Promise.all(tries)).map(({ status }) => status)
    expect(statuses.filter((status) => status === 401)).toHaveLength(3)
    expect(statuses.filter((status) => status === 429)).toHaveLength(9)
    // Whoever has the right password waits as well, for a second.
    expect((await signIn(elsewhere(), login)).status).toBe(429)
    office.at = new Date(START.getTime() + 2000)
    expect((await signIn(elsewhere(), login)).status).toBe(200)
  })

  test('a session ends after 12 h unused, and after 30 days whatever happens', async () => {
    const { client } = await fresh()
    office.at = later(11.9)
    expect((await client.get('/api/jobs')).status).toBe(200)
    office.at = later(23.7)
    expect((await client.get('/api/jobs')).status).toBe(200)
    office.at = later(35.8)
    expect((await client.get('/api/jobs')).status).toBe(401)
    office.at = START
    expect((await client.get('/api/jobs')).status).toBe(401)
    const { client: busy } = await fresh()
    for (let hours = 0; hours < 30 * 24; hours += 11) {
      office.at = later(hours)
      expect((await busy.get('/api/jobs')).status).toBe(200)
    }
    office.at = later(30 * 24)
    expect((await busy.get('/api/jobs')).status).toBe(401)
  })

  test('a sign-in begins a new session and ends the one it came with', async () => {
    const { login, client } = await fresh()
    const before = client.cookie
    expect((await signIn(client, login)).status).toBe(200)
    expect(client.cookie).not.toBe(before)
    const stale = office.stranger()
    stale.cookie = before
    expect((await stale.get('/api/jobs')).status).toBe(401)
    expect((await client.get('/api/jobs')).status).toBe(200)
  })

  test('signing out ends the session, not only its cookie', async () => {
    const { client } = await fresh()
    const before = client.cookie
    expect((await client.send('DELETE', '/api/session')).status).toBe(200)
    expect(client.cookie).toBeNull()
    client.cookie = before
    expect((await client.get('/api/jobs')).status).toBe(401)
  })

  test('an answer never repeats a secret, and no secret is in the history', async () => {
    const long = `SECRET-${'x'.repeat(300)}`
    const refused = await elsewhere().post('/api/session', { login: 'x', password: long })
    expect(refused.status).toBe(422)
    expect(JSON.stringify(refused.body)).not.toContain('SECRET')
    const database = await openDatabase(place)
    const lines = await database.queries.selectFrom('revision').selectAll().execute()
    const accounts = await database.queries.selectFrom('account').selectAll().execute()
    const sessions = await database.queries.selectFrom('session').selectAll().execute()
    await database.queries.destroy()
    const history = JSON.stringify(lines)
    expect(lines.some(({ noun }) => noun === 'account')).toBe(true)
    for (const { password_hash: hash, totp_secret: secret } of accounts) {
      expect(hash).toMatch(/^\$argon2id\$v=19\$m=8,t=1,p=1\$/)
      expect(history).not.toContain(hash)
      if (secret !== null) expect(history).not.toContain(secret)
    }
    for (const { token_hash: hash } of sessions) expect(hash).toMatch(/^[0-9a-f]{64}$/)
    expect(JSON.stringify(sessions)).not.toContain(owner.cookie?.split('=')[1])
  })
})
