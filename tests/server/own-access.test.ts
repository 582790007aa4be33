import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest'
import { z } from 'zod'
import { deviceList, sessionAnswer } from '../../shared/contracts/access.ts'
import type { OpenStore } from '../../src/store/open-store.ts'
import {
  type Client,
  codeOf,
  type Office,
  officeOver,
  PASSWORD,
  type Sent,
  withFactor,
} from '../support/office.ts'
import { DATABASES, openAt, type Places } from '../support/store-places.ts'

const START = new Date('2026-03-02T09:00:00Z')
const later = (hours: number) => new Date(START.getTime() + hours * 60 * 60 * 1000)
const codeIn = ({ body }: Sent) => z.object({ code: z.string() }).parse(body).code
const sessionIn = ({ body }: Sent) => sessionAnswer.parse(body)

describe.each(DATABASES)('on %s', (_name, makePlaces) => {
  let places: Places
  let store: OpenStore
  let office: Office
  let owner: Client
  beforeAll(async () => {
    places = await makePlaces()
    store = await openAt(await places.fresh())
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

  let used = 0
  const elsewhere = () => office.stranger()
  const fresh = async () => {
    const login = `user${++used}`
    return { login, client: await office.member(owner, 'estimator', login) }
  }
  const signIn = (client: Client, login: string, rest: Record<string, string> = {}) =>
    client.post('/api/session', { login, password: PASSWORD, ...rest })

  test('devices are listed, and each can be signed out by its bearer alone', async () => {
    const { login, client } = await fresh()
    const phone = office.stranger({ 'User-Agent': 'Mozilla/5.0 (Linux; Android 15) Chrome/140 Safari/537' })
    await signIn(phone, login)
    const devices = async (of: Client) => deviceList.parse((await of.get('/api/session/devices')).body).items
    const seen = await devices(client)
    expect(seen).toHaveLength(2)
    const onPhone = seen.find(({ isThis }) => !isThis)
    expect(onPhone?.device).toBe('Android, Chrome')
    const { client: other } = await fresh()
    const path = `/api/session/devices/${onPhone?.id}`
    expect((await other.send('DELETE', path)).status).toBe(404)
    expect((await phone.get('/api/jobs')).status).toBe(200)
    expect((await client.send('DELETE', path)).status).toBe(200)
    expect((await phone.get('/api/jobs')).status).toBe(401)
    expect(await devices(client)).toHaveLength(1)
  })

  test('a new password wants the old one, is no common one, and signs out every other device', async () => {
    const { login, client } = await fresh()
    const other = elsewhere()
    await signIn(other, login)
    const change = (current: string, password: string) =>
      client.post('/api/session/password', { current, password })
    expect((await change('wrong but long enough', 'six green moles')).status).toBe(401)
    expect(codeIn(await change(PASSWORD, 'short'))).toBe('password-short')
    expect(codeIn(await change(PASSWORD, 'Password1234'))).toBe('password-common')
    const before = client.cookie
    expect((await change(PASSWORD, 'six green moles')).status).toBe(200)
    expect(client.cookie).not.toBe(before)
    expect((await client.get('/api/jobs')).status).toBe(200)
    expect((await other.get('/api/jobs')).status).toBe(401)
    expect((await signIn(elsewhere(), login)).status).toBe(401)
    expect((await elsewhere().post('/api/session', { login, password: 'six green moles' })).status).toBe(200)
  })

  test('a second factor is asked for, taken once, and a recovery code stands in for it once', async () => {
    const { login, client } = await fresh()
    const secret = await withFactor(client, office)
    office.at = new Date(START.getTime() + 60_000)
    expect(codeIn(await signIn(elsewhere(), login))).toBe('code-wanted')
    const wrong = codeOf(secret, later(5))
    expect(codeIn(await signIn(elsewhere(), login, { code: wrong }))).toBe('wrong-code')
    const code = codeOf(secret, office.at)
    const spaced = `${code.slice(0, 3)} ${code.slice(3)}`
    expect((await signIn(elsewhere(), login, { code: spaced })).status).toBe(200)
    expect(codeIn(await signIn(elsewhere(), login, { code }))).toBe('wrong-code')
    // Set anew: the codes of before are worth nothing.
    const begun = z
      .object({ secret: z.string() })
      .parse((await client.post('/api/session/second-factor', { password: PASSWORD })).body)
    const factor = { password: PASSWORD, secret: begun.secret, code: codeOf(begun.secret, office.at) }
    const bad = await client.send('PUT', '/api/session/second-factor', { ...factor, code: '000000' })
    expect(bad.status).toBe(422)
    const set = await client.send('PUT', '/api/session/second-factor', factor)
    const { recoveryCodes } = z.object({ recoveryCodes: z.array(z.string()) }).parse(set.body)
    expect(new Set(recoveryCodes).size).toBe(10)
    const [one = ''] = recoveryCodes
    expect((await signIn(elsewhere(), login, { code: one.toLowerCase() })).status).toBe(200)
    expect((await signIn(elsewhere(), login, { code: one })).status).toBe(401)
    expect(sessionIn(await client.get('/api/session')).signedIn).toMatchObject({
      hasSecondFactor: true,
      recoveryCodesLeft: 9,
    })
    expect((await client.post('/api/session/second-factor/off', { password: PASSWORD })).status).toBe(200)
    office.at = new Date(START.getTime() + 120_000)
    expect((await signIn(elsewhere(), login)).status).toBe(200)
  })
})
