import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { type OpenStore, openStore } from '../../src/store/open-store.ts'
import { demoId, seedDemo } from '../../src/store/seed-demo.ts'
import { openSqlite } from '../../src/store/sqlite.ts'
import { StoreError } from '../../src/store/store-error.ts'

const AT = new Date('2026-03-02T09:00:00Z')
const ACT = { who: 'Ada', at: AT, from: '127.0.0.1', requestKey: null }
const idOf = (n: number) => `00000000-0000-4000-8000-${String(n).padStart(12, '0')}`

let folder: string
let store: OpenStore

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'underlane-store-'))
  store = await openStore(join(folder, 'data'))
})
afterEach(async () => {
  await store.close()
  rmSync(folder, { recursive: true, force: true })
})

const insert = (n: number, name = `Crossing ${n}`) =>
  store.crossings.insert(
    { id: idOf(n), document: { name, line: { length: '42 ft' } }, made: null, demo: false },
    ACT,
  )

describe('a document store', () => {
  test('finds what was inserted, with its version, format and time', async () => {
    expect((await insert(1)).outcome).toBe('done')
    expect(await store.crossings.find(idOf(1))).toEqual({
      id: idOf(1),
      version: 1,
      format: 'underlane/crossing@1',
      name: 'Crossing 1',
      updatedAt: '2026-03-02T09:00:00.000Z',
      deletedAt: null,
      demo: false,
      status: null,
      engine: null,
      made: null,
      document: { name: 'Crossing 1', line: { length: '42 ft' } },
    })
    expect(await store.crossings.find(idOf(2))).toBeNull()
  })

  test('an id taken before keeps what it has, and says so', async () => {
    await insert(1, 'first')
    const again = await insert(1, 'second')
    expect(again).toMatchObject({ outcome: 'conflict', stored: { version: 1, document: { name: 'first' } } })
  })

  test('pages cover everything once, in order, and the last says there is no more', async () => {
    for (const n of [5, 3, 1, 4, 2]) await insert(n)
    const seen: string[] = []
    let after: string | null = null
    let pages = 0
    do {
      const page: Awaited<ReturnType<typeof store.crossings.list>> = await store.crossings.list({
        after,
        limit: 2,
      })
      seen.push(...page.items.map((item) => item.id))
      after = page.next
      pages += 1
    } while (after !== null && pages < 10)
    expect(seen).toEqual([1, 2, 3, 4, 5].map(idOf))
    expect(pages).toBe(3)
  })

  test('each insert leaves one line of history with who, when and from where', async () => {
    await insert(1)
    await insert(1, 'again')
    const database = await openSqlite(join(folder, 'data', 'underlane.sqlite'))
    const lines = await database.queries.selectFrom('revision').selectAll().execute()
    await database.queries.destroy()
    expect(lines).toHaveLength(1)
    expect(lines[0]).toMatchObject({ noun: 'crossing', version: 1, who: 'Ada', acted_from: '127.0.0.1' })
  })

  test('two handles on one file both write and see each other', async () => {
    const other = await openStore(join(folder, 'data'))
    await insert(1)
    await other.crossings.insert({ id: idOf(2), document: { name: 'b' }, made: null, demo: false }, ACT)
    expect((await other.crossings.list({ after: null, limit: 10 })).items).toHaveLength(2)
    await other.close()
  })

  test('opened again, everything is still there', async () => {
    await insert(1)
    await store.close()
    store = await openStore(join(folder, 'data'))
    expect(await store.crossings.find(idOf(1))).not.toBeNull()
  })

  test('commits are synced in full to a write-ahead log', async () => {
    const { default: Database } = await import('libsql')
    const raw = new Database(join(folder, 'data', 'underlane.sqlite'))
    expect(raw.pragma('journal_mode', { simple: true })).toMatchObject({ journal_mode: 'wal' })
    raw.close()
  })
})

describe('the demo', () => {
  test('is put in once, under ids that follow from the file names', async () => {
    const demo = join(folder, 'demo.d')
    mkdirSync(demo)
    writeFileSync(join(demo, 'alder-road-14.json'), JSON.stringify({ name: 'Alder Road 14' }))
    writeFileSync(join(demo, 'notes.txt'), 'not a crossing')
    await seedDemo(store, demo, AT)
    await seedDemo(store, demo, AT)
    const { items } = await store.crossings.list({ after: null, limit: 10 })
    expect(items.map((item) => [item.id, item.demo])).toEqual([[demoId('alder-road-14.json'), true]])
  })

  test('an id is a version 5 UUID', () => {
    expect(demoId('alder-road-14.json')).toMatch(
      /^[0-9a-f]{8}-[0-9a-f]{4}-5[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/,
    )
    expect(demoId('a.json')).not.toBe(demoId('b.json'))
  })
})

describe('a store that cannot be opened says why', () => {
  const codeOf = (path: string) =>
    openStore(path).then(
      () => 'opened',
      (error: unknown) => (error instanceof StoreError ? error.code : String(error)),
    )

  test('a file where the folder should be', async () => {
    writeFileSync(join(folder, 'taken'), '')
    expect(await codeOf(join(folder, 'taken', 'data'))).toBe('cannot-write-folder')
  })

  test('a file that is no database', async () => {
    mkdirSync(join(folder, 'other'))
    writeFileSync(join(folder, 'other', 'underlane.sqlite'), 'x'.repeat(5000))
    expect(await codeOf(join(folder, 'other'))).toBe('not-a-store')
  })

  test('a store made by a newer version is left alone', async () => {
    const database = await openSqlite(join(folder, 'data', 'underlane.sqlite'))
    await database.queries
      .withTables<{ kysely_migration: { name: string; timestamp: string } }>()
      .insertInto('kysely_migration')
      .values({ name: '9999-later', timestamp: '2030-01-01' })
      .execute()
    await database.queries.destroy()
    expect(await codeOf(join(folder, 'data'))).toBe('made-by-a-newer-version')
  })
})
