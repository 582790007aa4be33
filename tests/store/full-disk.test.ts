import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest'
import { copyEveryDay } from '../../src/server/copy-every-day.ts'
import { openDatabase, type StorePlace } from '../../src/store/open-store.ts'
import { StoreError } from '../../src/store/store-error.ts'
import { run } from '../cli/run-in-process.ts'
import { openAt } from '../support/store-places.ts'

const ACT = { who: 'Ada', at: new Date('2026-03-02T09:00:00Z'), from: 'test', requestKey: null }
const idOf = (n: number) => `00000000-0000-4000-8000-${String(n).padStart(12, '0')}`

/** How many bytes the disk still takes, for the disk that is only played; null: it takes all. */
const disk = vi.hoisted(() => ({ room: null as number | null }))

vi.mock('node:fs/promises', async (original) => {
  const real = await original<typeof import('node:fs/promises')>()
  const full = () => Object.assign(new Error('ENOSPC: no space left on device, write'), FULL)
  const FULL = { code: 'ENOSPC', errno: -28, syscall: 'write' }
  const spend = (bytes: number): void => {
    if (disk.room === null) return
    disk.room -= bytes
    if (disk.room < 0) throw full()
  }
  return {
    ...real,
    open: async (...args: Parameters<typeof real.open>) => {
      const file = await real.open(...args)
      const write = file.write.bind(file)
      Object.assign(file, {
        write: async (piece: Buffer | string) => {
          spend(piece.length)
          return typeof piece === 'string' ? write(piece) : write(piece)
        },
      })
      return file
    },
    writeFile: async (...args: Parameters<typeof real.writeFile>) => {
      spend(String(args[1]).length)
      return real.writeFile(...args)
    },
  }
})

type Disk = {
  readonly folder: string
  /** Nothing more can be written after so many bytes. */
  fill(bytesLeft: number): void
  clear(): void
  end(): void
}

/** Real files; only their writing says at some point that there is no room. */
function playedDisk(): Disk {
  const folder = mkdtempSync(join(tmpdir(), 'underlane-full-'))
  return {
    folder,
    fill: (bytesLeft) => {
      disk.room = bytesLeft
    },
    clear: () => {
      disk.room = null
    },
    end: () => rmSync(folder, { recursive: true, force: true }),
  }
}

const DISK_BYTES = 4 * 1024 * 1024

/** A file system of its own of a few megabytes, really full. Only some users may make one. */
function realDisk(): Disk {
  const folder = mkdtempSync(join(tmpdir(), 'underlane-disk-'))
  const mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', `size=${DISK_BYTES}`, 'tmpfs', folder])
  if (mounted.status !== 0) {
    rmSync(folder, { recursive: true, force: true })
    throw new Error('no file system of its own')
  }
  const ballast = join(folder, 'ballast')
  return {
    folder,
    fill: (bytesLeft) => {
      const used = readdirSync(folder).length === 0 ? 0 : usedIn(folder)
      writeFileSync(ballast, Buffer.alloc(Math.max(0, DISK_BYTES - used - bytesLeft)))
    },
    clear: () => rmSync(ballast, { force: true }),
    end: () => {
      // Lazily: the driver keeps a file open for a while after it has closed it.
      spawnSync('umount', ['-l', folder])
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

const usedIn = (folder: string): number =>
  1024 * Number(spawnSync('df', ['--output=used', '-k', folder], { encoding: 'utf8' }).stdout.split('\n')[1])

function canMount(): boolean {
  try {
    realDisk().end()
    return true
  } catch {
    return false
  }
}
const REAL_DISKS: readonly (readonly [string, () => Disk])[] = canMount()
  ? [['a real disk of four megabytes', realDisk]]
  : []
const DISKS: readonly (readonly [string, () => Disk])[] = [
  ['a disk that is played', playedDisk],
  ...REAL_DISKS,
]

describe.each(DISKS)('on %s', (_name, makeDisk) => {
  let small: Disk
  let elsewhere: string
  let place: StorePlace
  beforeAll(async () => {
    small = makeDisk()
    elsewhere = mkdtempSync(join(tmpdir(), 'underlane-store-'))
    place = { dataFolder: join(elsewhere, 'data'), databaseUrl: null }
    const store = await openAt(place)
    for (let n = 0; n < 40; n++) {
      const notes = Buffer.from(Array.from({ length: 3000 }, (_, at) => (at * n * 7919) % 251)).toString(
        'base64',
      )
      await store.jobs.insert(
        { id: idOf(n), document: { name: `job ${n}`, notes }, made: null, demo: false },
        ACT,
      )
    }
    await store.close()
  })
  afterAll(() => {
    small.clear()
    small.end()
    rmSync(elsewhere, { recursive: true, force: true })
  })
  beforeEach(() => small.clear())

  const inPlace = (command: string, target: string) => run([command, target, '--data', place.dataFolder])

  test.each([
    ['backup', 'all.tar.gz'],
    ['export', 'all'],
  ])(
    'a %s that finds no room says so, leaves nothing half-written, and works once there is',
    async (command, name) => {
      const target = join(small.folder, name)
      const others = readdirSync(small.folder)
      for (const bytesLeft of [0, 8_000, 100_000]) {
        small.fill(bytesLeft)
        const answer = await inPlace(command, target)
        expect(answer).toMatchObject({ code: 3, stdout: '' })
        expect(answer.stderr).toBe(`${target} cannot be written: give another file, or make room.\n`)
        small.clear()
        expect(readdirSync(small.folder)).toEqual(others)
      }
      expect((await inPlace(command, target)).code).toBe(0)
      rmSync(target, { recursive: true, force: true })
    },
  )

  test('a backup that finds no room leaves the one before as it was', async () => {
    const target = join(small.folder, 'all.tar.gz')
    expect((await inPlace('backup', target)).code).toBe(0)
    small.fill(20_000)
    expect((await inPlace('backup', target)).code).toBe(3)
    small.clear()
    const fresh = mkdtempSync(join(elsewhere, 'fresh-'))
    expect((await run(['restore', target, '--data', fresh])).code).toBe(0)
    rmSync(target)
  })

  test('the copy of the day says so, and is made at the next look', async () => {
    const said: string[] = []
    const copies = join(small.folder, 'copies')
    mkdirSync(copies)
    const from = { open: () => openDatabase(place), folder: copies }
    const every = copyEveryDay(
      from,
      () => ACT.at,
      (line) => said.push(line),
    )
    small.fill(20_000)
    await every.look()
    expect(said).toHaveLength(1)
    expect(said[0]).toMatch(/^No copy of the store was made today\. .* cannot be written/)
    expect(readdirSync(copies)).toEqual([])
    small.clear()
    await every.look()
    await every.stop()
    expect(readdirSync(copies)).toEqual(['underlane-2026-03-02.tar.gz'])
    rmSync(copies, { recursive: true })
  })
})

test('a restore that finds no room to look the file through says so, and changes nothing', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'underlane-full-'))
  const [from, to] = [join(folder, 'from'), join(folder, 'to')]
  const store = await openAt({ dataFolder: from, databaseUrl: null })
  await store.jobs.insert({ id: idOf(1), document: { name: 'job' }, made: null, demo: false }, ACT)
  await store.close()
  const file = join(folder, 'all.tar.gz')
  expect((await run(['backup', file, '--data', from])).code).toBe(0)
  disk.room = 100
  const answer = await run(['restore', file, '--data', to])
  disk.room = null
  expect(answer).toMatchObject({ code: 3, stdout: '' })
  expect(answer.stderr).toMatch(/^There is too little room in .* to look a backup through/)
  expect(readdirSync(folder).sort()).toEqual(['all.tar.gz', 'from'])
  expect((await run(['restore', file, '--data', to])).code).toBe(0)
  rmSync(folder, { recursive: true, force: true })
})

describe.each(REAL_DISKS)('the store itself on %s', (_name, makeDisk) => {
  test('says that there is no room, loses nothing it has said, reads on, and writes again', async () => {
    const small = makeDisk()
    const place = { dataFolder: join(small.folder, 'data'), databaseUrl: null }
    const store = await openAt(place)
    const put = (n: number) =>
      store.jobs.insert(
        { id: idOf(n), document: { name: `job ${n}`, notes: 'x'.repeat(9000) }, made: null, demo: false },
        ACT,
      )
    await put(0)
    small.fill(200_000)
    let acknowledged = 1
    const failure: unknown = await (async () => {
      for (; acknowledged < 1000; acknowledged++) await put(acknowledged)
    })().catch((error: unknown) => error)
    expect(failure).toBeInstanceOf(StoreError)
    expect(failure).toMatchObject({ code: 'full' })
    const listed = await store.jobs.list({ after: null, limit: 500 })
    expect(listed.items.map(({ name }) => name)).toEqual(
      Array.from({ length: acknowledged }, (_, n) => `job ${n}`),
    )
    small.clear()
    expect((await put(acknowledged)).outcome).toBe('done')
    await store.close()
    const again = await openAt(place)
    expect((await again.jobs.list({ after: null, limit: 500 })).items).toHaveLength(acknowledged + 1)
    await again.close()
    small.end()
  })
})
