import { type Migration, Migrator } from 'kysely'
import type { Database, DatabaseKind } from './database.ts'
import { crossingsAndRevisions } from './migrations/0001-crossings-and-revisions.ts'
import { resultsAndAppendOnlyHistory } from './migrations/0002-results-and-append-only-history.ts'
import { chainedHistory } from './migrations/0003-chained-history.ts'
import { everyNoun } from './migrations/0004-every-noun.ts'
import { accounts } from './migrations/0005-accounts.ts'
import { shop } from './migrations/0006-shop.ts'
import { StoreError, type StoreErrorCode } from './store-error.ts'

/** In order, by name; one that has been released is never changed, only followed by another. */
const migrationsFor = (kind: DatabaseKind): Record<string, Migration> => ({
  '0001-crossings-and-revisions': crossingsAndRevisions,
  '0002-results-and-append-only-history': resultsAndAppendOnlyHistory(kind),
  '0003-chained-history': chainedHistory(kind),
  '0004-every-noun': everyNoun,
  '0005-accounts': accounts,
  '0006-shop': shop,
})

export const MIGRATION_NAMES: readonly string[] = Object.keys(migrationsFor('sqlite')).sort()

/** Nothing is wrong with the migration: it can be tried again. */
const PASSING: readonly StoreErrorCode[] = ['busy', 'full', 'not-allowed']

/** What has been done to a database, in order; nothing yet in a new one. */
async function migrationsDone({ queries }: Database): Promise<readonly string[]> {
  const tables = await queries.introspection.getTables({ withInternalKyselyTables: true })
  if (!tables.some((table) => table.name === 'kysely_migration')) return []
  const done = await queries
    .withTables<{ kysely_migration: { name: string } }>()
    .selectFrom('kysely_migration')
    .select('name')
    .orderBy('name')
    .execute()
  return done.map((row) => row.name)
}

/** Brings a store up to this version; a store from a newer one is left untouched. */
export async function migrate(database: Database): Promise<void> {
  const { queries, kind, place } = database
  const done = await migrationsDone(database)
  const unknown = done.find((name) => !MIGRATION_NAMES.includes(name))
  if (unknown !== undefined) throw new StoreError('made-by-a-newer-version', place, unknown)
  const migrator = new Migrator({
    db: queries,
    provider: { getMigrations: async () => migrationsFor(kind) },
  })
  const { error } = await migrator.migrateToLatest()
  if (error === undefined) return
  const ofTheWorld = database.worldError(error)
  if (ofTheWorld instanceof StoreError && PASSING.includes(ofTheWorld.code)) throw ofTheWorld
  throw new StoreError('migration-failed', place, error)
}
