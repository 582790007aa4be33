import type { AddressInfo } from 'node:net'
import { availableParallelism } from 'node:os'
import { join } from 'node:path'
import { serve as listen, type ServerType } from '@hono/node-server'
import type { ServerConfig } from '../config.ts'
import { openDatabase, openStore } from '../store/open-store.ts'
import { seedDemo } from '../store/seed-demo.ts'
import { StoreError } from '../store/store-error.ts'
import { storeSentence } from '../store/store-sentence.ts'
import { buildApp } from './app.ts'
import { copyEveryDay } from './copy-every-day.ts'
import { type Planner, planOnTheSpot } from './planning/plan-task.ts'
import { createWorkerPlanner } from './planning/worker-planner.ts'
import { requestsUnderWay } from './requests-under-way.ts'
import { pagesAreBuilt } from './static-pages.ts'

export type Running = { readonly address: string; close(): Promise<void> }

/** Connections get this long to end by themselves when the server is asked to end. */
const LAST_WORDS_MS = 3000

const PLAN_BUDGET_MS = 2000
const MOST_PLANS_WAITING = 32
const MOST_THREADS = 4

/** The bundled program plans in threads, which are started from the bundle itself; its sources are no such program. */
function plannerOf(program: string): Planner {
  if (!program.endsWith('.mjs')) return planOnTheSpot
  return createWorkerPlanner({
    entry: new URL(program),
    threads: Math.max(1, Math.min(MOST_THREADS, availableParallelism() - 1)),
    budgetMs: PLAN_BUDGET_MS,
    mostWaiting: MOST_PLANS_WAITING,
  })
}

function listenSentence(error: Error, { port, host }: ServerConfig): string | null {
  const code = 'code' in error ? String(error.code) : ''
  if (code === 'EADDRINUSE') return `Port ${port} is taken by another program: choose another with --port N.`
  if (code === 'EACCES')
    return `Port ${port} is not allowed for this user: choose one above 1023 with --port N.`
  if (code === 'EADDRNOTAVAIL' || code === 'ENOTFOUND' || code === 'EAI_AGAIN') {
    return `This machine has no address ${host}: give another with --host.`
  }
  return null
}

/** What a person can mend, in one plain sentence; null when it is our own bug. */
export function startSentence(error: unknown, config: ServerConfig): string | null {
  if (error instanceof StoreError) return storeSentence(error)
  return error instanceof Error ? listenSentence(error, config) : null
}

type Fetch = ReturnType<typeof buildApp>['fetch']

function listenOn(config: ServerConfig, fetch: Fetch): Promise<ServerType> {
  return new Promise((resolve, reject) => {
    const server = listen({ fetch, port: config.port, hostname: config.host }, () => resolve(server))
    server.once('error', reject)
  })
}

function addressOf(server: ServerType, host: string): string {
  const { port } = server.address() as AddressInfo
  const everywhere = host === '0.0.0.0' || host === '::'
  const name = everywhere || host === '127.0.0.1' || host === '::1' ? 'localhost' : host
  return `http://${name.includes(':') ? `[${name}]` : name}:${port}/`
}

/** Takes no more connections and lets those there are end; the patience for them has an end too. */
function stopListening(server: ServerType): Promise<void> {
  return new Promise((resolve) => {
    const impatient = setTimeout(() => {
      if ('closeAllConnections' in server) server.closeAllConnections()
    }, LAST_WORDS_MS)
    server.close(() => {
      clearTimeout(impatient)
      resolve()
    })
    if ('closeIdleConnections' in server) server.closeIdleConnections()
  })
}

/** Opens the store, puts the demo in, and listens. Throws what `startSentence` can tell about. */
export async function startServer(config: ServerConfig, log: (line: string) => void): Promise<Running> {
  const store = await openStore(config.dataFolder, config.databaseUrl)
  const planner = plannerOf(import.meta.url)
  try {
    if (config.demo) await seedDemo(store, config.demoFolder, new Date())
    const app = buildApp({
      store,
      webRoot: config.webRoot,
      hosts: [config.host, ...config.names],
      now: () => new Date(),
      log,
      planner,
    })
    const underWay = requestsUnderWay(app.fetch)
    const server = await listenOn(config, underWay.fetch)
    const place = { open: () => openDatabase(config), folder: join(config.dataFolder, 'copies') }
    const copies = copyEveryDay(place, () => new Date(), log)
    return {
      address: addressOf(server, config.host),
      close: async () => {
        await stopListening(server)
        await underWay.settled()
        await copies.stop()
        await planner.close()
        await store.close()
      },
    }
  } catch (error) {
    await planner.close()
    await store.close()
    throw error
  }
}

/** Serves until asked to end by Ctrl-C or by the system; the answer is the exit code. */
export async function serveUntilStopped(
  config: ServerConfig,
  write: { readonly out: (text: string) => void; readonly err: (text: string) => void },
): Promise<number> {
  let running: Running
  try {
    running = await startServer(config, (line) => write.err(`${line}\n`))
  } catch (error) {
    const sentence = startSentence(error, config)
    if (sentence === null) throw error
    write.err(`${sentence}\n`)
    return 3
  }
  write.out(`Underlane is at ${running.address}\n`)
  if (!pagesAreBuilt(config.webRoot)) {
    write.err('The pages are not built, so only the API answers: npm start builds them.\n')
  }
  write.err(
    `Data in ${config.databaseUrl === null ? config.dataFolder : 'the database of DATABASE_URL'}. Ctrl-C ends it.\n`,
  )
  await new Promise<void>((resolve) => {
    process.once('SIGINT', resolve)
    process.once('SIGTERM', resolve)
  })
  await running.close()
  return 0
}
