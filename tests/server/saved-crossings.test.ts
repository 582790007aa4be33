import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest'
import { z } from 'zod'
import {
  changeConflict,
  crossingHistory,
  crossingPage,
  type KeptCrossing,
  keptCrossing,
} from '../../shared/contracts/kept-crossing.ts'
import { mergeDocuments } from '../../shared/contracts/merge-documents.ts'
import { planResult } from '../../shared/contracts/plan-result.ts'
import { ENGINE_VERSION } from '../../shared/core/engine-version.ts'
import { buildApp } from '../../src/server/app.ts'
import { type OpenStore, openStore } from '../../src/store/open-store.ts'
import { demoDocument } from '../support/crossings.ts'

const DOCUMENT = demoDocument('firm-clay-service')
const START = new Date('2026-03-02T09:00:00Z')
const DAY_MS = 24 * 60 * 60 * 1000

let folder: string
let store: OpenStore
let app: ReturnType<typeof buildApp>
let at = START
const logged: string[] = []
let used = 0
/** Each test has a crossing of its own. */
const freshId = () => `00000000-0000-4000-9000-${String(++used).padStart(12, '0')}`

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'underlane-saved-api-'))
  store = await openStore(join(folder, 'data'))
  app = buildApp({ store, webRoot: folder, hosts: [], now: () => at, log: (line) => logged.push(line) })
})
afterAll(async () => {
  await store.close()
  rmSync(folder, { recursive: true, force: true })
})
afterEach(() => {
  at = START
  expect(logged).toEqual([])
})

type Headers = Record<string, string>
const send = (method: string, path: string, document: unknown, headers: Headers = {}) =>
  app.request(`/api/crossings/${path}`, {
    method,
    ...(document === undefined ? {} : { body: JSON.stringify(document) }),
    headers: { ...(document === undefined ? {} : { 'Content-Type': 'application/json' }), ...headers },
  })
const put = (id: string, document: unknown, headers?: Headers) => send('PUT', id, document, headers)
const from = (version: number) => ({ 'If-Match': `"${version}"` })
const keptFrom = async (answer: Response): Promise<KeptCrossing> => keptCrossing.parse(await answer.json())
const codeOf = async (answer: Response) => z.object({ code: z.string() }).parse(await answer.json()).code
const currentOf = async (answer: Response) => changeConflict.parse(await answer.json()).current

describe('PUT creates', () => {
  test('with 201, the version as a tag, and the result as the server works it out', async () => {
    const id = freshId()
    const answer = await put(id, DOCUMENT)
    expect(answer.status).toBe(201)
    expect(answer.headers.get('ETag')).toBe('"1"')
    const kept = await keptFrom(answer)
    expect(kept).toMatchObject({
      id,
      version: 1,
      demo: false,
      engine: ENGINE_VERSION,
      document: DOCUMENT,
      issues: [],
    })
    expect(kept.inputSha256).toMatch(/^[0-9a-f]{64}$/)
    const plan = planResult.parse(kept.result)
    expect(plan.input.sha256).toBe(kept.inputSha256)
    expect(kept.status).toBe(plan.release.status)
    const planned = await app.request('/api/plans', {
      method: 'POST',
      body: JSON.stringify(DOCUMENT),
      headers: { 'Content-Type': 'application/json' },
    })
    expect(kept.result).toEqual(await planned.json())
    expect(await keptFrom(await app.request(`/api/crossings/${id}`))).toEqual(kept)
  })

  test('and is answered the same again with 200', async () => {
    const id = freshId()
    await put(id, DOCUMENT)
    const again = await put(id.toUpperCase(), DOCUMENT)
    expect(again.status).toBe(200)
    expect((await keptFrom(again)).version).toBe(1)
  })

  test('but changes nothing that is there without naming its version: 428, with what is there', async () => {
    const id = freshId()
    await put(id, DOCUMENT)
    const answer = await put(id, { ...DOCUMENT, name: 'other' })
    expect(answer.status).toBe(428)
    const body = await answer.json()
    expect(body).toMatchObject({
      code: 'precondition-required',
      issues: [{ path: 'If-Match', code: 'required' }],
    })
    expect(changeConflict.parse(body).current.name).toBe(DOCUMENT.name)
  })

  test('a crossing that cannot be planned is kept without a result, with the reasons', async () => {
    const id = freshId()
    const draft = { ...DOCUMENT, pipes: [{ outsideDiameter: '110 mm' }] }
    const kept = await keptFrom(await put(id, draft))
    expect(kept).toMatchObject({ status: 'no-plan', result: null, engine: ENGINE_VERSION, document: draft })
    expect(kept.issues.map((issue) => issue.code)).toContain('pipe-does-not-pass')
    expect(kept.issues[0]?.text.length).toBeGreaterThan(10)
  })
})

describe('PUT refuses', () => {
  test('a file that does not parse, with every problem', async () => {
    const answer = await put(freshId(), { name: 'x', depht: {} })
    expect(answer.status).toBe(422)
    const { code, issues } = await answer.json()
    expect(code).toBe('refused')
    const paths = issues.map((issue: { path: string }) => issue.path)
    expect(paths).toEqual(expect.arrayContaining(['line', 'depht', 'ground']))
  })

  test.each(['__proto__', 'constructor', 'prototype'])('the key %s, at the top and deeper', async (key) => {
    for (const text of [`{"name":"x","${key}":{"a":1}}`, `{"name":"x","air":{"hoses":[{"${key}":1}]}}`]) {
      const answer = await app.request(`/api/crossings/${freshId()}`, {
        method: 'PUT',
        body: text,
        headers: { 'Content-Type': 'application/json' },
      })
      expect(answer.status).toBe(422)
      expect((await answer.json()).issues).toMatchObject([{ code: 'unknown-key', given: key }])
    }
  })

  test('other types, bad JSON, too much and too deep', async () => {
    const raw = (body: string, type = 'application/json') =>
      app.request(`/api/crossings/${freshId()}`, { method: 'PUT', body, headers: { 'Content-Type': type } })
    expect((await raw('{}', 'text/plain')).status).toBe(415)
    expect((await raw('{')).status).toBe(400)
    expect((await raw(JSON.stringify({ name: 'x'.repeat(1_100_000) }))).status).toBe(413)
    expect((await raw('['.repeat(200_000) + ']'.repeat(200_000))).status).toBe(422)
    expect((await raw(`${'{"a":'.repeat(100_000)}1${'}'.repeat(100_000)}`)).status).toBe(422)
  })

  test('what is no UUID, no version and no key', async () => {
    expect((await put('nothing', DOCUMENT)).status).toBe(400)
    for (const version of ['*', '"x"', '"0"', '"1", "2"', '"-1"', '"99999999999"']) {
      expect((await put(freshId(), DOCUMENT, { 'If-Match': version })).status).toBe(400)
    }
    expect((await put(freshId(), DOCUMENT, { 'Idempotency-Key': 'x'.repeat(201) })).status).toBe(400)
    expect((await put(freshId(), DOCUMENT, from(1))).status).toBe(404)
  })
})

describe('PUT with If-Match', () => {
  test('replaces the version named, tagged weak by a proxy or not', async () => {
    const id = freshId()
    await put(id, DOCUMENT)
    const second = await put(id, { ...DOCUMENT, name: 'second' }, from(1))
    expect(second.status).toBe(200)
    expect(second.headers.get('ETag')).toBe('"2"')
    const third = await put(id, { ...DOCUMENT, name: 'third' }, { 'If-Match': 'W/"2"' })
    expect((await keptFrom(third)).version).toBe(3)
  })

  test('a lost race brings along what is there, and both changes can be brought together', async () => {
    const id = freshId()
    await put(id, DOCUMENT)
    const mine = { ...DOCUMENT, name: 'mine' }
    const theirs = { ...DOCUMENT, pull: 'push' }
    const answers = await Promise.all([put(id, theirs, from(1)), put(id, mine, from(1))])
    expect(answers.map((answer) => answer.status).sort()).toEqual([200, 409])
    const lost = answers.find((answer) => answer.status === 409)
    if (lost === undefined) throw new Error('nobody lost')
    const current = await currentOf(lost)
    expect(current.version).toBe(2)
    const loser = lost === answers[0] ? theirs : mine
    const { merged, conflicts } = mergeDocuments(DOCUMENT, loser, current.document)
    expect(conflicts).toEqual([])
    const kept = await keptFrom(await put(id, merged, from(current.version)))
    expect(kept.document).toEqual({ ...DOCUMENT, name: 'mine', pull: 'push' })
  })

  test('sent twice under one key it is made once; the key with something else is refused', async () => {
    const id = freshId()
    await put(id, DOCUMENT)
    const headers = { ...from(1), 'Idempotency-Key': 'k-1' }
    const second = { ...DOCUMENT, name: 'second' }
    expect((await put(id, second, headers)).status).toBe(200)
    const again = await put(id, second, headers)
    expect(again.status).toBe(200)
    expect(again.headers.get('ETag')).toBe('"2"')
    const other = await put(id, { ...DOCUMENT, name: 'third' }, { ...from(2), 'Idempotency-Key': 'k-1' })
    expect(other.status).toBe(422)
    expect(await codeOf(other)).toBe('key-reused')
  })
})

describe('DELETE and restore', () => {
  test('removed it is found only among the removed, until it is restored', async () => {
    const id = freshId()
    await put(id, DOCUMENT)
    expect((await send('DELETE', id, undefined)).status).toBe(428)
    expect((await send('DELETE', id, undefined, from(2))).status).toBe(409)
    const removed = await send('DELETE', id, undefined, from(1))
    expect(removed.status).toBe(200)
    expect(removed.headers.get('ETag')).toBe('"2"')
    expect((await keptFrom(removed)).deletedAt).toBe(START.toISOString())
    expect((await app.request(`/api/crossings/${id}`)).status).toBe(404)
    const listed = async (query: string) =>
      crossingPage
        .parse(await (await app.request(`/api/crossings?limit=500${query}`)).json())
        .items.map((item) => item.id)
    expect(await listed('')).not.toContain(id)
    expect(await listed('&removed=true')).toEqual([id])
    expect((await send('POST', `${id}/restore`, undefined)).status).toBe(428)
    const restored = await send('POST', `${id}/restore`, undefined, from(2))
    expect(restored.status).toBe(200)
    expect((await keptFrom(restored)).version).toBe(3)
    expect((await keptFrom(await app.request(`/api/crossings/${id}`))).result).not.toBeNull()
  })

  test('a save of what was just removed is told so', async () => {
    const id = freshId()
    await put(id, DOCUMENT)
    await send('DELETE', id, undefined, from(1))
    const answer = await put(id, { ...DOCUMENT, name: 'late' }, from(1))
    expect(answer.status).toBe(409)
    expect((await currentOf(answer)).deletedAt).toBe(START.toISOString())
    expect((await put(id, DOCUMENT)).status).toBe(409)
  })

  test('after 30 days it stays removed', async () => {
    const id = freshId()
    await put(id, DOCUMENT)
    await send('DELETE', id, undefined, from(1))
    at = new Date(START.getTime() + 31 * DAY_MS)
    const late = await send('POST', `${id}/restore`, undefined, from(2))
    expect(late.status).toBe(410)
    expect(await codeOf(late)).toBe('gone')
  })

  test('of what never was', async () => {
    for (const id of [freshId(), 'nothing']) {
      expect((await send('DELETE', id, undefined, from(1))).status).toBe(404)
      expect((await send('POST', `${id}/restore`, undefined, from(1))).status).toBe(404)
      expect((await app.request(`/api/crossings/${id}/history`)).status).toBe(404)
    }
  })
})

describe('lists', () => {
  test('say version, name, status and engine of each, and leave results out', async () => {
    const id = freshId()
    await put(id, DOCUMENT)
    const page = await (await app.request('/api/crossings?limit=500')).json()
    const item = crossingPage.parse(page).items.find((each) => each.id === id)
    expect(item).toMatchObject({
      version: 1,
      name: DOCUMENT.name,
      status: 'check',
      engine: ENGINE_VERSION,
      demo: false,
    })
    expect(item).not.toHaveProperty('result')
  })

  test('refuse a word for removed that is none', async () => {
    expect((await app.request('/api/crossings?removed=perhaps')).status).toBe(400)
  })

  test('of history give every version in order, in pages, without addresses or keys', async () => {
    const id = freshId()
    await put(id, DOCUMENT, { 'Idempotency-Key': 'secret-key' })
    await put(id, { ...DOCUMENT, name: 'second' }, from(1))
    await send('DELETE', id, undefined, from(2))
    const text = await (await app.request(`/api/crossings/${id}/history`)).text()
    expect(text).not.toContain('secret-key')
    const { items } = crossingHistory.parse(JSON.parse(text))
    expect(items.map((line) => [line.version, line.action, line.document?.name ?? null])).toEqual([
      [1, 'insert', DOCUMENT.name],
      [2, 'replace', 'second'],
      [3, 'remove', null],
    ])
    const page = await (await app.request(`/api/crossings/${id}/history?limit=2`)).json()
    expect(page.next).toBe(2)
    const rest = await (await app.request(`/api/crossings/${id}/history?limit=2&after=2`)).json()
    expect(rest.items).toHaveLength(1)
  })
})
