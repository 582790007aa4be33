import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { gunzipSync, gzipSync } from 'node:zlib'
import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { BackupError } from '../../src/store/backup/backup-error.ts'
import { readBackup } from '../../src/store/backup/read-backup.ts'
import { readTar, TAR_END, tarHeader, tarPadding } from '../../src/store/backup/tar.ts'
import { writeBackup } from '../../src/store/backup/write-backup.ts'
import { openDatabase, storeFile, storesOf } from '../../src/store/open-store.ts'
import { PLAIN } from '../support/photos.ts'

const ACT = { who: 'Ada', at: new Date('2026-03-02T09:00:00Z'), from: 'test', requestKey: null }
const idOf = (n: number) => `00000000-0000-4000-8000-${String(n).padStart(12, '0')}`
const RUNS = process.env.UNDERLANE_SLOW === '1' ? 4000 : 100
const BLOCK = 512

let folder: string
let file: string
let whole: Buffer
/** What is inside: every byte of it lies in one of these. */
let tar: Buffer
let regions: Readonly<Record<Region, readonly number[]>>
type Region = 'manifest' | 'header' | 'table' | 'attachment' | 'padding' | 'end'

/** The kind of place each byte of the archive lies in. */
function regionsOf(bytes: Buffer): Record<Region, number[]> {
  const found: Record<Region, number[]> = {
    manifest: [],
    header: [],
    table: [],
    attachment: [],
    padding: [],
    end: [],
  }
  const put = (region: Region, from: number, count: number) => {
    for (let at = from; at < from + count; at++) found[region].push(at)
  }
  let at = 0
  while (bytes[at] !== 0) {
    const name = bytes.toString('latin1', at, at + 100).replace(/\0.*$/s, '')
    const size = Number.parseInt(bytes.toString('latin1', at + 124, at + 135), 8)
    const body: Region =
      name === 'manifest.json' ? 'manifest' : name.startsWith('attachments/') ? 'attachment' : 'table'
    put('header', at, BLOCK)
    put(body, at + BLOCK, size)
    const padding = tarPadding(size).length
    put('padding', at + BLOCK + size, padding)
    at += BLOCK + size + padding
  }
  put('end', at, bytes.length - at)
  return found
}

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'underlane-damaged-'))
  file = join(folder, 'changed.tar.gz')
  const database = await openDatabase({ dataFolder: join(folder, 'data'), databaseUrl: null })
  const store = storesOf(database)
  for (const n of [1, 2, 3]) {
    await store.jobs.insert({ id: idOf(n), document: { name: `job ${n}` }, made: null, demo: false }, ACT)
  }
  await store.jobs.replace({ id: idOf(1), document: { name: 'b' }, made: null, expectedVersion: 1 }, ACT)
  await store.contents.put(PLAIN['image/jpeg'])
  await writeBackup(database, file, ACT.at)
  await database.queries.destroy()
  whole = readFileSync(file)
  tar = gunzipSync(whole)
  regions = regionsOf(tar)
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const leftovers = () => readdirSync(tmpdir()).filter((name) => name.startsWith('underlane-restore-')).length

/** How a file is taken: 'taken', or the code of the refusal; anything else thrown is our failure. */
async function codeOf(bytes: Uint8Array): Promise<string> {
  writeFileSync(file, bytes)
  try {
    const backup = await readBackup(file)
    backup.close()
    return 'taken'
  } catch (error) {
    if (error instanceof BackupError) return error.code
    throw error
  }
}

const flipped = (bytes: Buffer, at: number, bit: number): Buffer => {
  const copy = Buffer.from(bytes)
  copy.writeUInt8(copy.readUInt8(at) ^ (1 << bit), at)
  return copy
}
/** The files of an archive with their bytes, whatever their order. */
async function entriesIn(bytes: Buffer): Promise<readonly string[]> {
  const found: string[] = []
  for await (const { name, body } of readTar(Readable.from([bytes]))) {
    const pieces: Buffer[] = []
    for await (const piece of body) pieces.push(piece)
    found.push(`${name} ${Buffer.concat(pieces).toString('base64')}`)
  }
  return found.sort()
}

const bit = fc.nat(7)
const holds = (property: fc.IAsyncProperty<unknown>, numRuns = RUNS) => fc.assert(property, { numRuns })

test('the backup itself is taken, and nothing lies about afterwards', async () => {
  const before = leftovers()
  expect(await codeOf(whole)).toBe('taken')
  expect(await codeOf(gzipSync(tar))).toBe('taken')
  expect(await codeOf(whole.subarray(0, 500))).toBe('damaged')
  expect(leftovers()).toBeLessThanOrEqual(before)
})

describe('a bit turned in the file as it lies on the disk', () => {
  test('anywhere is refused, unless it is no part of anything', async () => {
    const place = fc.nat(whole.length - 1)
    await holds(
      fc.asyncProperty(place, bit, async (at, which) => {
        // Two bytes of a gzip header say how hard it was pressed and on what machine: no content.
        fc.pre(at !== 8 && at !== 9)
        const bytes = flipped(whole, at, which)
        const code = await codeOf(bytes)
        // The last bits of the last byte before the checksum may belong to nothing.
        if (code === 'taken') expect(gunzipSync(bytes).equals(tar)).toBe(true)
        else expect(code).toMatch(/damaged|foreign/)
      }),
    )
  })

  test('in each byte of its head and of its checksum is refused', async () => {
    const ends = [...Array(8).keys(), ...Array.from({ length: 8 }, (_, n) => whole.length - 1 - n)]
    for (const at of ends)
      expect(await codeOf(flipped(whole, at, at % 8)), String(at)).toMatch(/damaged|foreign/)
  })
})

describe('a bit turned inside, and packed again so that the outer checksum is right', () => {
  const INSIDE: readonly Region[] = ['header', 'table', 'attachment', 'padding', 'end']
  test.each(INSIDE)('in a %s is refused, unless it changes no file in it', async (region) => {
    const places = regions[region]
    expect(places.length).toBeGreaterThan(100)
    await holds(
      fc.asyncProperty(fc.constantFrom(...places), bit, async (at, which) => {
        const changed = flipped(tar, at, which)
        const code = await codeOf(gzipSync(changed, { level: 1 }))
        // A sum in a header ends in a sign that says nothing.
        if (code === 'taken') expect(await entriesIn(changed)).toEqual(await entriesIn(tar))
        else expect(code).toMatch(/damaged|foreign|newer/)
      }),
    )
  })

  test('in the manifest is refused, or changes only what it says of its maker and its time', async () => {
    const said = JSON.parse(tar.toString('utf8', BLOCK, BLOCK + regions.manifest.length))
    await holds(
      fc.asyncProperty(fc.constantFrom(...regions.manifest), bit, async (at, which) => {
        const changed = flipped(tar, at, which)
        if ((await codeOf(gzipSync(changed, { level: 1 }))) !== 'taken') return
        const now = JSON.parse(changed.toString('utf8', BLOCK, BLOCK + regions.manifest.length))
        const { engine: _e, madeAt: _m, from: _f, migration: _s, ...told } = now
        const { engine: _e2, madeAt: _m2, from: _f2, migration: _s2, ...first } = said
        expect(told).toEqual(first)
      }),
    )
  })
})

describe('a file that is not whole', () => {
  test('cut off anywhere is refused', async () => {
    await holds(
      fc.asyncProperty(fc.nat(whole.length - 1), async (length) => {
        expect(await codeOf(whole.subarray(0, length))).toMatch(/damaged|foreign/)
      }),
    )
  })

  test('cut off inside anywhere, and packed again, is refused', async () => {
    await holds(
      fc.asyncProperty(fc.nat(tar.length - 1), async (length) => {
        expect(await codeOf(gzipSync(tar.subarray(0, length), { level: 1 }))).toMatch(/damaged|foreign/)
      }),
    )
  })

  test('with a piece doubled, left out or put elsewhere is refused, unless every file in it is whole', async () => {
    const blocks = tar.length / BLOCK
    const piece = fc.tuple(fc.nat(blocks - 1), fc.integer({ min: 1, max: 6 }), fc.nat(blocks))
    await holds(
      fc.asyncProperty(
        piece,
        fc.constantFrom('doubled', 'left out', 'moved'),
        async ([from, count, to], how) => {
          const cut = tar.subarray(from * BLOCK, (from + count) * BLOCK)
          const rest = Buffer.concat([tar.subarray(0, from * BLOCK), tar.subarray((from + count) * BLOCK)])
          const base = how === 'doubled' ? tar : rest
          const put = how === 'left out' ? Buffer.alloc(0) : cut
          const changed = Buffer.concat([base.subarray(0, to * BLOCK), put, base.subarray(to * BLOCK)])
          fc.pre(!changed.equals(tar))
          const code = await codeOf(gzipSync(changed, { level: 1 }))
          if (code === 'taken') expect(await entriesIn(changed)).toEqual(await entriesIn(tar))
          else expect(code).toMatch(/damaged|foreign/)
        },
      ),
    )
  })
})

describe('a file that is something else', () => {
  const entry = (name: string, body: Buffer) =>
    Buffer.concat([tarHeader(name, body.length), body, tarPadding(body.length)])

  test('whatever is in it is foreign or damaged', async () => {
    const bytes = fc.uint8Array({ maxLength: 2000 }).map((each) => Buffer.from(each))
    const something = fc.oneof(
      bytes,
      bytes.map((each) => gzipSync(each)),
      bytes.map((each) => gzipSync(Buffer.concat([entry('readme.txt', each), TAR_END]))),
      bytes.map((each) => gzipSync(Buffer.concat([entry('manifest.json', each), TAR_END]))),
      fc.json().map((text) => gzipSync(Buffer.concat([entry('manifest.json', Buffer.from(text)), TAR_END]))),
    )
    await holds(
      fc.asyncProperty(something, async (each) => {
        expect(await codeOf(each)).toMatch(/damaged|foreign/)
      }),
    )
  })

  test('the store’s own file, a picture, a folder', async () => {
    expect(await codeOf(readFileSync(storeFile(join(folder, 'data'))))).toBe('foreign')
    expect(await codeOf(PLAIN['image/png'])).toBe('foreign')
    await expect(readBackup(folder)).rejects.toMatchObject({ code: 'cannot-read' })
  })
})
