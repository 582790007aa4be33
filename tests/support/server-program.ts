import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import { build } from 'esbuild'
import type { StorePlace } from '../../src/store/open-store.ts'

const ROOT = new URL('../../', import.meta.url).pathname

export type ServerProgram = {
  /** Starts one on a free port over the store of a place; its address. */
  start(place: StorePlace): Promise<string>
  /** Ends all that were started and takes the program away. */
  end(): Promise<void>
}

async function addressOf(server: ChildProcess): Promise<string> {
  if (server.stdout === null) throw new Error('the server says nothing')
  for await (const line of createInterface(server.stdout)) {
    const found = /http:\/\/\S+/.exec(line)
    if (found) return found[0]
  }
  throw new Error('the server ended before it said where it is')
}

async function stop(server: ChildProcess): Promise<void> {
  if (server.exitCode !== null || server.signalCode !== null) return
  server.kill('SIGTERM')
  await once(server, 'exit')
}

/** The server as it runs for users, bundled from these sources, without the pages; any number of processes of it. */
export async function serverProgram(): Promise<ServerProgram> {
  const cache = join(ROOT, '.cache')
  mkdirSync(cache, { recursive: true })
  // Inside the project, where the databases' drivers are found; a package.json makes it a root of its own.
  const folder = mkdtempSync(join(cache, 'server-'))
  writeFileSync(join(folder, 'package.json'), '{"type":"module"}')
  const program = join(folder, 'server.mjs')
  await build({
    entryPoints: [join(ROOT, 'src/server/main.ts')],
    outfile: program,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'esm',
    external: ['libsql', 'pg', '@node-rs/argon2'],
    banner: {
      js: "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);",
    },
    logLevel: 'silent',
  })
  const running: ChildProcess[] = []
  return {
    async start({ dataFolder, databaseUrl }) {
      const where =
        databaseUrl === null
          ? { UNDERLANE_DATA: dataFolder, DATABASE_URL: '' }
          : { UNDERLANE_DATA: join(folder, 'data'), DATABASE_URL: databaseUrl }
      const server = spawn(process.execPath, [program, '--port', '0', '--empty'], {
        stdio: ['ignore', 'pipe', 'ignore'],
        env: { ...process.env, ...where },
      })
      running.push(server)
      return addressOf(server)
    },
    async end() {
      await Promise.all(running.map(stop))
      rmSync(folder, { recursive: true, force: true })
    },
  }
}
