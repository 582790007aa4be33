import type { Kysely } from 'kysely'
import { type ChangeContext, insertOne, removeOne, replaceOne, restoreOne, tableOf } from './changes.ts'
import type { Database } from './database.ts'
import type { Act, Changed, ListRequest, Noun, PageRequest, Store } from './noun.ts'
import { KeyReused } from './revisions.ts'
import { LISTED, listedFrom, revisionFrom, STORED, storedFrom } from './rows.ts'
import type { Tables } from './tables.ts'

/** Asks for one more than wanted, which tells whether another page follows. */
function pageOf<Row, Item, Cursor>(
  rows: readonly Row[],
  limit: number,
  read: (row: Row) => Item,
  cursorOf: (item: Item) => Cursor,
) {
  const items = rows.slice(0, limit).map(read)
  const last = items.at(-1)
  return { items, next: rows.length > limit && last !== undefined ? cursorOf(last) : null }
}

function reading<Document>(database: Kysely<Tables>, noun: Noun<Document>) {
  const table = tableOf(noun)
  return {
    async find(id: string) {
      const row = await database
        .selectFrom(table)
        .select(STORED)
        .where('id', '=', id)
        .where('deleted_at', 'is', null)
        .executeTakeFirst()
      return row === undefined ? null : storedFrom(row, noun)
    },

    async list({ after, limit, removed = false, belongsTo = null, onDay = null }: ListRequest) {
      let query = database
        .selectFrom(table)
        .select(LISTED)
        .where('deleted_at', removed ? 'is not' : 'is', null)
      if (after !== null) query = query.where('id', '>', after)
      if (belongsTo !== null) query = query.where('belongs_to', '=', belongsTo)
      if (onDay !== null) query = query.where('on_day', '=', onDay)
      const rows = await query
        .orderBy('id')
        .limit(limit + 1)
        .execute()
      return pageOf(
        rows,
        limit,
        (row) => listedFrom(row, noun),
        (item) => item.id,
      )
    },

    async history(id: string, { after, limit }: PageRequest<number>) {
      const rows = await database
        .selectFrom('revision')
        .selectAll()
        .where('noun', '=', noun.table)
        .where('id', '=', id)
        .where('version', '>', after ?? 0)
        .orderBy('version')
        .limit(limit + 1)
        .execute()
      return pageOf(
        rows,
        limit,
        (row) => revisionFrom(row, noun),
        (item) => item.version,
      )
    },
  }
}

/** One noun's documents in one table; each change, in one transaction, is also a line of the revision table. */
export function createDocumentStore<Document>(
  { queries: database, worldError }: Database,
  noun: Noun<Document>,
): Store<Document> {
  const guarded = <Answer>(work: Promise<Answer>): Promise<Answer> =>
    work.catch((error: unknown) => {
      throw worldError(error)
    })

  /** The one transaction type: it has the tables and the act, and awaits nothing else. */
  const changing = <What>(
    change: (context: ChangeContext<Document>, what: What) => Promise<Changed<Document>>,
  ) => {
    return (what: What, act: Act): Promise<Changed<Document>> => {
      const work = database
        .transaction()
        .execute((transaction) => change({ transaction, noun, act }, what))
        .catch((error: unknown): Changed<Document> => {
          if (error instanceof KeyReused) return { outcome: 'key-reused' }
          throw error
        })
      return guarded(work)
    }
  }

  const { find, list, history } = reading(database, noun)
  return {
    find: (id) => guarded(find(id)),
    list: (page) => guarded(list(page)),
    history: (id, page) => guarded(history(id, page)),
    insert: changing(insertOne<Document>),
    replace: changing(replaceOne<Document>),
    remove: changing(removeOne<Document>),
    restore: changing(restoreOne<Document>),
  }
}
