import { copyFileSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { request } from 'node:https'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { serverConfig } from '../../src/config.ts'
import { buildApp } from '../../src/server/app.ts'
import { startSentence, startServer } from '../../src/server/serve.ts'
import { type OpenStore, openStore } from '../../src/store/open-store.ts'
import { run } from '../cli/run-in-process.ts'
import { CHEAP, officeOver, PASSWORD } from '../support/office.ts'

const FIXTURES = new URL('../fixtures/', import.meta.url)

let folder: string
let store: OpenStore
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'underlane-office-'))
  store = await openStore(join(folder, 'data'))
})
afterAll(async () => {
  await store.close()
  rmSync(folder, { recursive: true, force: true })
})

const configOf = (...given: Parameters<typeof serverConfig>) => {
  const found = serverConfig(...given)
  if (!found.ok) throw new Error(found.sentence)
  return found.config
}

describe('a server with a certificate of its own', () => {
  const fileOf = (name: string) => join(folder, name)
  const configAt = (data: string) =>
    configOf(
      {
        host: '127.0.0.2',
        port: '0',
        data: fileOf(data),
        empty: true,
        'tls-cert': 'cert.pem',
        'tls-key': 'key.pem',
      },
      { UNDERLANE_NAMES: 'plans.example' },
      { root: folder, working: folder },
    )

  test('speaks https, asks for an account, and gives the first owner a code', async () => {
    for (const name of ['cert.pem', 'key.pem']) copyFileSync(new URL(`tls-${name}`, FIXTURES), fileOf(name))
    const running = await startServer(configAt('tls'), () => {}, CHEAP)
    expect(running.address).toMatch(/^https:\/\/127\.0\.0\.2:\d+\/$/)
    expect(running.firstOwnerCode).toMatch(/^[0-9A-Z]{4}(-[0-9A-Z]{4}){3}$/)
    const status = (path: string) =>
      new Promise((resolve, reject) => {
        const asked = request(
          new URL(path, running.address),
          { ca: readFileSync(fileOf('cert.pem')), servername: 'plans.example' },
          (answer) => {
            answer.resume()
            resolve(answer.statusCode)
          },
        )
        asked.on('error', reject)
        asked.end()
      })
    expect(await status('/api/health')).toBe(200)
    expect(await status('/api/jobs')).toBe(401)
    await running.close()
  })

  test('a certificate that is none is said in one sentence', async () => {
    writeFileSync(fileOf('cert.pem'), 'nothing')
    const config = configAt('bad')
    const error: unknown = await startServer(config, () => {}, CHEAP).then(
      () => null,
      (thrown: unknown) => thrown,
    )
    expect(startSentence(error, config)).toMatch(/cert\.pem .* cannot be used/)
  })
})

test('on this machine alone nobody signs in, and there is no code', async () => {
  const config = configOf(
    { port: '0', data: join(folder, 'open'), empty: true },
    {},
    { root: folder, working: folder },
  )
  const running = await startServer(config, () => {}, CHEAP)
  expect(running.firstOwnerCode).toBeNull()
  expect((await fetch(new URL('/api/jobs', running.address))).status).toBe(200)
  expect(await (await fetch(new URL('/api/session', running.address))).json()).toEqual({
    accounts: false,
    needsFirstOwner: false,
    signedIn: null,
  })
  await running.close()
})

describe('behind a proxy', () => {
  const app = (publicOrigin: string | null) =>
    buildApp({
      store,
      webRoot: folder,
      hosts: ['127.0.0.1', 'plans.example'],
      publicOrigin,
      now: () => new Date(0),
      log: () => {},
      accounts: { cookies: 'secure', hashing: CHEAP },
      trustedProxies: 1,
    })
  const post = (publicOrigin: string | null, origin: string, host: string) =>
    app(publicOrigin).request('/api/session', {
      method: 'POST',
      body: '{}',
      headers: {
        Host: host,
        Origin: origin,
        'Sec-Fetch-Site': 'same-origin',
        'Content-Type': 'application/json',
      },
    })

  test('a page of the public address may change things, whatever name the proxy asks by; no other may', async () => {
    expect((await post('https://plans.example', 'https://plans.example', '127.0.0.1:4270')).status).toBe(422)
    expect((await post('https://plans.example', 'https://plans.example', 'plans.example')).status).toBe(422)
    expect((await post('https://plans.example', 'https://plans.example.evil', '127.0.0.1:4270')).status).toBe(
      403,
    )
    expect((await post('https://plans.example', 'https://plans.example', 'evil.example')).status).toBe(403)
    const cross = await app('https://plans.example').request('/api/session', {
      method: 'POST',
      body: '{}',
      headers: { Host: 'plans.example', Origin: 'https://plans.example', 'Sec-Fetch-Site': 'cross-site' },
    })
    expect(cross.status).toBe(403)
  })

  test('only what our own proxies add says where a request comes from', async () => {
    const office = officeOver(store, 'secure', 1)
    const wrong = { login: 'nobody-at-all', password: 'wrong but long enough' }
    for (let tries = 0; tries < 3; tries++) {
      const client = office.stranger({ 'X-Forwarded-For': `10.0.0.${tries}, 192.0.2.7` })
      expect((await client.post('/api/session', wrong)).status).toBe(401)
    }
    // What the asker wrote itself does not make it another one.
    const again = office.stranger({ 'X-Forwarded-For': '10.9.9.9, 192.0.2.7' })
    expect((await again.post('/api/session', wrong)).status).toBe(429)
    const other = office.stranger({ 'X-Forwarded-For': '192.0.2.7, 192.0.2.8' })
    expect((await other.post('/api/session', wrong)).status).toBe(401)
  })
})

describe('serve', () => {
  test.each([
    ['--host', '0.0.0.0'],
    ['--host', '0.0.0.0', '--tls-cert', 'cert.pem'],
  ])('%s %s is refused before anything is opened', async (...options) => {
    const data = join(folder, 'never')
    const { code, stderr } = await run(['serve', '--data', data, ...options], { workingFolder: folder })
    expect(code).toBe(64)
    expect(stderr).toContain('--tls-key')
    expect(existsSync(data)).toBe(false)
  })
})

describe('owner reset', () => {
  const reset = (...rest: string[]) =>
    run(['owner', 'reset', '--data', join(folder, 'reset'), ...rest], { workingFolder: folder })

  test('lets an owner in again with a new password, without the second factor, and ends every session', async () => {
    expect((await reset()).code).toBe(3)
    const kept = await openStore(join(folder, 'reset'))
    const office = officeOver(kept)
    office.at = new Date()
    const first = await reset()
    expect(first.code).toBe(0)
    expect(first.stderr).toContain('first owner')
    const owner = await office.owner()
    const { code, stdout } = await reset('--json')
    expect(code).toBe(0)
    const given = JSON.parse(stdout)
    expect(given).toMatchObject({ schema: 'underlane/owner-reset@1', login: 'olga' })
    // Nothing changes before the code is used.
    expect((await owner.get('/api/accounts')).status).toBe(200)
    const back = office.stranger()
    const chosen = { code: given.code, password: 'six green moles' }
    expect((await back.post('/api/session/code/look', { code: given.code })).body).toEqual({
      purpose: 'reset',
      login: 'olga',
      name: 'Olga',
    })
    expect((await back.post('/api/session/code', chosen)).status).toBe(200)
    expect((await owner.get('/api/jobs')).status).toBe(401)
    expect((await office.stranger().post('/api/session', { login: 'olga', password: PASSWORD })).status).toBe(
      401,
    )
    const signedIn = await office
      .stranger()
      .post('/api/session', { login: 'olga', password: 'six green moles' })
    expect(signedIn.body).toMatchObject({ signedIn: { hasSecondFactor: false, mayDo: 'estimator' } })
    expect((await reset('--login', 'nobody')).stderr).toContain('olga')
    await kept.close()
  })
})
