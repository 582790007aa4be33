import { Kysely, SqliteDialect } from 'kysely'
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

/**
 * Opens the embedded database, made when absent. What has been acknowledged is on the disk: write-ahead log with a full
 * sync at each commit. The driver is loaded here and not above, so that programs without a store start quickly.
 */
export async function openSqlite(file: string): Promise<Kysely<Tables>> {
  const { default: Database } = await import('libsql')
  try {
    const database = new Database(file)
    database.pragma(`busy_timeout = ${BUSY_TIMEOUT_MS}`)
    database.pragma('journal_mode = WAL')
    database.pragma('synchronous = FULL')
    database.pragma('foreign_keys = ON')
    return new Kysely<Tables>({ dialect: new SqliteDialect({ database }) })
  } catch (error) {
    throw new StoreError(CODES[codeOf(error)] ?? 'cannot-write-folder', file, error)
  }
}

/** The driver's own errors as the store's; anything else is a bug and passes through. */
export function storeErrorFrom(error: unknown, file: string): unknown {
  const code = codeOf(error)
  return code.startsWith('SQLITE_') ? new StoreError(CODES[code] ?? 'unavailable', file, error) : error
}
