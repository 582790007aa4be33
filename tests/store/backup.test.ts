import { createHash } from 'node:crypto'
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { gunzipSync, gzipSync } from 'node:zlib'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import type { Manifest } from '../../src/store/backup/backup-tables.ts'
import { TAR_END, tarHeader, tarPadding } from '../../src/store/backup/tar.ts'
import { type StorePlace, storeFile } from '../../src/store/open-store.ts'
import { run } from '../cli/run-in-process.ts'
import { DATABASES, openAt, type Places, runRaw } from '../support/store-places.ts'

const ACT = { who: 'Ada', at: new Date('2026-03-02T09:00:00Z'), from: 'test', requestKey: null }
const idOf = (n: number) => `00000000-0000-4000-8000-${String(n).padStart(12, '0')}`
const ODD = 'Ñandú "3"\u2028\0 \ud83d\ude80'
const PHOTO = Buffer.from(Array.from({ length: 70_000 }, (_, at) => (at * 31) % 256))

let folder: string
let file: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'underlane-backup-'))
  file = join(folder, 'all.tar.gz')
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

async function fill(place: StorePlace): Promise<void> {
  const store = await openAt(place)
  const made = {
    engine: '0.1.0',
    inputSha256: 'f'.repeat(64),
    status: 'hold',
    result: { bore: { lengthM: 12.8016 } },
    issues: [],
  }
  for (let n = 0; n < 510; n++) {
    await store.jobs.insert({ id: idOf(n), document: { name: `job ${n}` }, made: null, demo: false }, ACT)
  }
  await store.crossings.insert({ id: idOf(1), document: { name: ODD }, made, demo: true }, ACT)
  await store.crossings.replace(
    { id: idOf(1), document: { name: ODD, pull: 'push' }, made, expectedVersion: 1 },
    { ...ACT, requestKey: 'k-1' },
  )
  await store.quotes.insert(
    { id: idOf(1), document: { name: 'q', job: idOf(1), on: '2026-03-02' }, made: null, demo: false },
    ACT,
  )
  await store.hoses.insert({ id: idOf(1), document: { name: 'gone' }, made: null, demo: false }, ACT)
  await store.hoses.remove({ id: idOf(1), expectedVersion: 1 }, ACT)
  await store.contents.put(PHOTO)
  await store.close()
}

const worldOf = ({ databaseUrl }: StorePlace) => ({
  environment: databaseUrl === null ? {} : { DATABASE_URL: databaseUrl },
  workingFolder: folder,
})
const dataOf = ({ dataFolder, databaseUrl }: StorePlace) =>
  databaseUrl === null ? ['--data', dataFolder] : []

async function backUp(place: StorePlace, to: string): Promise<Manifest> {
  const answer = await run(['backup', to, ...dataOf(place), '--json'], worldOf(place))
  expect(answer).toMatchObject({ code: 0, stderr: '' })
  return JSON.parse(answer.stdout)
}
const restore = (place: StorePlace, from: string) => run(['restore', from, ...dataOf(place)], worldOf(place))

const PAIRS = DATABASES.flatMap(([from, makeFrom]) =>
  DATABASES.map(([to, makeTo]) => [from, to, makeFrom, makeTo] as const),
)

test.each(PAIRS)(
  'everything goes from %s to %s and back, and is equal',
  async (_from, _to, makeFrom, makeTo) => {
    const [here, there] = [await makeFrom(), await makeTo()]
    try {
      const start = await here.fresh()
      await fill(start)
      const first = await backUp(start, file)
      expect(first.files.find(({ name }) => name === 'job.jsonl')?.rows).toBe(510)
      const middle = await there.fresh()
      expect(await restore(middle, file)).toMatchObject({ code: 0, stderr: '' })
      const again = join(folder, 'again.tar.gz')
      const second = await backUp(middle, again)
      expect(second.files).toEqual(first.files)
      expect(second.history).toEqual(first.history)
      const end = await here.fresh()
      expect((await restore(end, again)).code).toBe(0)
      expect((await backUp(end, join(folder, 'last.tar.gz'))).files).toEqual(first.files)
      expect((await run(['audit', 'verify', ...dataOf(end)], worldOf(end))).code).toBe(0)
      await expectInUse(end)
      expect(readdirSync(folder).sort()).toEqual(['again.tar.gz', 'all.tar.gz', 'last.tar.gz'])
    } finally {
      await here.end()
      await there.end()
    }
  },
  120_000,
)

/** What was restored is not only there: it lists, shows and can be worked on. */
async function expectInUse(place: StorePlace): Promise<void> {
  const store = await openAt(place)
  expect(await store.crossings.find(idOf(1))).toMatchObject({
    version: 2,
    demo: true,
    document: { name: ODD },
    made: { status: 'hold', result: { bore: { lengthM: 12.8016 } } },
  })
  const quotes = await store.quotes.list({ after: null, limit: 9, belongsTo: idOf(1), onDay: '2026-03-02' })
  expect(quotes.items).toHaveLength(1)
  expect((await store.hoses.restore({ id: idOf(1), expectedVersion: 2 }, ACT)).outcome).toBe('done')
  const sha256 = createHash('sha256').update(PHOTO).digest('hex')
  expect(await store.contents.find(sha256)).toEqual(PHOTO)
  await store.close()
}

describe.each(DATABASES)('a backup of %s', (_name, makePlaces) => {
  let places: Places
  beforeAll(async () => {
    places = await makePlaces()
  }, 60_000)
  afterAll(() => places.end(), 60_000)

  test('shows one moment while others write, and keeps nobody waiting', async () => {
    const place = await places.fresh()
    await fill(place)
    const store = await openAt(place)
    let written = 0
    let isOver = false
    const writing = (async () => {
      for (; !isOver && written < 3000; written++) {
        const entry = { id: idOf(10_000 + written), document: { name: 'x' }, made: null, demo: false }
        await store.jobs.insert(entry, ACT)
        await new Promise((resolve) => setImmediate(resolve))
      }
    })()
    const manifest = await backUp(place, file)
    isOver = true
    await writing
    await store.close()
    expect(written).toBeGreaterThan(0)
    const rows = (name: string) => manifest.files.find((each) => each.name === name)?.rows ?? 0
    // Each job was inserted once; besides there are the crossing's two lines, the quote's one and the hose's two.
    expect(rows('revision.jsonl')).toBe(rows('job.jsonl') + 5)
    expect((await restore(await places.fresh(), file)).code).toBe(0)
  })

  test('is not put over what is there', async () => {
    const place = await places.fresh()
    await fill(place)
    await backUp(place, file)
    const answer = await restore(place, file)
    expect(answer.code).toBe(3)
    expect(answer.stderr).toMatch(/has data already: restore into an empty/)
    expect((await backUp(place, join(folder, 'b.tar.gz'))).files).toHaveLength(25)
  })
})

describe('a file that is not a whole backup of ours is refused, and nothing is made of it', () => {
  let whole: Buffer
  let target: StorePlace
  const source = mkdtempSync(join(tmpdir(), 'underlane-backup-source-'))
  beforeAll(async () => {
    const place = { dataFolder: join(source, 'data'), databaseUrl: null }
    await fill(place)
    const made = join(source, 'whole.tar.gz')
    await run(['backup', made, '--data', place.dataFolder])
    whole = readFileSync(made)
  })
  afterAll(() => rmSync(source, { recursive: true, force: true }))
  beforeEach(() => {
    target = { dataFolder: join(folder, 'target'), databaseUrl: null }
  })

  async function expectRefused(bytes: Buffer, sentence: RegExp): Promise<void> {
    writeFileSync(file, bytes)
    const answer = await restore(target, file)
    expect(answer.stderr).toMatch(sentence)
    expect(answer).toMatchObject({ code: 3, stdout: '' })
    expect(existsSync(storeFile(target.dataFolder))).toBe(false)
  }

  test.each([0.999, 0.9, 0.5, 0.1])('cut off after %d of it', async (share) => {
    await expectRefused(whole.subarray(0, Math.floor(whole.length * share)), /is damaged/)
  })

  test('with one bit turned, wherever that is', async () => {
    const places = Array.from({ length: 60 }, (_, at) => Math.floor((whole.length * at) / 60))
    for (const at of [...places, 1, 3, 4, 7, whole.length - 1, whole.length - 5]) {
      // Two bytes of a gzip header say how hard it was pressed and on what machine: no content.
      if (at === 8 || at === 9) continue
      const bytes = Buffer.from(whole)
      bytes.writeUInt8(bytes.readUInt8(at) ^ (1 << (at % 8)), at)
      await expectRefused(bytes, at < 2 ? /is not a backup/ : /is damaged/)
    }
  })

  test('with something after its end', async () => {
    await expectRefused(Buffer.concat([whole, Buffer.from('x')]), /is damaged/)
    await expectRefused(Buffer.concat([whole, gzipSync('more')]), /is damaged/)
  })

  test('that is something else', async () => {
    const entry = (name: string, body: string) =>
      Buffer.concat([tarHeader(name, body.length), Buffer.from(body), tarPadding(body.length)])
    const foreign = /is not a backup of Underlane. Nothing was changed/
    await expectRefused(Buffer.from('{"name":"a crossing"}'), foreign)
    await expectRefused(Buffer.alloc(0), foreign)
    await expectRefused(gzipSync(Buffer.concat([entry('readme.txt', 'hello'), TAR_END])), foreign)
    await expectRefused(gzipSync(Buffer.concat([entry('manifest.json', '{"schema":"x"}'), TAR_END])), foreign)
    const missing = await restore(target, join(folder, 'no-such-file'))
    expect(missing.stderr).toMatch(/cannot be read/)
  })

  /** The same archive with its manifest changed and everything else as it is, hashes and checksums in order. */
  function withManifest(change: (manifest: Manifest) => unknown): Buffer {
    const tar = gunzipSync(whole)
    const size = Number.parseInt(tar.toString('ascii', 124, 135), 8)
    const manifest = JSON.parse(tar.toString('utf8', 512, 512 + size))
    const text = Buffer.from(JSON.stringify(change(manifest)))
    const rest = tar.subarray(512 + size + tarPadding(size).length)
    return gzipSync(
      Buffer.concat([tarHeader('manifest.json', text.length), text, tarPadding(text.length), rest]),
    )
  }

  test('that holds a document of a newer program', async () => {
    const place = { dataFolder: join(source, 'newer'), databaseUrl: null }
    await (await openAt(place)).close()
    await runRaw(
      place,
      `insert into hose (id, version, format, name, updated_at, demo, document)
       values ('${idOf(1)}', 1, 'underlane/hose@9', 'x', '2030-01-01', 0, '{"label":"x"}')`,
    )
    await backUp(place, file)
    await expectRefused(readFileSync(file), /was made by a newer Underlane/)
  })

  test('that a newer program made, by its form or its store', async () => {
    const newer = /was made by a newer Underlane: update this one first/
    await expectRefused(
      withManifest((manifest) => ({ ...manifest, schema: 'underlane/backup@2' })),
      newer,
    )
    await expectRefused(
      withManifest((manifest) => ({ ...manifest, migration: '0999-later' })),
      newer,
    )
  })

  test('whose manifest says something else than what is there', async () => {
    const damaged = /is damaged/
    await expectRefused(
      withManifest((m) => ({ ...m, history: { ...m.history, lines: 1 } })),
      damaged,
    )
    await expectRefused(
      withManifest((m) => ({ ...m, files: m.files.slice(1) })),
      damaged,
    )
    await expectRefused(
      withManifest((m) => ({ ...m, files: m.files.map((each) => ({ ...each, rows: 1 })) })),
      damaged,
    )
    const more = { name: 'attachments/../../x', rows: null, byteCount: 0, sha256: '0'.repeat(64) }
    await expectRefused(
      withManifest((m) => ({ ...m, files: [...m.files, more] })),
      damaged,
    )
  })

  test('and the untouched file is taken', async () => {
    writeFileSync(
      file,
      withManifest((manifest) => manifest),
    )
    expect((await restore(target, file)).code).toBe(0)
  })
})

test('a backup that cannot be written says so and leaves nothing behind', async () => {
  const place = { dataFolder: join(folder, 'data'), databaseUrl: null }
  await (await openAt(place)).close()
  const answer = await run([
    'backup',
    join(folder, 'no', 'such', 'folder.tar.gz'),
    '--data',
    place.dataFolder,
  ])
  expect(answer.code).toBe(3)
  expect(answer.stderr).toMatch(/cannot be written/)
  writeFileSync(file, '')
  const inAFile = await run(['backup', join(file, 'x.tar.gz'), '--data', place.dataFolder])
  expect(inAFile.code).toBe(3)
  expect(inAFile.stderr).toMatch(/cannot be written/)
  expect(readdirSync(folder)).toEqual(['all.tar.gz', 'data'])
})
