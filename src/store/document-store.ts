import type { Kysely, Transaction } from 'kysely'
import type { Act, Inserted, Noun, Page, PageRequest, Store, Stored } from './noun.ts'
import { recordRevision } from './revisions.ts'
import type { CrossingKeys, FixedColumns, Tables } from './tables.ts'

const FIXED = ['id', 'version', 'format', 'updated_at', 'deleted_at', 'demo', 'document'] as const

const storedFrom = <Document>(
  row: FixedColumns,
  readDocument: (given: unknown) => Document,
): Stored<Document> => ({
  id: row.id,
  version: row.version,
  format: row.format,
  updatedAt: row.updated_at,
  demo: row.demo === 1,
  document: readDocument(JSON.parse(row.document)),
})

type Entry<Document> = { readonly id: string; readonly document: Document; readonly demo: boolean }

/**
 * Adds a row and its line of history; false when the id is taken. It writes before it reads: a transaction that starts by
 * reading cannot wait for another writer.
 */
async function insertRow<Document>(
  transaction: Transaction<Tables>,
  { table, format, keys }: Noun<Document, CrossingKeys>,
  { id, document, demo }: Entry<Document>,
  act: Act,
): Promise<boolean> {
  const text = JSON.stringify(document)
  const written = await transaction
    .insertInto(table)
    .values({
      id,
      version: 1,
      format,
      updated_at: act.at.toISOString(),
      deleted_at: null,
      demo: demo ? 1 : 0,
      document: text,
      ...keys(document),
    })
    .onConflict((conflict) => conflict.column('id').doNothing())
    .executeTakeFirst()
  if (written.numInsertedOrUpdatedRows === 0n) return false
  await recordRevision(transaction, { noun: table, id, version: 1, document: text }, act)
  return true
}

/** One noun's documents in one table, each change also a line of the revision table. */
export function createDocumentStore<Document>(
  database: Kysely<Tables>,
  noun: Noun<Document, CrossingKeys>,
  /** Tells the world's errors, which the driver throws in its own way, from ours. */
  worldError: (error: unknown) => unknown,
): Store<Document> {
  const { table } = noun

  const read = (row: FixedColumns) => storedFrom(row, noun.read)

  const guarded = <Answer>(work: Promise<Answer>): Promise<Answer> =>
    work.catch((error: unknown) => {
      throw worldError(error)
    })

  return {
    async find(id) {
      const query = database
        .selectFrom(table)
        .select(FIXED)
        .where('id', '=', id)
        .where('deleted_at', 'is', null)
      const row = await guarded(query.executeTakeFirst())
      return row === undefined ? null : read(row)
    },

    async list({ after, limit }: PageRequest): Promise<Page<Stored<Document>>> {
      let query = database.selectFrom(table).select(FIXED).where('deleted_at', 'is', null)
      if (after !== null) query = query.where('id', '>', after)
      // One more than asked for tells whether another page follows.
      const rows = await guarded(
        query
          .orderBy('id')
          .limit(limit + 1)
          .execute(),
      )
      const items = rows.slice(0, limit).map(read)
      return { items, next: rows.length > limit ? (items.at(-1)?.id ?? null) : null }
    },

    insert(entry, act) {
      const work = database.transaction().execute(async (transaction): Promise<Inserted<Document>> => {
        const inserted = await insertRow(transaction, noun, entry, act)
        const row = await transaction
          .selectFrom(table)
          .select(FIXED)
          .where('id', '=', entry.id)
          .executeTakeFirstOrThrow()
        return { outcome: inserted ? 'inserted' : 'present', stored: read(row) }
      })
      return guarded(work)
    },
  }
}
