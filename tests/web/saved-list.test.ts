// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { noteReached } from '../../web/offline/connection.ts'
import { createCrossingList } from '../../web/saved/crossing-list.ts'
import { fetchList, sendCrossing } from '../../web/saved/crossing-requests.ts'
import { type Row, rowsShown } from '../../web/saved/listed-rows.ts'
import { newId } from '../../web/saved/new-id.ts'
import { type WorkKeeper, workKeeper } from '../../web/saved/unsaved-work.ts'
import { ID, keptAs } from './saved-kept.ts'

afterEach(() => vi.unstubAllGlobals())

/** Nobody else holds one. */
const LOCKS = { request: (_name: string, _how: object, work: (lock: object) => unknown) => work({}) }

const row = (name: string, day: number): Row => ({
  id: name,
  version: 1,
  name,
  status: 'hold',
  lengthM: 8,
  isCopy: false,
  updatedAt: `2026-11-0${day}T08:00:00.000Z`,
  demo: false,
  document: {},
})

describe('the list', () => {
  const rows = [row('Alder Road 10', 1), row('Alder Road 9', 3), row('Señora Lane', 2)]
  const names = (sought: string, order: 'date' | 'name') =>
    rowsShown(rows, sought, order).map(({ name }) => name)

  test('is sorted by the last change, or by name as people count', () => {
    expect(names('', 'date')).toEqual(['Alder Road 9', 'Señora Lane', 'Alder Road 10'])
    expect(names('', 'name')).toEqual(['Alder Road 9', 'Alder Road 10', 'Señora Lane'])
  })

  test('finds every word in any order, whatever the case and the accents', () => {
    expect(names('road ALDER', 'name')).toHaveLength(2)
    expect(names('senora', 'name')).toEqual(['Señora Lane'])
    expect(names('elm', 'name')).toEqual([])
  })

  test('is fetched page by page; no server and a server in trouble are told apart', async () => {
    const { result, issues, inputSha256, ...listed } = keptAs(1)
    const answers: (() => Response)[] = [
      () => Response.json({ items: [listed], next: ID }),
      () => Response.json({ items: [listed], next: null }),
      () => new Response('<p>', { status: 500 }),
    ]
    const asked: string[] = []
    vi.stubGlobal('fetch', async (path: string) => {
      asked.push(path)
      const next = answers.shift()
      if (next === undefined) throw new TypeError('Failed to fetch')
      return next()
    })
    expect(await fetchList()).toMatchObject({ state: 'answered', items: [{ id: ID }, { id: ID }] })
    expect(asked[1]).toBe(`/api/crossings?limit=500&after=${ID}`)
    expect(await fetchList()).toEqual({ state: 'trouble' })
    expect(await fetchList()).toEqual({ state: 'unreachable' })
  })
})

describe('the list on the page', () => {
  test('is fetched again as soon as the server can be reached', async () => {
    Object.defineProperty(navigator, 'locks', { configurable: true, value: LOCKS })
    const list = createCrossingList()
    const stop = list.followConnection()
    vi.stubGlobal('fetch', async () => {
      throw new TypeError('Failed to fetch')
    })
    await list.load()
    expect(list.listing.value.state).toBe('kept')
    const { result, issues, inputSha256, ...listed } = keptAs(1)
    vi.stubGlobal('fetch', async () => Response.json({ items: [listed], next: null }))
    noteReached(true)
    await expect.poll(() => list.listing.value.state).toBe('here')
    stop()
  })
})

describe('a change sent to the server', () => {
  const change = { id: ID, document: { name: 'A' }, from: 3, requestKey: 'k' }
  const issue = { path: 'line', code: 'required', text: 'The line is missing.' }
  const error = { code: 'x', requestId: 'r', issues: [issue] }
  test.each([
    [200, keptAs(4), 'done'],
    [409, { ...error, current: keptAs(5) }, 'conflict'],
    [428, { ...error, current: keptAs(5) }, 'conflict'],
    [422, error, 'refused'],
    [404, error, 'absent'],
    [503, error, 'trouble'],
    [200, { ok: true }, 'trouble'],
  ])('%i is one plain state', async (status, body, state) => {
    let headers: Headers | null = null
    vi.stubGlobal('fetch', async (_path: string, init: RequestInit) => {
      headers = new Headers(init.headers)
      return Response.json(body, { status })
    })
    expect((await sendCrossing(change)).state).toBe(state)
    expect(headers).not.toBeNull()
    expect(new Headers(headers ?? {}).get('If-Match')).toBe('"3"')
    expect(new Headers(headers ?? {}).get('Idempotency-Key')).toBe('k')
  })
})

describe('what is typed and not saved', () => {
  const now = () => new Date('2026-11-25T08:00:00Z')
  const work = (name: string) => ({ base: { version: 1, document: { name: 'A' } }, document: { name } })
  let tab: WorkKeeper
  beforeEach(() => {
    localStorage.clear()
    sessionStorage.clear()
    tab = workKeeper(ID, 'tab-1', now)
  })

  test('is this tab’s own after a reload, and leaves no second copy behind', () => {
    tab.keep(work('typed'))
    const again = workKeeper(ID, 'tab-1-again', now)
    expect(again.own()?.document).toEqual({ name: 'typed' })
    again.keep(work('typed on'))
    expect(workKeeper(ID, 'other', now).left()).toHaveLength(1)
  })

  test('of a tab that was closed is offered to another, and thrown away only when told', () => {
    tab.keep(work('left'))
    sessionStorage.clear()
    const other = workKeeper(ID, 'tab-2', now)
    expect(other.own()).toBeNull()
    const [left] = other.left()
    expect(left?.work.document).toEqual({ name: 'left' })
    other.throwAway(left?.key ?? '')
    expect(other.left()).toEqual([])
  })

  test('is forgotten once it is saved', () => {
    tab.keep(work('typed'))
    tab.forget()
    expect(tab.own()).toBeNull()
    expect(workKeeper(ID, 'other', now).left()).toEqual([])
  })
})

test('ids are random UUIDs of version 4', () => {
  const ids = new Set(Array.from({ length: 50 }, newId))
  expect(ids.size).toBe(50)
  for (const id of ids)
    expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/)
})
