import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { serverConfig } from '../../src/config.ts'
import { startSentence } from '../../src/server/serve.ts'
import { verifyHistory } from '../../src/store/audit.ts'
import { openDatabase, openStore } from '../../src/store/open-store.ts'

const FIXTURES = new URL('../fixtures/', import.meta.url)
const MIGRATIONS = new URL('../../src/store/migrations/', import.meta.url)
const FIRST = '00000000-0000-4000-8000-000000000001'
const SECOND = '00000000-0000-4000-8000-000000000002'
const ACT = { who: 'Ada', at: new Date('2026-12-01T09:00:00Z'), from: 'test', requestKey: null }

let folder: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'underlane-migrate-'))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

async function runScript(script: string): Promise<void> {
  const { default: Database } = await import('libsql')
  const raw = new Database(join(folder, 'underlane.sqlite'))
  raw.exec(script)
  raw.close()
}
const olderStore = () => runScript(readFileSync(new URL('store-version-1.sql', FIXTURES), 'utf8'))

describe('a store of version 1', () => {
  test('opens with everything it had, and can be worked on', async () => {
    await olderStore()
    const store = await openStore(folder)
    const { items } = await store.crossings.list({ after: null, limit: 10 })
    expect(items.map(({ id, name, demo, status, engine }) => [id, name, demo, status, engine])).toEqual([
      [FIRST, 'Alder Road 14, water service', true, null, null],
      [SECOND, 'Calle Ñandú 3, "sewer"', false, null, null],
    ])
    expect((await store.crossings.find(SECOND))?.made).toBeNull()
    const changed = await store.crossings.replace(
      { id: SECOND, document: { name: 'new name' }, made: null, expectedVersion: 1 },
      ACT,
    )
    expect(changed.outcome).toBe('done')
    const history = await store.crossings.history(SECOND, { after: null, limit: 10 })
    expect(history.items.map(({ version, action, who }) => [version, action, who])).toEqual([
      [1, 'insert', 'Ada'],
      [2, 'replace', 'Ada'],
    ])
    await store.close()
  })

  test('is brought up to date once, and a second opening changes nothing', async () => {
    await olderStore()
    await (await openStore(folder)).close()
    const store = await openStore(folder)
    expect((await store.crossings.list({ after: null, limit: 10 })).items).toHaveLength(2)
    await store.close()
  })

  test('that cannot be brought up to date is left as it was', async () => {
    await olderStore()
    // What migration 0002 adds is there already: the work of something else.
    await runScript('alter table crossing add column issues text')
    await expect(openStore(folder)).rejects.toMatchObject({ code: 'migration-failed' })
    const { default: Database } = await import('libsql')
    const raw = new Database(join(folder, 'underlane.sqlite'))
    const columns = raw.prepare("select name from pragma_table_info('crossing')").all()
    expect(columns).not.toContainEqual({ name: 'engine' })
    raw.close()
  })
})

test('a store of a newer version is refused in a sentence that says what to do', async () => {
  await olderStore()
  await runScript("insert into kysely_migration values ('9999-later', '2030-01-01')")
  const found = serverConfig({ data: folder }, {}, { root: '/', working: '/' })
  if (!found.ok) throw new Error(found.sentence)
  const error: unknown = await openStore(folder).then(
    () => null,
    (thrown: unknown) => thrown,
  )
  expect(startSentence(error, found.config)).toMatch(/newer Underlane: update this one/)
})

const NUMBERS = readdirSync(MIGRATIONS)
  .map((name) => Number(name.slice(0, 4)))
  .sort((a, b) => a - b)

test('migrations are numbered without a gap', () => {
  expect(NUMBERS).toEqual(NUMBERS.map((_, at) => at + 1))
})

test.each(NUMBERS.slice(0, -1))(
  'a store as version %i left it is kept, opens, has one whole chain and takes more',
  async (version) => {
    await runScript(readFileSync(new URL(`store-version-${version}.sql`, FIXTURES), 'utf8'))
    const store = await openStore(folder)
    const { items } = await store.crossings.list({ after: null, limit: 10 })
    expect(items[0]).toMatchObject({ id: FIRST, document: { line: { length: '42 ft' } } })
    const job = { id: FIRST, document: { name: 'a job' }, made: null, demo: false }
    expect((await store.jobs.insert(job, ACT)).outcome).toBe('done')
    await store.close()
    const database = await openDatabase({ dataFolder: folder, databaseUrl: null })
    const { end, broken } = await verifyHistory(database)
    await database.queries.destroy()
    expect(broken).toBeNull()
    expect(end.seq).toBe(version === 1 ? 3 : 4)
  },
)
