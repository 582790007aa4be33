import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { verifyHistory } from '../../src/store/audit.ts'
import { openDatabase, type StorePlace, storeFile } from '../../src/store/open-store.ts'
import { DATABASES, openAt, type Places } from '../support/store-places.ts'
import { writerProgram } from '../support/writer-program.ts'

const SLOW = process.env.UNDERLANE_SLOW === '1'
const KILLS: Readonly<Record<string, number>> = SLOW ? { SQLite: 50, PostgreSQL: 25 } : {}
const FEW_KILLS = 3
const ENOUGH_LINES = 120

let writer: Awaited<ReturnType<typeof writerProgram>>
beforeAll(async () => {
  writer = await writerProgram()
})
afterAll(() => writer.remove())

/** Starts the writer, kills it after enough acknowledged changes, and gives those. */
async function killedAfter(lines: number, first: number, place: StorePlace): Promise<string[]> {
  const address = place.databaseUrl === null ? [] : [place.databaseUrl]
  const child: ChildProcess = spawn(
    process.execPath,
    [writer.file, place.dataFolder, String(first), ...address],
    {
      stdio: ['ignore', 'pipe', 'inherit'],
    },
  )
  const { stdout } = child
  if (stdout === null) throw new Error('no output to read')
  let said = ''
  stdout.setEncoding('utf8')
  stdout.on('data', (chunk: string) => {
    said += chunk
    if (said.split('\n').length > lines) child.kill('SIGKILL')
  })
  await once(child, 'close')
  return said.split('\n').slice(0, -1)
}

async function lostOf(acknowledged: readonly string[], place: StorePlace): Promise<string[]> {
  const store = await openAt(place)
  const lost: string[] = []
  for (const line of acknowledged) {
    const [id = '', version] = line.split(' ')
    const found = await store.crossings.find(id)
    const history = await store.crossings.history(id, { after: null, limit: 10 })
    // The history and the document are one change: never one without the other.
    if (found === null || found.version < Number(version) || history.items.length !== found.version)
      lost.push(line)
  }
  await store.close()
  return lost
}

async function brokenIn(place: StorePlace): Promise<unknown> {
  const database = await openDatabase(place)
  const { broken } = await verifyHistory(database)
  await database.queries.destroy()
  return broken
}

async function expectSoundFile(dataFolder: string): Promise<void> {
  const { default: Driver } = await import('libsql')
  const raw = new Driver(storeFile(dataFolder))
  expect(raw.prepare('pragma integrity_check').get()).toMatchObject({ integrity_check: 'ok' })
  raw.close()
}

describe.each(DATABASES)('on %s', (name, makePlaces) => {
  let places: Places
  let place: StorePlace
  beforeAll(async () => {
    places = await makePlaces()
    place = await places.fresh()
  }, 60_000)
  afterAll(() => places.end(), 60_000)

  const kills = Array.from({ length: KILLS[name] ?? FEW_KILLS }, (_, at) => at + 1)
  test.each(kills)(
    'killed while it writes, time %i: what was acknowledged is there, and the chain is whole',
    async (kill) => {
      const acknowledged = await killedAfter(ENOUGH_LINES + kill, kill * 100_000, place)
      expect(acknowledged.length).toBeGreaterThanOrEqual(ENOUGH_LINES)
      await places.crash()
      expect(await lostOf(acknowledged, place)).toEqual([])
      expect(await brokenIn(place)).toBeNull()
      if (place.databaseUrl === null) await expectSoundFile(place.dataFolder)
    },
  )

  test('two programs that make one store at once, and write to it, wait for each other', async () => {
    const fresh = await places.fresh()
    const both = await Promise.all([killedAfter(60, 1, fresh), killedAfter(60, 100_000, fresh)])
    expect(both.flat().length).toBeGreaterThanOrEqual(120)
    expect(await lostOf(both.flat(), fresh)).toEqual([])
    expect(await brokenIn(fresh)).toBeNull()
  })
})
