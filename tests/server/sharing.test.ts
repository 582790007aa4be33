import { randomUUID } from 'node:crypto'
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest'
import {
  accountList,
  newCodeAnswer,
  newShareAnswer,
  newTokenAnswer,
  shareAccessList,
  shareList,
  tokenList,
} from '../../shared/contracts/access.ts'
import { sharedPlan } from '../../shared/contracts/shared-plan.ts'
import { type OpenStore, openDatabase, type StorePlace } from '../../src/store/open-store.ts'
import { demoDocument } from '../support/crossings.ts'
import { type Client, type Office, officeOver, PASSWORD, withFactor } from '../support/office.ts'
import { DATABASES, openAt, type Places } from '../support/store-places.ts'

const START = new Date('2026-03-02T09:00:00Z')
const DAY_MS = 24 * 60 * 60 * 1000
const CROSSING = { ...demoDocument('curb-to-cellar'), name: 'Curb to cellar', rates: 'example' }

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
    await store.close()
    await places.end()
  })

  describe('a link', () => {
    const crossing = randomUUID()
    const share = async (days: number) =>
      newShareAnswer.parse((await owner.post('/api/shares', { crossing, name: 'gas company', days })).body)
    const look = (token: string) => office.stranger().post('/api/shared', { token })
    beforeAll(async () => {
      expect((await owner.send('PUT', `/api/crossings/${crossing}`, CROSSING)).status).toBe(201)
    })

    test('shows the listed fields and no other', async () => {
      const { token, item } = await share(30)
      expect(Buffer.from(token, 'base64url')).toHaveLength(16)
      const answer = await look(token)
      expect(answer.status).toBe(200)
      // The schema is strict: a field that is not in the list fails here.
      const shown = sharedPlan.parse(answer.body)
      expect(shown.name).toBe(CROSSING.name)
      expect(shown.plan?.lines.length).toBeGreaterThan(0)
      expect(shown.plan?.drawing).toMatch(/^<\?xml.*<svg/s)
      expect(shown.plan?.drawing).not.toContain('<script')
      const text = JSON.stringify(answer.body)
      for (const hidden of [
        'SECRET',
        'price',
        'rates',
        'USD',
        'olga',
        'workings',
        'MinorUnits',
        'compressor',
      ])
        expect(text).not.toContain(hidden)
      expect(Date.parse(item.expiresAt) - START.getTime()).toBe(30 * DAY_MS)
    })

    test('speaks the reader’s language and units', async () => {
      const { token } = await share(1)
      const spanish = office.stranger({ 'Accept-Language': 'es' })
      const shown = sharedPlan.parse((await spanish.post('/api/shared', { token, units: 'si' })).body)
      const english = sharedPlan.parse((await look(token)).body)
      expect(shown.plan?.statusText).not.toBe(english.plan?.statusText)
    })

    test('lasts at most 90 days, ends on its day, and opens nothing else', async () => {
      for (const days of [0, 91, 1.5, -1]) {
        expect((await owner.post('/api/shares', { crossing, name: 'x', days })).status).toBe(422)
      }
      const { token } = await share(90)
      office.at = new Date(START.getTime() + 90 * DAY_MS - 1)
      expect((await look(token)).status).toBe(200)
      office.at = new Date(START.getTime() + 90 * DAY_MS)
      expect((await look(token)).status).toBe(404)
      office.at = START
      const bearer = office.stranger({ Authorization: `Bearer ${token}` })
      expect((await bearer.get(`/api/crossings/${crossing}`)).status).toBe(401)
      expect((await look('x'.repeat(22))).status).toBe(404)
    })

    test('its uses are listed, and taken back it shows nothing any more', async () => {
      const { token, item } = await share(7)
      await look(token)
      office.at = new Date(START.getTime() + 1000)
      await look(token)
      const uses = shareAccessList.parse((await owner.get(`/api/shares/${item.id}/accesses`)).body).items
      expect(uses.map(({ at }) => at)).toEqual([
        new Date(START.getTime() + 1000).toISOString(),
        START.toISOString(),
      ])
      expect((await owner.send('DELETE', `/api/shares/${item.id}`)).status).toBe(200)
      expect((await owner.send('DELETE', `/api/shares/${item.id}`)).status).toBe(404)
      expect((await look(token)).status).toBe(404)
      const listed = shareList.parse((await owner.get('/api/shares')).body).items
      expect(listed.find(({ id }) => id === item.id)?.revokedAt).not.toBeNull()
    })

    test('of a crossing that is not there is refused, and one removed is shown no more', async () => {
      const nothing = { crossing: randomUUID(), name: 'x', days: 1 }
      expect((await owner.post('/api/shares', nothing)).status).toBe(422)
      const { token } = await share(1)
      const { version } = (await store.crossings.find(crossing)) ?? { version: 0 }
      const header = (at: number) => ({ 'If-Match': `"${at}"` })
      await owner.send('DELETE', `/api/crossings/${crossing}`, undefined, header(version))
      expect((await look(token)).status).toBe(404)
      await owner.send('POST', `/api/crossings/${crossing}/restore`, undefined, header(version + 1))
      expect((await look(token)).status).toBe(200)
    })
  })

  describe('a token for scripts', () => {
    const token = async (role: string, name = 'nightly') =>
      newTokenAnswer.parse((await owner.post('/api/tokens', { name, role })).body)

    test('may do what its role may, is listed without itself, and is worth nothing once taken back', async () => {
      const made = await token('viewer')
      const script = office.stranger({ Authorization: `Bearer ${made.token}` })
      expect((await script.get('/api/jobs')).status).toBe(200)
      expect((await script.get('/api/quotes')).status).toBe(403)
      expect((await script.get('/api/accounts')).status).toBe(403)
      expect((await script.get('/api/session/devices')).status).toBe(403)
      const listed = await owner.get('/api/tokens')
      expect(JSON.stringify(listed.body)).not.toContain(made.token)
      expect(tokenList.parse(listed.body).items.find(({ id }) => id === made.item.id)?.usedAt).not.toBeNull()
      expect((await owner.send('DELETE', `/api/tokens/${made.item.id}`)).status).toBe(200)
      expect((await script.get('/api/jobs')).status).toBe(401)
    })

    test('is never an owner’s, and a wrong one is not helped by a cookie', async () => {
      expect((await owner.post('/api/tokens', { name: 'x', role: 'owner' })).status).toBe(422)
      for (const header of ['Bearer wrong', 'Bearer', 'Basic b3duZXI6eA==', '']) {
        const answer = await owner.send('GET', '/api/jobs', undefined, { Authorization: header })
        expect(answer.status).toBe(401)
      }
    })

    test('only its hash is kept', async () => {
      const made = await token('viewer')
      const database = await openDatabase(place)
      const rows = await database.queries.selectFrom('api_token').selectAll().execute()
      const lines = await database.queries.selectFrom('revision').select('document').execute()
      await database.queries.destroy()
      expect(JSON.stringify([rows, lines])).not.toContain(made.token)
    })
  })

  describe('people', () => {
    const change = (id: string, version: number, to: object) =>
      owner.send('PUT', `/api/accounts/${id}`, to, { 'If-Match': `"${version}"` })
    const listed = async (login: string) => {
      const { items } = accountList.parse((await owner.get('/api/accounts')).body)
      const found = items.find((each) => each.login === login)
      if (found === undefined) throw new Error(login)
      return found
    }

    test('another role, or being kept out, ends every session', async () => {
      const client = await office.member(owner, 'estimator', 'pat')
      const { id, version } = await listed('pat')
      const to = { name: 'Pat', role: 'viewer', isActive: true }
      expect((await change(id, version + 1, to)).status).toBe(409)
      expect((await owner.send('PUT', `/api/accounts/${id}`, to)).status).toBe(428)
      expect((await change(id, version, to)).status).toBe(200)
      expect((await client.get('/api/jobs')).status).toBe(401)
      await client.post('/api/session', { login: 'pat', password: PASSWORD })
      expect((await client.get('/api/quotes')).status).toBe(403)
      expect((await change(id, version + 1, { ...to, isActive: false })).status).toBe(200)
      expect((await client.get('/api/jobs')).status).toBe(401)
      const again = await client.post('/api/session', { login: 'pat', password: PASSWORD })
      expect(again.body).toMatchObject({ code: 'wrong-credentials' })
    })

    test('a login is nobody else’s ever after, and not one the program uses', async () => {
      const add = (login: string) => owner.post('/api/accounts', { login, name: 'x', role: 'viewer' })
      expect((await add('Sam')).status).toBe(201)
      expect((await add('sam')).status).toBe(409)
      for (const login of ['demo', 'a b', 'x', 'token x', 'ñ', '', '\u0000ab']) {
        expect((await add(login)).status, login).toBe(422)
      }
      expect(
        (await owner.post('/api/accounts', { login: 'nul', name: 'a\u0000b', role: 'viewer' })).status,
      ).toBe(422)
    })

    test('the last owner stays one', async () => {
      const { id, version } = await listed('olga')
      for (const to of [
        { name: 'Olga', role: 'viewer', isActive: true },
        { name: 'Olga', role: 'owner', isActive: false },
      ]) {
        const answer = await change(id, version, to)
        expect(answer.status).toBe(409)
        expect(answer.body).toMatchObject({ code: 'last-owner' })
      }
    })

    test('a code from an owner lets one in again who lost password and second factor; not the owner themselves', async () => {
      const client = await office.member(owner, 'estimator', 'tess')
      await withFactor(client, office)
      const { id } = await listed('tess')
      const { code } = newCodeAnswer.parse((await owner.post(`/api/accounts/${id}/code`, {})).body)
      const back = await office.stranger().post('/api/session/code', { code, password: 'six green moles' })
      expect(back.body).toMatchObject({ signedIn: { login: 'tess', hasSecondFactor: false } })
      expect((await client.get('/api/jobs')).status).toBe(401)
      const own = await listed('olga')
      expect((await owner.post(`/api/accounts/${own.id}/code`, {})).status).toBe(409)
    })
  })
})
