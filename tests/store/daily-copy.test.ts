import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  statSync,
  truncateSync,
  utimesSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest'
import { serverConfig } from '../../src/config.ts'
import { copyEveryDay } from '../../src/server/copy-every-day.ts'
import { startServer } from '../../src/server/serve.ts'
import { copiesToKeep } from '../../src/store/backup/copies-to-keep.ts'
import { makeDailyCopy } from '../../src/store/backup/daily-copy.ts'
import { openDatabase, type StorePlace } from '../../src/store/open-store.ts'
import { run } from '../cli/run-in-process.ts'
import { DATABASES, openAt, type Places } from '../support/store-places.ts'

const ACT = { who: 'Ada', at: new Date('2026-03-02T09:00:00Z'), from: 'test', requestKey: null }
const ID = '00000000-0000-4000-8000-000000000001'
const DAY_MS = 24 * 60 * 60 * 1000
const START = Date.parse('2026-03-02T23:30:00Z')
const dayAt = (n: number) => new Date(START + n * DAY_MS)
const dayText = (n: number) => dayAt(n).toISOString().slice(0, 10)

let folder: string
let copies: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'underlane-daily-'))
  copies = join(folder, 'copies')
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

describe.each(DATABASES)('a copy of %s', (_name, makePlaces) => {
  let places: Places
  let place: StorePlace
  beforeAll(async () => {
    places = await makePlaces()
    place = await places.fresh()
    const store = await openAt(place)
    await store.jobs.insert({ id: ID, document: { name: 'kept' }, made: null, demo: false }, ACT)
    await store.close()
  }, 60_000)
  afterAll(() => places.end(), 60_000)
  const from = () => ({ open: () => openDatabase(place), folder: copies })

  test('is made once a day, for its maker’s eyes, and can be restored', async () => {
    const file = join(copies, 'underlane-2026-03-02.tar.gz')
    expect(await makeDailyCopy(from(), dayAt(0))).toBe(file)
    expect(await makeDailyCopy(from(), new Date(START + 60_000))).toBeNull()
    expect(await makeDailyCopy(from(), new Date(START + 60 * 60_000))).toBe(
      join(copies, 'underlane-2026-03-03.tar.gz'),
    )
    expect(readdirSync(copies)).toEqual(['underlane-2026-03-02.tar.gz', 'underlane-2026-03-03.tar.gz'])
    expect((statSync(copies).mode & 0o777).toString(8)).toBe('700')
    expect((statSync(file).mode & 0o777).toString(8)).toBe('600')
    const fresh = await places.fresh()
    const data = fresh.databaseUrl === null ? ['--data', fresh.dataFolder] : []
    const environment: Record<string, string> =
      fresh.databaseUrl === null ? {} : { DATABASE_URL: fresh.databaseUrl }
    expect((await run(['restore', file, ...data], { environment })).code).toBe(0)
    const store = await openAt(fresh)
    expect((await store.jobs.find(ID))?.document).toEqual({ name: 'kept' })
    await store.close()
  })
})

describe('copies of a running server', () => {
  let place: StorePlace
  beforeEach(async () => {
    place = { dataFolder: join(folder, 'data'), databaseUrl: null }
    await (await openAt(place)).close()
  })
  const from = () => ({ open: () => openDatabase(place), folder: copies })

  test('go on for months by a clock of ours, and the old ones go as the new ones come', async () => {
    let day = 0
    const said: string[] = []
    const every = copyEveryDay(
      from(),
      () => dayAt(day),
      (line) => said.push(line),
    )
    for (; day < 60; day++) await every.look()
    await every.stop()
    const kept = readdirSync(copies).map((name) => name.slice('underlane-'.length, -'.tar.gz'.length))
    // The last seven days, the Sundays of five weeks, and the ends of the months.
    expect(kept).toEqual([
      '2026-03-31',
      '2026-04-05',
      '2026-04-12',
      '2026-04-19',
      ...Array.from({ length: 7 }, (_, n) => dayText(53 + n)),
    ])
    expect(said).toEqual([])
  })

  test('begin a minute after its start, and a stop waits for the one that is being made', async () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'setInterval', 'clearTimeout', 'clearInterval'] })
    try {
      const options = { port: '0', data: place.dataFolder, empty: true }
      const found = serverConfig(options, {}, { root: folder, working: folder })
      if (!found.ok) throw new Error(found.sentence)
      const running = await startServer(found.config, () => {})
      vi.advanceTimersByTime(59_000)
      await running.close()
      expect(readdirSync(place.dataFolder)).not.toContain('copies')
      const again = await startServer(found.config, () => {})
      vi.advanceTimersByTime(60_000)
      await again.close()
      expect(readdirSync(join(place.dataFolder, 'copies'))).toHaveLength(1)
    } finally {
      vi.useRealTimers()
    }
  })

  test('that cannot be made are said, and the server goes on; the next look tries again', async () => {
    const said: string[] = []
    writeFileSync(copies, 'a file where the folder should be')
    const every = copyEveryDay(
      from(),
      () => dayAt(0),
      (line) => said.push(line),
    )
    await Promise.all([every.look(), every.look()])
    expect(said).toHaveLength(1)
    expect(said[0]).toMatch(/^No copy of the store was made today. .*copies cannot be written/)
    rmSync(copies)
    await every.look()
    expect(readdirSync(copies)).toHaveLength(1)
    await every.stop()
  })

  test('are not begun where they would leave the store no room', async () => {
    mkdirSync(copies)
    const before = join(copies, 'underlane-2026-03-01.tar.gz')
    writeFileSync(before, '')
    // Larger than any disk as the file system tells it, and empty on the disk.
    truncateSync(before, 2 ** 43)
    await expect(makeDailyCopy(from(), dayAt(0))).rejects.toMatchObject({ code: 'no-room' })
    expect(readdirSync(copies)).toEqual(['underlane-2026-03-01.tar.gz'])
  })

  test('sweep up what a power cut left, and touch nothing else', async () => {
    mkdirSync(join(copies, '.underlane-2026-03-01.tar.gz.77.part-x'), { recursive: true })
    for (const name of [
      '.underlane-2026-02-28.tar.gz.7.part',
      '.underlane-2026-03-02.tar.gz.9.part',
      'mine.tar.gz',
    ])
      writeFileSync(join(copies, name), '')
    const old = new Date(START - 2 * DAY_MS)
    for (const name of [
      '.underlane-2026-03-01.tar.gz.77.part-x',
      '.underlane-2026-02-28.tar.gz.7.part',
      'mine.tar.gz',
    ])
      utimesSync(join(copies, name), old, old)
    utimesSync(join(copies, '.underlane-2026-03-02.tar.gz.9.part'), dayAt(0), dayAt(0))
    await makeDailyCopy(from(), dayAt(0))
    expect(readdirSync(copies)).toEqual([
      '.underlane-2026-03-02.tar.gz.9.part',
      'mine.tar.gz',
      'underlane-2026-03-02.tar.gz',
    ])
  })
})

describe('which copies are kept', () => {
  test('seven days, five weeks, twelve months, whatever was missed', () => {
    const years = Array.from({ length: 800 }, (_, n) => dayText(n))
    const kept = [...copiesToKeep(years)].sort()
    expect(kept.at(-1)).toBe(dayText(799))
    expect(kept.length).toBeLessThanOrEqual(7 + 5 + 12)
    expect(kept.filter((day) => /-(28|29|30|31)$/.test(day)).length).toBeGreaterThanOrEqual(11)
    expect([...copiesToKeep(['2020-01-01', '2026-03-02'])].sort()).toEqual(['2020-01-01', '2026-03-02'])
  })

  test('the newest always, never more than there are, and the same when asked again', () => {
    const days = fc.uniqueArray(fc.nat(3000).map(dayText), { minLength: 1, maxLength: 60 })
    fc.assert(
      fc.property(days, (some) => {
        const kept = copiesToKeep(some)
        expect(kept.has([...some].sort().at(-1) ?? '')).toBe(true)
        for (const day of kept) expect(some).toContain(day)
        expect(copiesToKeep([...kept])).toEqual(kept)
      }),
    )
  })
})
