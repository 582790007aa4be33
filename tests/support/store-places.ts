import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type OpenStore, openDatabase, openStore, type StorePlace } from '../../src/store/open-store.ts'
import { POSTGRES_BIN, startPostgres } from './postgres-server.ts'

export type Places = {
  /** A new, empty one. */
  fresh(): Promise<StorePlace>
  /** Ends the database's own program without a goodbye and starts it again; the embedded one has none. */
  crash(): Promise<void>
  end(): Promise<void>
}

export const openAt = ({ dataFolder, databaseUrl }: StorePlace): Promise<OpenStore> =>
  openStore(dataFolder, databaseUrl)

/** Runs statements as somebody would who goes round the program. */
export async function runRaw(place: StorePlace, ...statements: readonly string[]): Promise<void> {
  const { sql } = await import('kysely')
  const database = await openDatabase(place)
  try {
    for (const statement of statements) await sql.raw(statement).execute(database.queries)
  } finally {
    await database.queries.destroy()
  }
}

async function sqlitePlaces(): Promise<Places> {
  const folder = mkdtempSync(join(tmpdir(), 'underlane-places-'))
  let used = 0
  return {
    fresh: async () => ({ dataFolder: join(folder, String(++used)), databaseUrl: null }),
    crash: async () => undefined,
    end: async () => rmSync(folder, { recursive: true, force: true }),
  }
}

async function postgresPlaces(bin: string): Promise<Places> {
  const server = await startPostgres(bin)
  return {
    fresh: async () => ({ dataFolder: '/nowhere', databaseUrl: await server.fresh() }),
    crash: async () => {
      await server.crash()
      await server.start()
    },
    end: () => server.stop(),
  }
}

type Named = readonly [string, () => Promise<Places>]
const POSTGRES: readonly Named[] =
  POSTGRES_BIN === null ? [] : [['PostgreSQL', postgresPlaces.bind(null, POSTGRES_BIN)]]

/** Both databases where both are installed; the task that runs the suites says so when one is not. */
export const DATABASES: readonly Named[] = [['SQLite', sqlitePlaces], ...POSTGRES]
