import {
  CompiledQuery,
  type DatabaseConnection,
  Kysely,
  PostgresDialect,
  type PostgresDialectConfig,
  PostgresDriver,
  type TransactionSettings,
} from 'kysely'
import type { Database } from './database.ts'
import { StoreError, type StoreErrorCode } from './store-error.ts'
import type { Tables } from './tables.ts'

/** How long a request waits for a connection before it is told that the store is busy. */
const CONNECT_TIMEOUT_MS = 10_000
const MOST_CONNECTIONS = 10

/** Any number that no other program in this database takes for its own lock. */
const WRITER_LOCK = 4_270_001

/** By SQLSTATE, or its class where the whole class means one thing. */
const CODES: Readonly<Record<string, StoreErrorCode>> = {
  '53100': 'full',
  '55P03': 'busy',
  '28': 'not-allowed',
  '3D': 'no-such-database',
  '42501': 'not-allowed',
}

function codeOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : ''
}

/** Errors of the connection rather than of a statement: the server is away, ends, or was never there. */
const GONE = /^(08|57P|53)|^(ECONN|ENOTFOUND|EAI_|ETIMEDOUT|EPIPE|EHOSTUNREACH)/
const GONE_WORDS = /Connection terminated|timeout exceeded|timeout expired/

function storeCodeOf(error: unknown): StoreErrorCode | null {
  const code = codeOf(error)
  const known = CODES[code] ?? CODES[code.slice(0, 2)]
  if (known !== undefined) return known
  if (GONE.test(code)) return 'unavailable'
  return error instanceof Error && GONE_WORDS.test(error.message) ? 'unavailable' : null
}

/**
 * One writer at a time, as in the embedded database: what a change reads stays so until it ends, and the history is one
 * unbroken chain. Reading transactions see one moment and wait for nobody.
 */
class OneWriterDriver extends PostgresDriver {
  override async beginTransaction(
    connection: DatabaseConnection,
    settings: TransactionSettings,
  ): Promise<void> {
    if (settings.accessMode === 'read only') {
      await super.beginTransaction(connection, { ...settings, isolationLevel: 'repeatable read' })
      return
    }
    await super.beginTransaction(connection, settings)
    try {
      await connection.executeQuery(CompiledQuery.raw(`select pg_advisory_xact_lock(${WRITER_LOCK})`))
    } catch (error) {
      // To its caller this transaction never began, so nobody else would end it.
      await connection.executeQuery(CompiledQuery.raw('rollback')).catch(() => undefined)
      throw error
    }
  }
}

class StoreDialect extends PostgresDialect {
  readonly #config: PostgresDialectConfig
  constructor(config: PostgresDialectConfig) {
    super(config)
    this.#config = config
  }
  override createDriver(): OneWriterDriver {
    return new OneWriterDriver(this.#config)
  }
}

/**
 * What is acknowledged must be on the disk, also where an administrator has traded that for speed. And a program that
 * hangs in the middle of a change keeps the others waiting for a while only, unless an administrator has set how long.
 */
const KEEP_WHAT_IS_SAID = CompiledQuery.raw(
  `select set_config(wanted.name, wanted.value, false)
   from pg_settings
   join (values
     ('synchronous_commit', 'off', 'on'),
     ('lock_timeout', '0', '10s'),
     ('idle_in_transaction_session_timeout', '0', '60s')
   ) as wanted (name, instead_of, value)
   on pg_settings.name = wanted.name and pg_settings.setting = wanted.instead_of`,
)

/** The address as it may be shown: without the password. */
function placeOf(databaseUrl: string): string | null {
  if (!URL.canParse(databaseUrl)) return null
  const url = new URL(databaseUrl)
  if (url.protocol !== 'postgres:' && url.protocol !== 'postgresql:') return null
  url.password = ''
  return url.href.split('?')[0] ?? url.href
}

/** Opens the larger database. The driver is loaded here, so that everybody else starts without it. */
export async function openPostgres(databaseUrl: string): Promise<Database> {
  const place = placeOf(databaseUrl)
  if (place === null) throw new StoreError('not-an-address', 'DATABASE_URL', null)
  const { default: pg } = await import('pg')
  const pool = new pg.Pool({
    connectionString: databaseUrl,
    max: MOST_CONNECTIONS,
    connectionTimeoutMillis: CONNECT_TIMEOUT_MS,
  })
  // A connection lost while nobody uses it: the next request opens another. Unheard, it would end the program.
  pool.on('error', () => undefined)
  const queries = new Kysely<Tables>({
    dialect: new StoreDialect({
      pool,
      onCreateConnection: async (connection) => {
        await connection.executeQuery(KEEP_WHAT_IS_SAID)
      },
    }),
  })
  const worldError = (error: unknown): unknown => {
    const code = storeCodeOf(error)
    return code === null ? error : new StoreError(code, place, error)
  }
  try {
    await queries.connection().execute(async () => undefined)
  } catch (error) {
    await queries.destroy()
    throw worldError(error)
  }
  return { kind: 'postgres', queries, place, worldError }
}
