import { type ChildProcess, spawn, spawnSync } from 'node:child_process'
import { once } from 'node:events'
import { cpSync, existsSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core'

const ROOT = new URL('../..', import.meta.url).pathname
const USUAL_PLACES = ['/usr/bin/chromium', '/usr/bin/google-chrome', '/snap/bin/chromium']

export type Site = {
  readonly address: string
  /** A page of its own; whatever it logs as an error, throws or asks of another host fails `end`. */
  open(options: BrowserContextOptions): Promise<Page>
  /** The built pages it serves: a copy of its own, which a journey may change. */
  readonly webFolder: string
  /** What the server has said to whoever started it. */
  console(): string
  /** Ends the server and leaves the browser. */
  stopServer(): Promise<void>
  end(): Promise<void>
}

/** The program as users get it, built when older than its sources. */
function build(): void {
  const script =
    "const { buildAll } = await import('./src/tasks/build.mjs'); await buildAll({ onlyStale: true })"
  const run = spawnSync(process.execPath, ['--input-type=module', '--eval', script], {
    cwd: ROOT,
    encoding: 'utf8',
  })
  if (run.status !== 0) throw new Error(`the program could not be built:\n${run.stderr}`)
}

async function addressOf(server: ChildProcess): Promise<string> {
  if (server.stdout === null) throw new Error('the server says nothing')
  for await (const line of createInterface(server.stdout)) {
    const found = /http:\/\/\S+/.exec(line)
    if (found) return found[0]
  }
  throw new Error('the server ended before it said where it is')
}

function launch(): Promise<Browser> {
  const executablePath = [process.env.CHROMIUM_PATH, ...USUAL_PLACES].find((path) => path && existsSync(path))
  return chromium.launch({
    ...(executablePath === undefined ? {} : { executablePath }),
    args: [
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      // Chromium refuses to sandbox for root.
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
    ],
  })
}

function watch(page: Page, address: string, said: string[]): void {
  page.on('pageerror', (error) => said.push(`threw ${error.message}`))
  page.on('console', (message) => {
    // A page without a signal, a server or a session, or with an older version than the server, is part of the journey.
    const isCutOff = /ERR_(INTERNET_DISCONNECTED|CONNECTION_REFUSED)|status of (401|403|409|422) /.test(
      message.text(),
    )
    if (message.type() === 'error' && !isCutOff) {
      said.push(message.text())
    }
  })
  page.on('request', (request) => {
    const { protocol, host } = new URL(request.url())
    if (protocol.startsWith('http') && host !== new URL(address).host) said.push(`asked ${host}`)
  })
}

/** What the program needs to run, in a folder of its own below the project, where its packages are found. */
function ownCopy(): string {
  const cache = join(ROOT, '.cache')
  mkdirSync(cache, { recursive: true })
  const copy = mkdtempSync(join(cache, 'journey-'))
  for (const path of ['package.json', 'dist/server.mjs', 'dist/web', 'src/store/demo']) {
    cpSync(join(ROOT, path), join(copy, path), { recursive: true })
  }
  return copy
}

/** The real server on a free port with the invented town, and a real browser. */
export async function startSite(options: readonly string[] = []): Promise<Site> {
  build()
  const program = ownCopy()
  const data = mkdtempSync(join(tmpdir(), 'underlane-journey-'))
  const server = spawn(process.execPath, ['dist/server.mjs', '--port', '0', '--data', data, ...options], {
    cwd: program,
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  let console = ''
  server.stderr.on('data', (chunk: Buffer) => {
    console += chunk.toString('utf8')
    process.stderr.write(chunk)
  })
  const stopServer = async () => {
    if (server.exitCode !== null || server.signalCode !== null) return
    server.kill('SIGTERM')
    await once(server, 'exit')
  }
  const address = await addressOf(server)
  const browser = await launch()
  const said: string[] = []
  return {
    address,
    console: () => console,
    webFolder: join(program, 'dist/web'),
    stopServer,
    async open(options) {
      const context = await browser.newContext({ reducedMotion: 'reduce', ...options })
      const page = await context.newPage()
      watch(page, address, said)
      return page
    },
    async end() {
      await browser.close()
      await stopServer()
      rmSync(program, { recursive: true, force: true })
      rmSync(data, { recursive: true, force: true })
      if (said.length > 0) throw new Error(`pages complained:\n${[...new Set(said)].join('\n')}`)
    },
  }
}
