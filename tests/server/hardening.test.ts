import { mkdirSync, mkdtempSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { serverConfig } from '../../src/config.ts'
import { buildApp } from '../../src/server/app.ts'
import { requestsUnderWay } from '../../src/server/requests-under-way.ts'
import { startServer } from '../../src/server/serve.ts'
import { writeBackup } from '../../src/store/backup/write-backup.ts'
import { type OpenStore, openDatabase, openStore } from '../../src/store/open-store.ts'
import { StoreError } from '../../src/store/store-error.ts'

let folder: string
let store: OpenStore
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'underlane-hard-'))
  store = await openStore(join(folder, 'data'))
})
afterAll(async () => {
  await store.close()
  rmSync(folder, { recursive: true, force: true })
})
const appOver = (kept: OpenStore, log: (line: string) => void = () => {}) =>
  buildApp({ store: kept, webRoot: folder, hosts: [], now: () => new Date(0), log })
const idOf = (at: number) => `00000000-0000-4000-8000-${String(at).padStart(12, '0')}`

describe('what every answer says to the browser', () => {
  test.each(['/', '/api/health', '/api/nothing', '/api'])('%s', async (path) => {
    const { headers } = await appOver(store).request(path)
    expect(headers.get('Cross-Origin-Opener-Policy')).toBe('same-origin')
    expect(headers.get('Cross-Origin-Resource-Policy')).toBe('same-origin')
    expect(headers.get('Permissions-Policy')).toMatch(/camera=\(\)/)
    expect(headers.get('Permissions-Policy')).toMatch(/geolocation=\(self\)/)
    const policy = headers.get('Content-Security-Policy') ?? ''
    expect(policy).toContain("default-src 'self'")
    expect(policy).toContain("object-src 'none'")
    expect(policy).toContain("frame-ancestors 'none'")
    expect(policy).not.toMatch(/unsafe|https?:|\*/)
    expect(headers.get('X-Content-Type-Options')).toBe('nosniff')
    expect(headers.get('Access-Control-Allow-Origin')).toBeNull()
  })
})

describe('keys every object has from birth', () => {
  test.each(['__proto__', 'constructor', 'prototype'])('%s is refused at every door', async (key) => {
    const app = appOver(store)
    const body = `{"name":"x","inner":{"${key}":{"isOwner":true}}}`
    const headers = { 'Content-Type': 'application/json' }
    const doors = app.routes.filter(({ method, path }) => /PUT|POST/.test(method) && path.startsWith('/api'))
    let tried = 0
    for (const { method, path } of doors) {
      if (/\/(content|restore)$|\/accounts\/:id\/code$/.test(path)) continue
      const answer = await app.request(path.replace(/:\w+/g, idOf(1)), { method, body, headers })
      expect(answer.status, path).toBe(422)
      expect((await answer.json()).issues, path).toContainEqual(
        expect.objectContaining({ path: `inner.${key}`, code: 'unknown-key' }),
      )
      tried += 1
    }
    expect(tried).toBeGreaterThan(15)
    expect(Object.keys(Object.prototype)).toEqual([])
    const inAddress = await app.request(`/api/relations/deviation?${key}=1`)
    expect(inAddress.status).toBe(422)
  })
})

test('a line of the log names the place and the fault, not what was sent', async () => {
  const lines: string[] = []
  const fails = async () => {
    throw new StoreError('unavailable', '/data', new Error('disk I/O error'))
  }
  const breaks = async () => {
    throw new Error('a bug')
  }
  const broken = { ...store, jobs: { ...store.jobs, insert: fails, list: breaks } }
  const app = appOver(broken, (line) => lines.push(line))
  const headers = {
    'Content-Type': 'application/json',
    Authorization: 'Bearer SECRET-TOKEN',
    Cookie: 'a=SECRET-COOKIE',
  }
  const body = JSON.stringify({ schema: 'underlane/job@1', name: 'SECRET-NAME', state: 'asked' })
  const put = await app.request(`/api/jobs/${idOf(2)}?q=SECRET-QUERY`, { method: 'PUT', body, headers })
  expect(await put.text()).not.toMatch(/SECRET|disk/)
  expect((await app.request('/api/jobs?after=&q=SECRET-QUERY', { headers })).status).toBeLessThan(500)
  expect((await app.request('/api/jobs?q=SECRET-QUERY', { headers })).status).toBe(500)
  expect(lines.length).toBeGreaterThan(0)
  expect(lines.join('\n')).not.toContain('SECRET')
})

const rightsOf = (path: string) => (statSync(path).mode & 0o777).toString(8)

describe('who may look into the data folder', () => {
  test('one that was made is its owner’s alone, and so is the store in any other', async () => {
    expect(rightsOf(join(folder, 'data'))).toBe('700')
    expect(rightsOf(join(folder, 'data', 'underlane.sqlite'))).toBe('600')
    const open = join(folder, 'open')
    mkdirSync(open, { mode: 0o755 })
    const kept = await openStore(open)
    await kept.crossings.list({ after: null, limit: 1 })
    expect(rightsOf(join(open, 'underlane.sqlite'))).toBe('600')
    expect(rightsOf(join(open, 'underlane.sqlite-wal'))).toBe('600')
    await kept.close()
  })

  test('a backup is its maker’s alone', async () => {
    const database = await openDatabase({ dataFolder: join(folder, 'data'), databaseUrl: null })
    const file = join(folder, 'backup.tar.gz')
    await writeBackup(database, file, new Date(0))
    await database.queries.destroy()
    expect(rightsOf(file)).toBe('600')
  })
})

describe('a stop', () => {
  test('waits for what is being answered', async () => {
    const order: string[] = []
    const slow = async () => {
      await new Promise((resolve) => setTimeout(resolve, 50))
      order.push('answered')
      return new Response('x')
    }
    const underWay = requestsUnderWay(slow)
    const answer = underWay.fetch(new Request('http://localhost/'), {})
    await underWay.settled()
    order.push('settled')
    await answer
    expect(order).toEqual(['answered', 'settled'])
  })

  test('finishes the writes it has taken: every acknowledged one is there', async () => {
    const data = join(folder, 'stopped')
    const found = serverConfig({ port: '0', data, empty: true }, {}, { root: folder, working: folder })
    if (!found.ok) throw new Error(found.sentence)
    const running = await startServer(found.config, () => {})
    const put = async (at: number) => {
      const answer = await fetch(new URL(`/api/customers/${idOf(at)}`, running.address), {
        method: 'PUT',
        headers: { 'Content-Type': 'application/json' },
        body: JSON.stringify({ schema: 'underlane/customer@1', name: `customer ${at}` }),
      })
      return answer.status === 201 ? idOf(at) : null
    }
    const asked = Array.from({ length: 30 }, (_, at) => put(at).catch(() => null))
    expect(await asked[0]).toBe(idOf(0))
    await running.close()
    const acknowledged = (await Promise.all(asked)).filter((id) => id !== null)
    const kept = await openStore(data)
    for (const id of acknowledged) expect(await kept.customers.find(id)).not.toBeNull()
    await kept.close()
  })
})
