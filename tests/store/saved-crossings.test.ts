import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { createDocumentStore } from '../../src/store/document-store.ts'
import type { Made, Noun } from '../../src/store/noun.ts'
import { type OpenStore, openDatabase, type StorePlace } from '../../src/store/open-store.ts'
import { DATABASES, openAt, type Places, runRaw } from '../support/store-places.ts'

const AT = new Date('2026-03-02T09:00:00Z')
const act = (requestKey: string | null = null, at = AT) => ({ who: 'Ada', at, from: '127.0.0.1', requestKey })
const daysLater = (days: number) => new Date(AT.getTime() + days * 24 * 60 * 60 * 1000)
const ID = '00000000-0000-4000-8000-000000000001'
const OTHER = '00000000-0000-4000-8000-000000000002'

const OVERWRITING_SQLITE = [
  ['overwrite', 'insert or replace into revision select * from revision'],
  [
    'overwrite by key',
    `insert or replace into revision
       (seq, noun, id, version, format, action, who, acted_at, acted_from, request_key, hash)
     select 99, noun, id, 99, format, action, 'Eve', acted_at, acted_from, request_key, hash from revision`,
  ],
]
const OVERWRITING_POSTGRES = [
  ['overwrite', "insert into revision select * from revision on conflict (seq) do update set who = 'Eve'"],
  ['empty', 'truncate revision'],
]

const SKETCH: Noun<{ title: string }> = {
  table: 'sketch',
  format: 'underlane/sketch@1',
  nameOf: (document) => document.title,
  keysOf: () => ({ belongsTo: null, onDay: null }),
  upgrades: {},
  read: (document) => document as { title: string },
}

describe.each(DATABASES)('on %s', (name, makePlaces) => {
  let places: Places
  let place: StorePlace
  let store: OpenStore
  beforeAll(async () => {
    places = await makePlaces()
  }, 60_000)
  afterAll(() => places.end(), 60_000)
  beforeEach(async () => {
    place = await places.fresh()
    store = await openAt(place)
  })
  afterEach(() => store.close())

  const entry = (name: string, made: Made | null = null, id = ID) => ({ id, document: { name }, made })
  const insert = (name: string, key: string | null = null, id = ID) =>
    store.crossings.insert({ ...entry(name, null, id), demo: false }, act(key))
  const replace = (name: string, expectedVersion: number, key: string | null = null) =>
    store.crossings.replace({ ...entry(name), expectedVersion }, act(key))
  const remove = (expectedVersion: number, key: string | null = null) =>
    store.crossings.remove({ id: ID, expectedVersion }, act(key))
  const restore = (expectedVersion: number, at = AT, key: string | null = null) =>
    store.crossings.restore({ id: ID, expectedVersion }, act(key, at))
  const historyOf = async (id = ID) =>
    (await store.crossings.history(id, { after: null, limit: 100 })).items.map((line) => [
      line.version,
      line.action,
      line.document?.name ?? null,
    ])

  describe('insert', () => {
    test('the same document again is answered the same, whatever the order of its keys', async () => {
      const document = { name: 'a', line: { length: '42 ft' } }
      const again = { line: { length: '42 ft' }, name: 'a' }
      await store.crossings.insert({ id: ID, document, made: null, demo: false }, act())
      const answer = await store.crossings.insert({ id: ID, document: again, made: null, demo: false }, act())
      expect(answer).toMatchObject({ outcome: 'same', stored: { version: 1 } })
      expect(await historyOf()).toEqual([[1, 'insert', 'a']])
    })

    test('another document under a taken id brings along what is there', async () => {
      await insert('a')
      expect(await insert('b')).toMatchObject({ outcome: 'conflict', stored: { document: { name: 'a' } } })
    })

    test('a removed document does not come back by being inserted again', async () => {
      await insert('a')
      await remove(1)
      expect(await insert('a')).toMatchObject({
        outcome: 'conflict',
        stored: { deletedAt: AT.toISOString() },
      })
    })
  })

  describe('replace', () => {
    test('writes only over the version that was seen', async () => {
      await insert('a')
      expect(await replace('b', 1)).toMatchObject({ outcome: 'done', stored: { version: 2, name: 'b' } })
      expect(await replace('c', 1)).toMatchObject({ outcome: 'conflict', stored: { version: 2, name: 'b' } })
      expect(await replace('c', 3)).toMatchObject({ outcome: 'conflict' })
      expect(await historyOf()).toEqual([
        [1, 'insert', 'a'],
        [2, 'replace', 'b'],
      ])
    })

    test('nothing where there is nothing, and nothing over what was removed', async () => {
      expect(await replace('b', 1)).toEqual({ outcome: 'absent' })
      await insert('a')
      await remove(1)
      expect(await replace('b', 2)).toMatchObject({ outcome: 'conflict', stored: { name: 'a' } })
    })
  })

  describe('remove and restore', () => {
    test('removed it is found nowhere but among the removed, and comes back as it was', async () => {
      await insert('a')
      await insert('b', null, OTHER)
      expect(await remove(1)).toMatchObject({ outcome: 'done', stored: { version: 2 } })
      expect(await store.crossings.find(ID)).toBeNull()
      const idsOf = async (removed: boolean) =>
        (await store.crossings.list({ after: null, limit: 10, removed })).items.map((item) => item.id)
      expect(await idsOf(false)).toEqual([OTHER])
      expect(await idsOf(true)).toEqual([ID])
      expect(await restore(2)).toMatchObject({ outcome: 'done', stored: { version: 3, deletedAt: null } })
      expect(await store.crossings.find(ID)).toMatchObject({ name: 'a' })
      expect(await historyOf()).toEqual([
        [1, 'insert', 'a'],
        [2, 'remove', null],
        [3, 'restore', 'a'],
      ])
    })

    test('both want the version that was seen', async () => {
      await insert('a')
      await replace('b', 1)
      expect(await remove(1)).toMatchObject({ outcome: 'conflict', stored: { version: 2 } })
      await remove(2)
      expect(await restore(2)).toMatchObject({ outcome: 'conflict', stored: { version: 3 } })
      expect(await store.crossings.find(ID)).toBeNull()
    })

    test('can be taken back for 30 days, and what is there needs no restoring', async () => {
      await insert('a')
      expect(await restore(1)).toMatchObject({ outcome: 'conflict', stored: { deletedAt: null } })
      await remove(1)
      expect(await restore(2, daysLater(30.1))).toEqual({ outcome: 'too-late' })
      expect(await restore(2, daysLater(29.9))).toMatchObject({ outcome: 'done' })
    })
  })

  describe('a change sent twice under one key', () => {
    test('is made once and answered twice', async () => {
      await insert('a', 'k1')
      await replace('b', 1, 'k2')
      expect(await replace('b', 1, 'k2')).toMatchObject({ outcome: 'same', stored: { version: 2 } })
      expect(await insert('a', 'k1')).toMatchObject({ outcome: 'same', stored: { version: 2, name: 'b' } })
      await remove(2, 'k3')
      expect(await remove(2, 'k3')).toMatchObject({ outcome: 'same', stored: { version: 3 } })
      await restore(3, AT, 'k4')
      expect(await restore(3, AT, 'k4')).toMatchObject({ outcome: 'same', stored: { version: 4 } })
      expect(await historyOf()).toHaveLength(4)
    })

    test('with another content is refused, and leaves no trace', async () => {
      await insert('a', 'k1')
      expect(await replace('b', 1, 'k1')).toEqual({ outcome: 'key-reused' })
      expect(await insert('b', 'k1')).toEqual({ outcome: 'key-reused' })
      expect(await store.crossings.find(ID)).toMatchObject({ version: 1, name: 'a' })
      expect(await historyOf()).toHaveLength(1)
    })
  })

  describe('what the engine made', () => {
    const made: Made = {
      engine: '0.1.0',
      inputSha256: 'f'.repeat(64),
      status: 'no-plan',
      result: null,
      issues: [{ path: 'pipes.0', code: 'pipe-does-not-pass', values: { boreM: 0.05 } }],
    }

    test('is kept as made, result or reasons', async () => {
      await store.crossings.insert({ ...entry('a', made), demo: false }, act())
      expect((await store.crossings.find(ID))?.made).toEqual(made)
      const planned = { ...made, status: 'hold', result: { bore: { lengthM: 12.8016 } }, issues: [] }
      await store.crossings.replace({ ...entry('a', planned), expectedVersion: 1 }, act())
      expect((await store.crossings.find(ID))?.made).toEqual(planned)
    })

    test('goes with its save: one made of nothing has none', async () => {
      await store.crossings.insert({ ...entry('a', made), demo: false }, act())
      await replace('b', 1)
      expect(await store.crossings.find(ID)).toMatchObject({ made: null, status: null, engine: null })
    })

    test('is not read for a list, which still knows the status', async () => {
      await store.crossings.insert({ ...entry('a', made), demo: false }, act())
      const [item] = (await store.crossings.list({ after: null, limit: 1 })).items
      expect(item).toMatchObject({ status: 'no-plan', engine: '0.1.0' })
      expect(item).not.toHaveProperty('made')
    })
  })

  describe('history', () => {
    test('comes in pages', async () => {
      await insert('a')
      for (let version = 1; version < 5; version++) await replace(`a${version}`, version)
      const first = await store.crossings.history(ID, { after: null, limit: 3 })
      expect(first.items.map((line) => line.version)).toEqual([1, 2, 3])
      const second = await store.crossings.history(ID, { after: first.next, limit: 3 })
      expect(second.items.map((line) => line.version)).toEqual([4, 5])
      expect(second.next).toBeNull()
    })

    test.each([
      ['update', "update revision set who = 'Eve'"],
      ['delete', 'delete from revision'],
      ...(name === 'SQLite' ? OVERWRITING_SQLITE : OVERWRITING_POSTGRES),
    ])('the database itself refuses to %s a line', async (_what, statement) => {
      await insert('a', 'k1')
      await expect(runRaw(place, statement)).rejects.toThrow(/append-only/)
      expect(await historyOf()).toEqual([[1, 'insert', 'a']])
    })
  })

  test('another noun is a table that looks alike and a line that names it', async () => {
    await runRaw(
      place,
      'create table sketch as select * from crossing',
      'create unique index sketch_id on sketch (id)',
    )
    const database = await openDatabase(place)
    const sketches = createDocumentStore(database, SKETCH)
    await insert('a crossing')
    await sketches.insert({ id: ID, document: { title: 'a sketch' }, made: null, demo: false }, act())
    await sketches.remove({ id: ID, expectedVersion: 1 }, act())
    expect((await sketches.history(ID, { after: null, limit: 9 })).items).toHaveLength(2)
    expect(await store.crossings.find(ID)).toMatchObject({ name: 'a crossing', version: 1 })
    await database.queries.destroy()
  })

  test('a document of an older format is brought up to date when it is read, step by step', async () => {
    await runRaw(
      place,
      'create table sketch as select * from crossing',
      'create unique index sketch_id on sketch (id)',
    )
    const database = await openDatabase(place)
    const older = createDocumentStore(database, SKETCH)
    await older.insert({ id: ID, document: { title: 'a' }, made: null, demo: false }, act('k1'))
    const latest: Noun<{ heading: string; lines: number }> = {
      ...SKETCH,
      format: 'underlane/sketch@3',
      nameOf: (document) => document.heading,
      keysOf: () => ({ belongsTo: null, onDay: null }),
      read: (document) => document as { heading: string; lines: number },
      upgrades: {
        'underlane/sketch@1': {
          format: 'underlane/sketch@2',
          upgrade: (given) => ({ heading: (given as { title: string }).title }),
        },
        'underlane/sketch@2': {
          format: 'underlane/sketch@3',
          upgrade: (given) => ({ ...(given as { heading: string }), lines: 1 }),
        },
      },
    }
    const sketches = createDocumentStore(database, latest)
    const document = { heading: 'a', lines: 1 }
    expect(await sketches.find(ID)).toMatchObject({ format: 'underlane/sketch@3', document, version: 1 })
    expect((await sketches.list({ after: null, limit: 1 })).items).toMatchObject([{ document }])
    expect((await sketches.history(ID, { after: null, limit: 1 })).items).toMatchObject([{ document }])
    expect(await sketches.insert({ id: ID, document, made: null, demo: false }, act('k1'))).toMatchObject({
      outcome: 'same',
    })
    const changed = { heading: 'b', lines: 2 }
    await sketches.replace({ id: ID, document: changed, made: null, expectedVersion: 1 }, act())
    // The older program meets a document it cannot know, and says so instead of guessing.
    await expect(older.find(ID)).rejects.toMatchObject({ code: 'made-by-a-newer-version' })
    await database.queries.destroy()
  })

  test('a name with what only one of the databases could keep is kept in both', async () => {
    const odd = 'a\0b \ud800 c'
    await insert(odd)
    const found = await store.crossings.find(ID)
    expect(found?.document.name).toBe(odd)
    expect((await historyOf())[0]).toEqual([1, 'insert', odd])
  })
})
