import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { verifyHistory } from '../../src/store/audit.ts'
import { openDatabase, type StorePlace } from '../../src/store/open-store.ts'
import { run } from '../cli/run-in-process.ts'
import { DATABASES, openAt, type Places, runRaw } from '../support/store-places.ts'

const ACT = { who: 'Ada', at: new Date('2026-03-02T09:00:00Z'), from: 'test', requestKey: null }
const idOf = (n: number) => `00000000-0000-4000-8000-${String(n).padStart(12, '0')}`

/** What somebody does who holds the whole database and takes its guards off first. */
const UNGUARDED: Readonly<Record<string, readonly string[]>> = {
  SQLite: [
    'drop trigger revision_is_never_updated',
    'drop trigger revision_is_never_deleted',
    'drop trigger revision_is_never_overwritten',
  ],
  PostgreSQL: ['drop trigger revision_is_never_changed on revision'],
}

describe.each(DATABASES)('on %s', (name, makePlaces) => {
  let places: Places
  let place: StorePlace
  beforeAll(async () => {
    places = await makePlaces()
  }, 60_000)
  afterAll(() => places.end(), 60_000)
  beforeEach(async () => {
    place = await places.fresh()
    const store = await openAt(place)
    for (const n of [1, 2, 3]) {
      await store.jobs.insert({ id: idOf(n), document: { name: `job ${n}` }, made: null, demo: false }, ACT)
      await store.tools.insert({ id: idOf(n), document: { name: `tool ${n}` }, made: null, demo: false }, ACT)
    }
    await store.jobs.replace(
      { id: idOf(1), document: { name: 'again' }, made: null, expectedVersion: 1 },
      ACT,
    )
    await store.tools.remove({ id: idOf(2), expectedVersion: 1 }, ACT)
    await store.tools.remove({ id: idOf(3), expectedVersion: 1 }, ACT)
    await store.tools.restore({ id: idOf(3), expectedVersion: 2 }, ACT)
    await store.close()
  })

  const verified = async () => {
    const database = await openDatabase(place)
    const found = await verifyHistory(database)
    await database.queries.destroy()
    return found
  }

  test('an untouched history is one whole chain', async () => {
    expect(await verified()).toMatchObject({ end: { seq: 10 }, broken: null })
  })

  test.each([
    ['a name', "update revision set who = 'Eve' where seq = 4", 4, 'line-altered'],
    ['a document', `update revision set document = '{"name":"x"}' where seq = 3`, 3, 'line-altered'],
    ['a time', "update revision set acted_at = '2020-01-01T00:00:00.000Z' where seq = 1", 1, 'line-altered'],
    ['a removal', "update revision set action = 'replace' where seq = 8", 8, 'line-altered'],
    ['a line taken out', 'delete from revision where seq = 5', 6, 'line-missing'],
    ['its hash', `update revision set hash = '${'0'.repeat(64)}' where seq = 10`, 10, 'line-altered'],
  ])('%s changed is named by its line', async (_what, statement, seq, what) => {
    await runRaw(place, ...(UNGUARDED[name] ?? []), statement)
    expect((await verified()).broken).toMatchObject({ seq, what })
  })

  test.each([
    ['its end cut off', 'delete from revision where seq > 9', 'tool', idOf(3), 'history-missing'],
    [
      'a document put in',
      `update job set document = '{"name":"x"}' where id = '${idOf(2)}'`,
      'job',
      idOf(2),
      'document-altered',
    ],
    [
      'a document brought back',
      `update tool set deleted_at = null where id = '${idOf(2)}'`,
      'tool',
      idOf(2),
      'document-altered',
    ],
    ['a document taken away', `delete from job where id = '${idOf(3)}'`, 'job', idOf(3), 'document-missing'],
    [
      'a version lowered',
      `update job set version = 1 where id = '${idOf(1)}'`,
      'job',
      idOf(1),
      'history-missing',
    ],
  ])('%s is found out by the other half', async (_what, statement, noun, id, what) => {
    await runRaw(place, ...(UNGUARDED[name] ?? []), statement)
    expect((await verified()).broken).toMatchObject({ noun, id, what })
  })

  test('the command ends with 3 and names the first bad row', async () => {
    const where = { environment: place.databaseUrl === null ? {} : { DATABASE_URL: place.databaseUrl } }
    const data = place.databaseUrl === null ? ['--data', place.dataFolder] : []
    const whole = await run(['audit', 'verify', ...data], where)
    expect(whole).toMatchObject({ code: 0, stderr: '' })
    expect(whole.stdout).toMatch(/^10 lines, one chain, whole/)
    await runRaw(place, ...(UNGUARDED[name] ?? []), "update revision set who = 'Eve' where seq = 7")
    const broken = await run(['audit', 'verify', ...data, '--json'], where)
    expect(broken.code).toBe(3)
    expect(broken.stderr).toBe(`Line 7 of the history: job ${idOf(1)}, version 2, is not what was written.\n`)
    expect(JSON.parse(broken.stdout)).toMatchObject({ schema: 'underlane/audit@1', broken: { seq: 7 } })
  })
})

test('where there is no store, none is made and the sentence says so', async () => {
  const answer = await run(['audit', 'verify', '--data', '/nowhere/at/all'])
  expect(answer.code).toBe(3)
  expect(answer.stderr).toMatch(/There is no store in \/nowhere\/at\/all/)
})
