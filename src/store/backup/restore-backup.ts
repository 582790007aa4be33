import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Transaction } from 'kysely'
import { tableOf } from '../changes.ts'
import type { Database } from '../database.ts'
import { NOUN_PATHS, NOUNS } from '../nouns.ts'
import type { Tables } from '../tables.ts'
import { BackupError } from './backup-error.ts'
import { contentHash, NOUN_FILES_OF_BACKUP, nounRow, REVISION_FILE, revisionRow } from './backup-tables.ts'
import { accessFilesOf, backupRows, type ReadBackup } from './read-backup.ts'

/** Rows in one statement: far below what either database takes as parameters. */
const AT_ONCE = 200

async function requireEmpty(transaction: Transaction<Tables>, place: string): Promise<void> {
  const tables = [
    ...NOUN_PATHS.map((path) => tableOf(NOUNS[path])),
    'revision',
    'content',
    'account',
  ] as const
  for (const table of tables) {
    const row = await transaction
      .selectFrom(table)
      .select((each) => each.lit(1).as('one'))
      .limit(1)
      .executeTakeFirst()
    if (row !== undefined) throw new BackupError('not-empty', place, null)
  }
}

async function inPortions<Row>(
  rows: AsyncIterable<Row>,
  insert: (portion: readonly Row[]) => Promise<unknown>,
): Promise<void> {
  let portion: Row[] = []
  for await (const row of rows) {
    portion.push(row)
    if (portion.length < AT_ONCE) continue
    await insert(portion)
    portion = []
  }
  if (portion.length > 0) await insert(portion)
}

/** Puts everything of a backup into an empty store of either kind, in one transaction: all of it, or nothing. */
export async function restoreBackup(database: Database, { manifest, folder }: ReadBackup): Promise<void> {
  const work = database.queries.transaction().execute(async (transaction) => {
    await requireEmpty(transaction, database.place)
    for (const { name, noun } of NOUN_FILES_OF_BACKUP) {
      await inPortions(backupRows(folder, name, nounRow), (portion) =>
        transaction.insertInto(tableOf(noun)).values(portion).execute(),
      )
    }
    await inPortions(backupRows(folder, REVISION_FILE, revisionRow), (portion) =>
      transaction.insertInto('revision').values(portion).execute(),
    )
    for (const { name, table, row } of accessFilesOf(manifest)) {
      await inPortions(backupRows(folder, name, row), (portion) =>
        // Read by the schema of this very table.
        transaction
          .insertInto(table)
          .values(portion as never)
          .execute(),
      )
    }
    for (const { name, byteCount } of manifest.files) {
      const sha256 = contentHash(name)
      if (sha256 === null) continue
      const base64 = readFileSync(join(folder, name)).toString('base64')
      await transaction.insertInto('content').values({ sha256, byte_count: byteCount, base64 }).execute()
    }
  })
  await work.catch((error: unknown) => {
    throw database.worldError(error)
  })
}
