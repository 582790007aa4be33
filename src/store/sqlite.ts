import { setTimeout as sleep } from 'node:timers/promises'
import {
  CompiledQuery,
  type DatabaseConnection,
  Kysely,
  SqliteAdapter,
  type SqliteDatabase,
  SqliteDialect,
  SqliteDriver,
} from 'kysely'
import { StoreError, type StoreErrorCode } from './store-error.ts'
import type { Tables } from './tables.ts'

/** How long a writer waits for another process that is writing. */
const BUSY_TIMEOUT_MS = 5000

const CODES: Readonly<Record<string, StoreErrorCode>> = {
  SQLITE_NOTADB: 'not-a-store',
  SQLITE_CORRUPT: 'not-a-store',
  SQLITE_BUSY: 'busy',
}

function codeOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : ''
}

/** Takes the writer's lock at once: a transaction that reads first cannot wait for a writer that comes between. */
class ImmediateDriver extends SqliteDriver {
  override async beginTransaction(connection: DatabaseConnection): Promise<void> {
    await connection.executeQuery(CompiledQuery.raw('begin immediate'))
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

/**
 * Opens the embedded database, made when absent. What has been acknowledged is on the disk: write-ahead log with a full
 * sync at each commit. The driver is loaded here and not above, so that programs without a store start quickly.
 */
export async function openSqlite(file: string): Promise<Kysely<Tables>> {
  const { default: Database } = await import('libsql')
  try {
    const database = new Database(file)
    database.pragma(`busy_timeout = ${BUSY_TIMEOUT_MS}`)
    await patiently(() => database.pragma('journal_mode = WAL'))
    database.pragma('synchronous = FULL')
    database.pragma('foreign_keys = ON')
    return new Kysely<Tables>({ dialect: new StoreDialect(database) })
  } catch (error) {
    throw new StoreError(CODES[codeOf(error)] ?? 'cannot-write-folder', file, error)
  }
}

/** The driver's own errors as the store's; anything else is a bug and passes through. */
export function storeErrorFrom(error: unknown, file: string): unknown {
  const code = codeOf(error)
  return code.startsWith('SQLITE_') ? new StoreError(CODES[code] ?? 'unavailable', file, error) : error
}
