import { tmpdir } from 'node:os'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { buildApp } from '../../src/server/app.ts'
import type { OpenStore } from '../../src/store/open-store.ts'
import { DATABASES, openAt, type Places } from '../support/store-places.ts'

const idOf = (n: number) => `00000000-0000-4000-8000-${String(n).padStart(12, '0')}`
const TOOL = idOf(1)
const CROSSING = idOf(2)
const day = { name: 'Monday', on: '2026-03-02', tools: [{ crossing: CROSSING, tool: TOOL }] }
const sheet = (on: string, rest: object) => ({ name: on, tool: TOOL, on, by: 'Ada', ...rest })

describe.each(DATABASES)('on %s', (_name, makePlaces) => {
  let places: Places
  let store: OpenStore
  let app: ReturnType<typeof buildApp>
  beforeAll(async () => {
    places = await makePlaces()
    store = await openAt(await places.fresh())
    app = buildApp({
      store,
      webRoot: tmpdir(),
      hosts: [],
      now: () => new Date('2026-03-02T09:00:00Z'),
      log: (line) => {
        throw new Error(line)
      },
    })
  }, 60_000)
  afterAll(async () => {
    await store.close()
    await places.end()
  })
  const put = (path: string, document: unknown, version: number | null = null) =>
    app.request(`/api/${path}`, {
      method: 'PUT',
      body: JSON.stringify(document),
      headers: {
        'Content-Type': 'application/json',
        ...(version === null ? {} : { 'If-Match': `"${version}"` }),
      },
    })

  test('a tool is put to a bore, but not once its tilt test failed, and again after it passed', async () => {
    expect((await put(`tools/${TOOL}`, { name: 'Old', diameter: '3 in' })).status).toBe(201)
    expect((await put(`days/${idOf(10)}`, day)).status).toBe(201)
    expect((await put(`inspections/${idOf(20)}`, sheet('2026-03-01', { tiltBefore: 'failed' }))).status).toBe(
      201,
    )
    const refused = await put(`days/${idOf(11)}`, day)
    expect(refused.status).toBe(422)
    const { issues } = await refused.json()
    expect(issues).toMatchObject([{ path: 'tools.0.tool', code: 'not-available', given: TOOL }])
    // The day it was on already can still be changed.
    expect((await put(`days/${idOf(10)}`, { ...day, name: 'Tuesday' }, 1)).status).toBe(200)
    expect((await put(`inspections/${idOf(21)}`, sheet('2026-03-02', { tiltAfter: 'passed' }))).status).toBe(
      201,
    )
    expect((await put(`days/${idOf(11)}`, day)).status).toBe(201)
    const spent = { readings: [{ part: 'seals', key: 'seal', grade: 'spent' }] }
    expect((await put(`inspections/${idOf(22)}`, sheet('2026-03-02', spent))).status).toBe(201)
    expect((await put(`days/${idOf(12)}`, day)).status).toBe(422)
    const unknown = { ...day, tools: [{ crossing: CROSSING, tool: idOf(3) }] }
    expect((await put(`days/${idOf(13)}`, unknown)).status).toBe(201)
  })
})
