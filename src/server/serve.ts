import { readFileSync } from 'node:fs'
import { createServer as createTlsServer } from 'node:https'
import type { AddressInfo } from 'node:net'
import { availableParallelism } from 'node:os'
import { join } from 'node:path'
import { createSecureContext } from 'node:tls'
import { serve as listen, type ServerType } from '@hono/node-server'
import type { ServerConfig } from '../config.ts'
import { openDatabase, openStore } from '../store/open-store.ts'
import { powerCutWarning } from '../store/power-cut.ts'
import { seedDemo } from '../store/seed-demo.ts'
import { StoreError } from '../store/store-error.ts'
import { storeSentence } from '../store/store-sentence.ts'
import { addressesElsewhere } from './addresses-elsewhere.ts'
import { buildApp } from './app.ts'
import { firstOwnerCode } from './auth/first-owner.ts'
import { argon2Hashing, type PasswordHashing } from './auth/passwords.ts'
import { warmUp } from './auth/prove.ts'
import { copyEveryDay } from './copy-every-day.ts'
import { EVERYWHERE } from './own-host.ts'
import { type Planner, planOnTheSpot } from './planning/plan-task.ts'
import { createWorkerPlanner } from './planning/worker-planner.ts'
import { requestsUnderWay } from './requests-under-way.ts'
import { pagesAreBuilt } from './static-pages.ts'

export type Running = {
  readonly address: string
  /** For whoever reads the console, while there is nobody who could let anybody in. */
  readonly firstOwnerCode: string | null
  close(): Promise<void>
}

/** A certificate or its key that cannot be used. */
class TlsError extends Error {
  override readonly name = 'TlsError'
}

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
  if (error instanceof TlsError) return error.message
  return error instanceof Error ? listenSentence(error, config) : null
}

type Fetch = ReturnType<typeof buildApp>['fetch']

function tlsOptions({ certFile, keyFile }: NonNullable<ServerConfig['access']['tls']>) {
  try {
    const pair = { cert: readFileSync(certFile), key: readFileSync(keyFile) }
    createSecureContext(pair)
    return pair
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error)
    throw new TlsError(`The certificate ${certFile} with the key ${keyFile} cannot be used: ${why}.`)
  }
}

function listenOn(config: ServerConfig, fetch: Fetch): Promise<ServerType> {
  const at = { fetch, port: config.port, hostname: config.host }
  const { tls } = config.access
  const how = tls === null ? at : { ...at, createServer: createTlsServer, serverOptions: tlsOptions(tls) }
  return new Promise((resolve, reject) => {
    const server = listen(how, () => resolve(server))
    server.once('error', reject)
  })
}

function addressOf(server: ServerType, { host, access }: ServerConfig): string {
  if (access.publicOrigin !== null) return `${access.publicOrigin}/`
  const { port } = server.address() as AddressInfo
  const everywhere = EVERYWHERE.includes(host)
  const name = everywhere || host === '127.0.0.1' || host === '::1' ? 'localhost' : host
  return `${access.tls === null ? 'http' : 'https'}://${name.includes(':') ? `[${name}]` : name}:${port}/`
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
export async function startServer(
  config: ServerConfig,
  log: (line: string) => void,
  hashing: PasswordHashing = argon2Hashing(),
): Promise<Running> {
  const { access } = config
  const store = await openStore(config.dataFolder, config.databaseUrl)
  const planner = plannerOf(import.meta.url)
  try {
    const warning = await powerCutWarning(config)
    if (warning !== null) log(warning)
    if (config.demo) await seedDemo(store, config.demoFolder, new Date())
    const publicName = access.publicOrigin === null ? null : new URL(access.publicOrigin).hostname
    const cookies = access.isInsecure ? 'plain' : 'secure'
    if (access.hasAccounts) await warmUp({ hashing })
    const app = buildApp({
      store,
      webRoot: config.webRoot,
      hosts: [config.host, ...config.names, ...(publicName === null ? [] : [publicName])],
      publicOrigin: access.publicOrigin,
      trustedProxies: access.trustedProxies,
      ...(access.hasAccounts ? { accounts: { cookies, hashing } } : {}),
      now: () => new Date(),
      log,
      planner,
    })
    const underWay = requestsUnderWay(app.fetch)
    const server = await listenOn(config, underWay.fetch)
    const place = { open: () => openDatabase(config), folder: join(config.dataFolder, 'copies') }
    const copies = copyEveryDay(place, () => new Date(), log)
    return {
      address: addressOf(server, config),
      firstOwnerCode: access.hasAccounts ? await firstOwnerCode(store.access, new Date()) : null,
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

/** What whoever runs the server has to know about who gets in. */
function accessLines(
  { access, host }: ServerConfig,
  { address, firstOwnerCode: code }: Running,
): readonly string[] {
  const insecure =
    'This is plain http: whoever shares the network can read along, and phones get no offline app.'
  const isEverywhere = EVERYWHERE.includes(host) && access.publicOrigin === null
  const elsewhere = isEverywhere ? addressesElsewhere(address) : []
  return [
    ...(elsewhere.length === 0 ? [] : [`From other machines and phones: ${elsewhere.join(' ')}`]),
    ...(access.isInsecure ? [insecure] : []),
    ...(code === null
      ? []
      : [`Nobody can sign in yet. The first owner opens ${address}sign-in and types this code: ${code}`]),
  ]
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
  for (const line of accessLines(config, running)) write.err(`${line}\n`)
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
