import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from 'esbuild'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { openStore } from '../../src/store/open-store.ts'

const ROOT = new URL('../../', import.meta.url).pathname
// Inside the project, where the driver with its native part is found.
const WRITER = join(ROOT, 'dist', `store-writer-${process.pid}.mjs`)
const KILLS = [1, 2, 3]
const ENOUGH_LINES = 120

let folder: string
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'underlane-kill-'))
  mkdirSync(join(ROOT, 'dist'), { recursive: true })
  await build({
    entryPoints: [join(ROOT, 'tests', 'store', 'store-writer.ts')],
    outfile: WRITER,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'esm',
    external: ['libsql'],
    logLevel: 'silent',
  })
})
afterAll(() => {
  rmSync(WRITER, { force: true })
  rmSync(folder, { recursive: true, force: true })
})

/** Starts the writer, kills it after enough acknowledged changes, and gives those. */
async function killedAfter(lines: number, first: number, data = folder): Promise<string[]> {
  const child: ChildProcess = spawn(process.execPath, [WRITER, data, String(first)], {
    stdio: ['ignore', 'pipe', 'inherit'],
  })
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

test.each(KILLS)(
  'killed while it writes, time %i: what was acknowledged is there, and the file is sound',
  async (kill) => {
    const acknowledged = await killedAfter(ENOUGH_LINES + kill, kill * 100_000)
    expect(acknowledged.length).toBeGreaterThanOrEqual(ENOUGH_LINES)
    const store = await openStore(folder)
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
    expect(lost).toEqual([])
    const { default: Database } = await import('libsql')
    const raw = new Database(join(folder, 'underlane.sqlite'))
    expect(raw.prepare('pragma integrity_check').get()).toMatchObject({ integrity_check: 'ok' })
    raw.close()
  },
)

test('two programs that make one store at once, and write to it, wait for each other', async () => {
  const fresh = join(folder, 'fresh')
  const both = await Promise.all([killedAfter(60, 1, fresh), killedAfter(60, 100_000, fresh)])
  expect(both.flat().length).toBeGreaterThanOrEqual(120)
  const store = await openStore(fresh)
  for (const line of both.flat()) {
    const [id = '', version] = line.split(' ')
    expect((await store.crossings.find(id))?.version).toBeGreaterThanOrEqual(Number(version))
  }
  await store.close()
})
