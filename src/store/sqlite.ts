import { chmodSync } from 'node:fs'
import { setTimeout as sleep } from 'node:timers/promises'
import {
  CompiledQuery,
  type DatabaseConnection,
  Kysely,
  SqliteAdapter,
  type SqliteDatabase,
  SqliteDialect,
  SqliteDriver,
  type TransactionSettings,
} from 'kysely'
import type { Database } from './database.ts'
import { StoreError, type StoreErrorCode } from './store-error.ts'
import type { Tables } from './tables.ts'

/** How long a writer waits for another process that is writing. */
const BUSY_TIMEOUT_MS = 5000

const CODES: Readonly<Record<string, StoreErrorCode>> = {
  SQLITE_NOTADB: 'not-a-store',
  SQLITE_CORRUPT: 'not-a-store',
  SQLITE_BUSY: 'busy',
  SQLITE_FULL: 'full',
}

function codeOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : ''
}

/** Takes the writer's lock at once: a transaction that reads first cannot wait for a writer that comes between. */
class ImmediateDriver extends SqliteDriver {
  override async beginTransaction(
    connection: DatabaseConnection,
    settings: TransactionSettings = {},
  ): Promise<void> {
    const isReading = settings.accessMode === 'read only'
    await connection.executeQuery(CompiledQuery.raw(isReading ? 'begin' : 'begin immediate'))
  }

  /** A full disk has ended the transaction already; what is to be told is that, not that there is none to end. */
  override async rollbackTransaction(connection: DatabaseConnection): Promise<void> {
    try {
      await super.rollbackTransaction(connection)
    } catch (error) {
      if (!(error instanceof Error && error.message.includes('no transaction is active'))) throw error
    }
  }
}

/** The database can change its tables in a transaction, so an upgrade that is cut off has not happened. */
class WholeUpgradesAdapter extends SqliteAdapter {
  override get supportsTransactionalDdl(): boolean {
    return true
  }
}

class StoreDialect extends SqliteDialect {
  readonly #database: SqliteDatabase
  constructor(database: SqliteDatabase) {
    super({ database })
    this.#database = database
  }
  override createDriver(): ImmediateDriver {
    return new ImmediateDriver({ database: this.#database })
  }
  override createAdapter(): WholeUpgradesAdapter {
    return new WholeUpgradesAdapter()
  }
}

const RETRY_MS = 20

/** Switching a new file to its log is refused at once, without the wait above, while another program does the same. */
async function patiently(work: () => unknown): Promise<void> {
  for (let left = BUSY_TIMEOUT_MS / RETRY_MS; ; left--) {
    try {
      work()
      return
    } catch (error) {
      if (codeOf(error) !== 'SQLITE_BUSY' || left <= 0) throw error
      await sleep(RETRY_MS)
    }
  }
}

/** For its owner's eyes; the log beside it takes its rights from it. Somebody else's file keeps the rights it has. */
function keepToOneself(file: string): void {
  try {
    chmodSync(file, 0o600)
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'EPERM')) throw error
  }
}

/**
 * Opens the embedded database, made when absent. What has been acknowledged is on the disk: write-ahead log with a full
 * sync at each commit. The driver is loaded here and not above, so that programs without a store start quickly.
 */
export async function openSqlite(file: string): Promise<Database> {
  const { default: Driver } = await import('libsql')
  try {
    const database = new Driver(file)
    keepToOneself(file)
    database.pragma(`busy_timeout = ${BUSY_TIMEOUT_MS}`)
    await patiently(() => database.pragma('journal_mode = WAL'))
    database.pragma('synchronous = FULL')
    database.pragma('foreign_keys = ON')
    const queries = new Kysely<Tables>({ dialect: new StoreDialect(database) })
    return { kind: 'sqlite', queries, place: file, worldError: (error) => storeErrorFrom(error, file) }
  } catch (error) {
    throw new StoreError(CODES[codeOf(error)] ?? 'cannot-write-folder', file, error)
  }
}

function storeErrorFrom(error: unknown, file: string): unknown {
  const code = codeOf(error)
  return code.startsWith('SQLITE_') ? new StoreError(CODES[code] ?? 'unavailable', file, error) : error
}
