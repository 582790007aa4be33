import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { documentToKeep } from '../../src/document-to-keep.ts'
import { csvCell, fileName } from '../../src/store/export/file-names.ts'
import type { StorePlace } from '../../src/store/open-store.ts'
import { run } from '../cli/run-in-process.ts'
import { demoDocument } from '../support/crossings.ts'
import { PLAIN } from '../support/photos.ts'
import { DATABASES, openAt, type Places, runRaw } from '../support/store-places.ts'

const ACT = { who: 'Ada', at: new Date('2026-03-02T09:00:00Z'), from: 'test', requestKey: 'secret-key' }
const idOf = (n: number) => `00000000-0000-4000-8000-${String(n).padStart(12, '0')}`
const NAME = '=Ñandú, "3"\n/../x'

let folder: string
let target: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'underlane-export-'))
  target = join(folder, 'all')
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

async function fill(place: StorePlace): Promise<void> {
  const store = await openAt(place)
  const kept = documentToKeep('crossings', demoDocument('curb-to-cellar'))
  if (!kept.ok) throw new Error('no crossing')
  await store.crossings.insert({ id: idOf(1), ...kept.value, demo: true }, ACT)
  for (let n = 0; n < 101; n++) {
    const entry = { id: idOf(n), document: { name: `job ${n}` }, made: null, demo: false }
    await store.jobs.insert(entry, { ...ACT, requestKey: null })
  }
  await store.tools.insert({ id: idOf(1), document: { name: NAME }, made: null, demo: false }, ACT)
  await store.hoses.insert({ id: idOf(1), document: { name: 'gone' }, made: null, demo: false }, ACT)
  await store.hoses.remove({ id: idOf(1), expectedVersion: 1 }, { ...ACT, requestKey: null })
  const sha256 = await store.contents.put(PLAIN['image/png'])
  const byteCount = PLAIN['image/png'].length
  const said = { name: 'Marks', of: idOf(1), mediaType: 'image/png', byteCount, sha256 }
  await store.attachments.insert({ id: idOf(1), document: said, made: null, demo: false }, ACT)
  await store.close()
}

describe.each(DATABASES)('on %s', (_name, makePlaces) => {
  let places: Places
  let place: StorePlace
  beforeAll(async () => {
    places = await makePlaces()
    place = await places.fresh()
    await fill(place)
  }, 60_000)
  afterAll(() => places.end(), 60_000)

  const exportTo = (to: string, ...more: readonly string[]) =>
    run(['export', to, ...(place.databaseUrl === null ? ['--data', place.dataFolder] : []), ...more], {
      environment: place.databaseUrl === null ? {} : { DATABASE_URL: place.databaseUrl },
      workingFolder: folder,
    })
  const read = (...path: readonly string[]) => readFileSync(join(target, ...path), 'utf8')

  test('everything becomes a file that can be opened, and a crossing can be planned from its file', async () => {
    const answer = await exportTo('all')
    expect(answer).toMatchObject({ code: 0, stderr: '' })
    expect(answer.stdout).toMatch(/ 1 {2}crossings\n +101 {2}jobs\n/)
    expect(readdirSync(folder)).toEqual(['all'])
    expect(readdirSync(join(target, 'jobs'))).toHaveLength(101)
    expect(JSON.parse(read('jobs', `job-7.${idOf(7)}.json`))).toEqual({
      schema: 'underlane/job@1',
      name: 'job 7',
    })
    const [crossing = ''] = readdirSync(join(target, 'crossings'))
    expect(JSON.parse(read('crossings', crossing))).toEqual(demoDocument('curb-to-cellar'))
    expect(JSON.parse(read('crossings', crossing.replace('.json', '.plan.json'))).schema).toBe(
      'underlane/plan@1',
    )
    expect((await run(['plan', join(target, 'crossings', crossing)])).code).toBe(0)
    expect(JSON.parse(read('tools', `nandu-3-x.${idOf(1)}.json`)).name).toBe(NAME)
    expect(JSON.parse(read('removed', 'hoses', `gone.${idOf(1)}.json`)).name).toBe('gone')
    expect(existsSync(join(target, 'hoses'))).toBe(false)
    expect(readFileSync(join(target, 'attachments', `marks.${idOf(1)}.png`))).toEqual(PLAIN['image/png'])
    expect(read('README.txt')).toContain('history.jsonl')
  })

  test('the list of files opens in a spreadsheet and starts no formula there', async () => {
    await exportTo('all')
    const lines = read('index.csv').split('\r\n')
    expect(lines[0]).toBe('noun,id,name,version,updated,removed,demo,file')
    // Head, end, and everything that was put in.
    expect(lines).toHaveLength(2 + 1 + 101 + 3)
    expect(lines.find((line) => line.startsWith('tools'))).toContain(`"'=Ñandú, ""3""\n/../x"`)
    const listed = lines.slice(1, -1).map((line) => line.slice(line.lastIndexOf(',') + 1))
    for (const file of listed) expect(existsSync(join(target, file)), file).toBe(true)
  })

  test('the history comes along, without the keys of requests', async () => {
    await exportTo('all')
    const lines = read('history.jsonl').trimEnd().split('\n')
    expect(lines).toHaveLength(1 + 101 + 1 + 2 + 1)
    expect(JSON.parse(lines[0] ?? '')).toMatchObject({
      seq: 1,
      who: 'Ada',
      action: 'insert',
      noun: 'crossing',
    })
    expect(read('history.jsonl')).not.toContain('secret-key')
  })

  test('is for its maker’s eyes, and counted for a script', async () => {
    const answer = await exportTo('all', '--json')
    expect(JSON.parse(answer.stdout)).toMatchObject({
      schema: 'underlane/export@1',
      documents: { crossings: 1, jobs: 101, attachments: 1, files: 1 },
    })
    const rightsOf = (path: string) => (statSync(path).mode & 0o777).toString(8)
    expect(rightsOf(target)).toBe('700')
    expect(rightsOf(join(target, 'jobs', `job-7.${idOf(7)}.json`))).toBe('600')
    expect(rightsOf(join(target, 'index.csv'))).toBe('600')
  })

  test('goes into an empty folder, and not over what is there', async () => {
    mkdirSync(target)
    expect((await exportTo('all')).code).toBe(0)
    const again = await exportTo('all')
    expect(again).toMatchObject({ code: 3, stdout: '' })
    expect(again.stderr).toMatch(/is not empty: give another folder/)
    expect(readdirSync(folder)).toEqual(['all'])
  })

  test('is whole or not there', async () => {
    const nowhere = await exportTo(join('no', 'such', 'folder'))
    expect(nowhere.code).toBe(3)
    expect(nowhere.stderr).toMatch(/cannot be written/)
    writeFileSync(join(folder, 'file'), '')
    expect((await exportTo(join('file', 'x'))).code).toBe(3)
    const insert = `insert into hose (id, version, format, name, updated_at, demo, document)
      values ('${idOf(9)}', 1, 'underlane/hose@9', 'x', '2030-01-01', 0, '{"name":"x"}')`
    await runRaw(place, insert)
    const newer = await exportTo('all')
    await runRaw(place, `delete from hose where id = '${idOf(9)}'`)
    expect(newer.code).toBe(3)
    expect(newer.stderr).toMatch(/made by a newer Underlane/)
    expect(readdirSync(folder)).toEqual(['file'])
  })
})

test('names of files are plain, and never leave their folder', () => {
  for (const name of ['../../etc/passwd', '', '....', 'CON', 'x'.repeat(500), '\0', '漢字', 'a/b\\c:d']) {
    expect(fileName(name, idOf(1), '.json')).toMatch(/^[a-z0-9][a-z0-9-]{0,59}\.[0-9a-f-]{36}\.json$/)
  }
  expect(fileName('a', '../x', '.json')).toBe('a.___x.json')
  expect(['=1', '+1', '-1', '@x', 'a,b', 'plain'].map(csvCell)).toEqual([
    "'=1",
    "'+1",
    "'-1",
    "'@x",
    '"a,b"',
    'plain',
  ])
})
