import { type ChildProcess, spawn, spawnSync } from 'node:child_process'
import { once } from 'node:events'
import { chownSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as sleep } from 'node:timers/promises'
import pg from 'pg'

const DEBIAN = '/usr/lib/postgresql'

const inUsualPlace = (): string | undefined =>
  existsSync(DEBIAN)
    ? readdirSync(DEBIAN)
        .map((version) => join(DEBIAN, version, 'bin'))
        .find((folder) => existsSync(join(folder, 'initdb')))
    : undefined

/** As the task that runs the suites found it, empty when there is none; started without the task, the usual place. */
export const POSTGRES_BIN: string | null = (process.env.POSTGRES_BIN ?? inUsualPlace()) || null

const MOST_TRIES = 200

export type PostgresServer = {
  /** Makes a database and gives its address. */
  fresh(): Promise<string>
  /** As if the power of its machine went: no goodbye, no last writes. */
  crash(): Promise<void>
  start(): Promise<void>
  stop(): Promise<void>
}

async function freePort(): Promise<number> {
  const listener = createServer().listen(0, '127.0.0.1')
  await once(listener, 'listening')
  const address = listener.address()
  listener.close()
  await once(listener, 'close')
  if (address === null || typeof address === 'string') throw new Error('no port')
  return address.port
}

/** The server refuses to run as root: there it runs as the user its package has made. */
function serverUser(): { readonly uid: number; readonly gid: number } | null {
  if (process.getuid?.() !== 0) return null
  const numberOf = (flag: string) => Number(spawnSync('id', [flag, 'postgres'], { encoding: 'utf8' }).stdout)
  return { uid: numberOf('-u'), gid: numberOf('-g') }
}

async function answers(url: string): Promise<boolean> {
  const client = new pg.Client({ connectionString: url })
  try {
    await client.connect()
    return true
  } catch {
    return false
  } finally {
    await client.end().catch(() => undefined)
  }
}

/** A real PostgreSQL of its own, in a temporary folder, reached only from this machine. */
export async function startPostgres(bin: string): Promise<PostgresServer> {
  const folder = mkdtempSync(join(tmpdir(), 'underlane-postgres-'))
  const user = serverUser()
  if (user !== null) chownSync(folder, user.uid, user.gid)
  const as = { cwd: folder, ...(user ?? {}) }
  const data = join(folder, 'data')
  const made = spawnSync(
    join(bin, 'initdb'),
    ['-D', data, '-U', 'tester', '-A', 'trust', '-E', 'UTF8', '--no-sync'],
    { ...as, encoding: 'utf8' },
  )
  if (made.status !== 0) throw new Error(`no PostgreSQL could be made: ${made.stderr}`)
  const port = await freePort()
  const urlOf = (name: string) => `postgres://tester@127.0.0.1:${port}/${name}`
  let server: ChildProcess | null = null
  let used = 0

  const end = async (signal: 'SIGINT' | 'SIGQUIT') => {
    if (server === null) return
    const ended = once(server, 'exit')
    server.kill(signal)
    await ended
    server = null
  }
  const start = async () => {
    const options = ['-D', data, '-p', String(port), '-c', 'listen_addresses=127.0.0.1']
    server = spawn(join(bin, 'postgres'), [...options, '-c', `unix_socket_directories=${folder}`], {
      ...as,
      stdio: 'ignore',
    })
    for (let tries = 0; tries < MOST_TRIES; tries++) {
      if (await answers(urlOf('postgres'))) return
      await sleep(50)
    }
    throw new Error('PostgreSQL does not answer')
  }
  // A suite that ends without saying so takes its server along.
  process.once('exit', () => {
    server?.kill('SIGQUIT')
    rmSync(folder, { recursive: true, force: true })
  })
  await start()
  return {
    async fresh() {
      const client = new pg.Client({ connectionString: urlOf('postgres') })
      await client.connect()
      used += 1
      await client.query(`create database store${used}`)
      await client.end()
      return urlOf(`store${used}`)
    },
    crash: () => end('SIGQUIT'),
    start,
    async stop() {
      await end('SIGINT')
      rmSync(folder, { recursive: true, force: true })
    },
  }
}
