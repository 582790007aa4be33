import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { gunzipSync, gzipSync } from 'node:zlib'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { Manifest } from '../../src/store/backup/backup-tables.ts'
import { readBackup } from '../../src/store/backup/read-backup.ts'
import { restoreBackup } from '../../src/store/backup/restore-backup.ts'
import { TAR_END, tarHeader, tarPadding } from '../../src/store/backup/tar.ts'
import { writeBackup } from '../../src/store/backup/write-backup.ts'
import { openDatabase, type StorePlace } from '../../src/store/open-store.ts'
import { officeOver, PASSWORD } from '../support/office.ts'
import { DATABASES, openAt, type Places } from '../support/store-places.ts'

const NAMES = DATABASES.map(([name]) => name)
const places = new Map<string, Places>()
let folder: string
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'underlane-backup-accounts-'))
  for (const [name, make] of DATABASES) places.set(name, await make())
}, 60_000)
afterAll(async () => {
  for (const each of places.values()) await each.end()
  rmSync(folder, { recursive: true, force: true })
})

async function freshOn(name: string): Promise<StorePlace> {
  const found = places.get(name)
  if (found === undefined) throw new Error(name)
  return found.fresh()
}

async function backUp(place: StorePlace, file: string): Promise<void> {
  const database = await openDatabase(place)
  await writeBackup(database, file, new Date(0))
  await database.queries.destroy()
}

async function restore(place: StorePlace, file: string): Promise<void> {
  const database = await openDatabase(place)
  const backup = await readBackup(file)
  try {
    await restoreBackup(database, backup)
  } finally {
    backup.close()
    await database.queries.destroy()
  }
}

/** As a program of the migration before accounts would have written it: without their tables. */
function asOlder(file: string, older: string): void {
  const tar = gunzipSync(readFileSync(file))
  const entries: { name: string; bytes: Buffer }[] = []
  for (let at = 0; tar[at] !== 0; ) {
    const text = (from: number, length: number) =>
      tar.toString('latin1', at + from, at + from + length).replace(/\0.*$/s, '')
    const size = Number.parseInt(text(124, 12), 8)
    entries.push({ name: text(0, 100), bytes: tar.subarray(at + 512, at + 512 + size) })
    at += 512 + Math.ceil(size / 512) * 512
  }
  const [first, ...rest] = entries
  const manifest: Manifest = JSON.parse(first?.bytes.toString('utf8') ?? '')
  const isKept = (name: string) => !/^(account|recovery_code|api_token|share_)/.test(name)
  const files = manifest.files.filter(({ name }) => isKept(name))
  const head = Buffer.from(JSON.stringify({ ...manifest, migration: '0004-every-noun', files }))
  const all = [{ name: 'manifest.json', bytes: head }, ...rest.filter(({ name }) => isKept(name))]
  const parts = all.flatMap(({ name, bytes }) => [
    tarHeader(name, bytes.length),
    bytes,
    tarPadding(bytes.length),
  ])
  const zipped = gzipSync(Buffer.concat([...parts, TAR_END]))
  // As the program writes it: level and system of the gzip header.
  readFileSync(file).copy(zipped, 0, 0, 10)
  writeFileSync(older, zipped)
}

test.each(NAMES.flatMap((from) => NAMES.map((to) => [from, to] as const)))(
  'people, tokens and links go from %s to %s; sessions stay behind',
  async (from, to) => {
    const place = await freshOn(from)
    const store = await openAt(place)
    const office = officeOver(store)
    const owner = await office.owner()
    const estimator = await office.member(owner, 'estimator', 'eve')
    const made = await owner.post('/api/tokens', { name: 'nightly', role: 'viewer' })
    const { token } = made.body as { token: string }
    const file = join(folder, `${from}-${to}.tar.gz`)
    await backUp(place, file)
    await store.close()
    const target = await freshOn(to)
    await restore(target, file)
    const again = await openAt(target)
    const there = officeOver(again)
    const before = there.stranger()
    before.cookie = estimator.cookie
    expect((await before.get('/api/jobs')).status).toBe(401)
    expect((await before.post('/api/session', { login: 'eve', password: PASSWORD })).status).toBe(200)
    const second = await there.stranger().post('/api/session', { login: 'olga', password: PASSWORD })
    expect(second.body).toMatchObject({ code: 'code-wanted' })
    expect((await there.stranger({ Authorization: `Bearer ${token}` }).get('/api/jobs')).status).toBe(200)
    await again.close()
    // A store with people in it is not empty, though it has no documents.
    await expect(restore(target, file)).rejects.toMatchObject({ code: 'not-empty' })
  },
  60_000,
)

describe('a backup from before there were accounts', () => {
  test('restores, with nobody in it', async () => {
    const place = { dataFolder: join(folder, 'older'), databaseUrl: null }
    const store = await openAt(place)
    const act = { who: 'Ada', at: new Date(0), from: 'test', requestKey: null }
    await store.jobs.insert(
      { id: '00000000-0000-4000-8000-000000000001', document: { name: 'a' }, made: null, demo: false },
      act,
    )
    await store.close()
    await backUp(place, join(folder, 'new.tar.gz'))
    asOlder(join(folder, 'new.tar.gz'), join(folder, 'older.tar.gz'))
    const target = { dataFolder: join(folder, 'restored'), databaseUrl: null }
    await restore(target, join(folder, 'older.tar.gz'))
    const again = await openAt(target)
    expect((await again.jobs.list({ after: null, limit: 9 })).items).toHaveLength(1)
    expect(await again.access.accounts.list()).toEqual([])
    await again.close()
  })
})
