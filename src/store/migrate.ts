import { type Kysely, type Migration, Migrator } from 'kysely'
import { crossingsAndRevisions } from './migrations/0001-crossings-and-revisions.ts'
import { resultsAndAppendOnlyHistory } from './migrations/0002-results-and-append-only-history.ts'
import { StoreError } from './store-error.ts'
import type { Tables } from './tables.ts'

/** In order, by name; one that has been released is never changed, only followed by another. */
const MIGRATIONS: Readonly<Record<string, Migration>> = {
  '0001-crossings-and-revisions': crossingsAndRevisions,
  '0002-results-and-append-only-history': resultsAndAppendOnlyHistory,
}

/** Brings a store up to this version; a store from a newer one is left untouched. */
export async function migrate(database: Kysely<Tables>, path: string): Promise<void> {
  const migrator = new Migrator({
    db: database,
    provider: { getMigrations: async () => ({ ...MIGRATIONS }) },
  })
  const tables = await database.introspection.getTables({ withInternalKyselyTables: true })
  if (tables.some((table) => table.name === 'kysely_migration')) {
    const done = await database
      .withTables<{ kysely_migration: { name: string } }>()
      .selectFrom('kysely_migration')
      .select('name')
      .execute()
    const unknown = done.find((row) => !(row.name in MIGRATIONS))
    if (unknown) throw new StoreError('made-by-a-newer-version', path, unknown.name)
  }
  const { error } = await migrator.migrateToLatest()
  if (error !== undefined) throw new StoreError('migration-failed', path, error)
}
