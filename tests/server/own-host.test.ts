import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { serverConfig } from '../../src/config.ts'
import { buildApp } from '../../src/server/app.ts'
import { type OpenStore, openStore } from '../../src/store/open-store.ts'

let folder: string
let store: OpenStore
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'underlane-host-'))
  store = await openStore(folder)
})
afterAll(async () => {
  await store.close()
  rmSync(folder, { recursive: true, force: true })
})

const appAt = (...hosts: string[]) =>
  buildApp({ store, webRoot: folder, hosts, now: () => new Date(0), log: () => {} })

async function statusOf(host: string, hosts: string[] = []): Promise<number> {
  return (await appAt(...hosts).request('/api/health', { headers: { Host: host } })).status
}

describe('the name a request is sent to', () => {
  test.each([
    'localhost',
    'localhost:4270',
    'LOCALHOST',
    '127.0.0.1:4270',
    '127.8.8.8',
    '[::1]:4270',
    'a.localhost',
  ])('%s is this machine', async (host) => expect(await statusOf(host)).toBe(200))

  test.each([
    'evil.example',
    'evil.example:4270',
    'localhost.evil.example',
    '127.0.0.1.evil.example',
    'evil.example#localhost',
    'localhost@evil.example',
    '192.168.1.20',
    '0.0.0.0',
    '',
    '/',
    'a b',
  ])('"%s" is not', async (host) => expect(await statusOf(host)).toBe(403))

  test('a name it was told is its own; another still is not', async () => {
    expect(await statusOf('plans.example:8443', ['plans.example'])).toBe(200)
    expect(await statusOf('other.example', ['plans.example'])).toBe(403)
  })

  test('listening everywhere, each address of the machine is a name, and a foreign name is not', async () => {
    expect(await statusOf('192.168.1.20:4270', ['0.0.0.0'])).toBe(200)
    expect(await statusOf('[fe80::1]:4270', ['::'])).toBe(200)
    expect(await statusOf('evil.example', ['0.0.0.0'])).toBe(403)
  })

  test('pages are guarded too, and the refusal has the one shape of an error', async () => {
    const answer = await appAt().request('/', { headers: { Host: 'evil.example' } })
    expect(answer.status).toBe(403)
    expect(await answer.json()).toMatchObject({ code: 'foreign-host', issues: [] })
  })

  test('the names are told by the environment', () => {
    const folders = { root: '/', working: '/' }
    const proxy = { PUBLIC_URL: 'https://plans.example', TRUST_PROXY: '1' }
    const found = serverConfig({}, { ...proxy, UNDERLANE_NAMES: 'plans.example, shop.example' }, folders)
    expect(found).toMatchObject({ ok: true, config: { names: ['plans.example', 'shop.example'] } })
    expect(serverConfig({}, {}, folders)).toMatchObject({ config: { names: [] } })
  })
})

describe('a change', () => {
  const change = async (headers: Record<string, string>, method = 'POST') =>
    (await appAt().request('/api/plans', { method, headers: { Host: 'localhost:4270', ...headers } })).status
  /** Let through, and then turned away for want of a JSON body. */
  const LET_THROUGH = 415

  test.each([
    {},
    { Origin: 'http://localhost:4270' },
    { Origin: 'http://localhost:4270', 'Sec-Fetch-Site': 'same-origin' },
    { Origin: 'http://localhost:5173', 'Sec-Fetch-Site': 'same-origin' },
    { 'Sec-Fetch-Site': 'none' },
  ])('from %o is let through', async (headers) => expect(await change(headers)).toBe(LET_THROUGH))

  test.each([
    { Origin: 'https://evil.example' },
    { Origin: 'http://localhost:5173' },
    { Origin: 'null' },
    { Origin: 'http://localhost:4270.evil.example' },
    { 'Sec-Fetch-Site': 'cross-site' },
    { 'Sec-Fetch-Site': 'same-site' },
    { Origin: 'http://localhost:4270', 'Sec-Fetch-Site': 'cross-site' },
    { Origin: 'https://evil.example', 'Sec-Fetch-Site': 'same-origin' },
  ])('from %o is refused', async (headers) => {
    for (const method of ['POST', 'PUT', 'DELETE', 'PATCH']) expect(await change(headers, method)).toBe(403)
  })

  test('reading is not a change', async () => {
    const answer = await appAt().request('/api/health', { headers: { 'Sec-Fetch-Site': 'cross-site' } })
    expect(answer.status).toBe(200)
  })
})
