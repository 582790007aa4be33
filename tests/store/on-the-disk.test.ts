import { spawn, spawnSync } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as sleep } from 'node:timers/promises'
import { sql } from 'kysely'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type OpenStore, openDatabase, type StorePlace, storesOf } from '../../src/store/open-store.ts'
import { powerCutWarning } from '../../src/store/power-cut.ts'
import { DATABASES, openAt, type Places, runRaw } from '../support/store-places.ts'
import { writerProgram } from '../support/writer-program.ts'

/** What a power cut takes is what was not yet on the disk: each acknowledged write has waited for a sync of its own. */

const ACT = { who: 'Ada', at: new Date('2026-03-02T09:00:00Z'), from: 'test', requestKey: null }
const idOf = (n: number) => `00000000-0000-4000-8000-${String(n).padStart(12, '0')}`
const put = (store: Pick<OpenStore, 'jobs'>, n: number) =>
  store.jobs.insert({ id: idOf(n), document: { name: `job ${n}` }, made: null, demo: false }, ACT)

describe('on SQLite', () => {
  let folder: string
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'underlane-disk-'))
  })
  afterAll(() => rmSync(folder, { recursive: true, force: true }))

  test('the connection that writes syncs in full at each commit, and says so itself', async () => {
    const database = await openDatabase({ dataFolder: join(folder, 'asked'), databaseUrl: null })
    const asked = async (pragma: string) =>
      Object.values(
        (await sql.raw<Record<string, unknown>>(`pragma ${pragma}`).execute(database.queries)).rows[0] ?? {},
      )
    await put(storesOf(database), 1)
    expect(await asked('journal_mode')).toEqual(['wal'])
    // 2 is FULL: without it a log is only synced when it is moved over.
    expect(await asked('synchronous')).toEqual([2])
    expect(await asked('foreign_keys')).toEqual([1])
    await database.queries.destroy()
  })
})

const CALLS = /^\d*\s*(?:\[pid +\d+\] )?(fsync|fdatasync)\(/
const CHANGES = 60
const canTrace = spawnSync('strace', ['-f', '-e', 'trace=fsync', 'true'], { encoding: 'utf8' }).status === 0
const TRACERS = canTrace ? ['strace'] : []

/** Where the system can be watched: counted from outside, at the door of the kernel. */
describe.each(TRACERS)('on SQLite, watched by %s', (tracer) => {
  test(`${CHANGES} acknowledged changes have waited for as many syncs`, async () => {
    const folder = mkdtempSync(join(tmpdir(), 'underlane-traced-'))
    const writer = await writerProgram()
    const trace = join(folder, 'trace')
    const watched = ['-f', '-e', 'trace=fsync,fdatasync', '-o', trace, process.execPath]
    const child = spawn(tracer, [...watched, writer.file, join(folder, 'data'), '1'], {
      stdio: ['ignore', 'pipe', 'ignore'],
    })
    let said = ''
    child.stdout.setEncoding('utf8')
    child.stdout.on('data', (text: string) => {
      said += text
      // Nobody listens any more: the writer ends at its next word, and strace behind it.
      if (said.split('\n').length > CHANGES) child.stdout.destroy()
    })
    await once(child, 'close')
    const acknowledged = said.split('\n').length - 1
    const syncs = readFileSync(trace, 'utf8')
      .split('\n')
      .filter((line) => CALLS.test(line)).length
    expect(acknowledged).toBeGreaterThanOrEqual(CHANGES)
    expect(syncs).toBeGreaterThanOrEqual(acknowledged)
    writer.remove()
    rmSync(folder, { recursive: true, force: true })
  }, 60_000)
})

describe.each(DATABASES.filter(([name]) => name === 'PostgreSQL'))('on %s', (_name, makePlaces) => {
  let places: Places
  let place: StorePlace
  beforeAll(async () => {
    places = await makePlaces()
    place = await places.fresh()
  }, 60_000)
  afterAll(() => places.end(), 60_000)

  test('every connection waits for the disk, also where somebody has traded that for speed', async () => {
    await (await openAt(place)).close()
    await runRaw(place, 'alter database store1 set synchronous_commit = off')
    const database = await openDatabase(place)
    const settingsOf = (name: string) => sql<{ value: string }>`select current_setting(${name}) as value`
    const all = await Promise.all(
      Array.from({ length: 10 }, () =>
        // Held for a while, so that each is another connection of the pool.
        database.queries.connection().execute(async (connection) => {
          const { rows } = await settingsOf('synchronous_commit').execute(connection)
          await sleep(100)
          return rows[0]?.value
        }),
      ),
    )
    expect(all).toEqual(Array.from({ length: 10 }, () => 'on'))
    for (const name of ['fsync', 'full_page_writes']) {
      expect((await settingsOf(name).execute(database.queries)).rows[0]?.value).toBe('on')
    }
    await database.queries.destroy()
  })

  test('a server that itself does not wait for its disk is named at the start', async () => {
    expect(await powerCutWarning(place)).toBeNull()
    await runRaw(place, 'alter system set fsync = off', 'select pg_reload_conf()')
    await sleep(300)
    expect(await powerCutWarning(place)).toMatch(/runs with fsync off: a power cut can take/)
    await runRaw(place, 'alter system reset fsync', 'select pg_reload_conf()')
    await sleep(300)
    expect(await powerCutWarning(place)).toBeNull()
  })

  test('acknowledged changes, one after the other, have waited for as many syncs of its log', async () => {
    const database = await openDatabase(place)
    const store = storesOf(database)
    const { rows } = await sql<{ n: number }>`select current_setting('server_version_num')::int as n`.execute(
      database.queries,
    )
    // Since 18 the server counts them among all its input and output.
    const counted =
      (rows[0]?.n ?? 0) >= 180_000
        ? "select coalesce(sum(fsyncs), 0)::int as n from pg_stat_io where object = 'wal'"
        : 'select wal_sync::int as n from pg_stat_wal'
    const syncs = async () =>
      (await sql.raw<{ n: number }>(counted).execute(database.queries)).rows[0]?.n ?? 0
    // A connection tells what it has done at most once a second, when it is done with something.
    const settled = async () => {
      await sleep(1100)
      await store.jobs.find(idOf(1))
      await sleep(200)
      return syncs()
    }
    await put(store, 1)
    const before = await settled()
    for (let n = 2; n < 2 + CHANGES; n++) await put(store, n)
    expect((await settled()) - before).toBeGreaterThanOrEqual(CHANGES)
    await database.queries.destroy()
  })
})
