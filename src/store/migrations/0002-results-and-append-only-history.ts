import { type Kysely, type Migration, sql } from 'kysely'
import type { DatabaseKind } from '../database.ts'

/** Columns of what the engine made of a document, the kind of each change, and a history nobody can rewrite. */
export const resultsAndAppendOnlyHistory = (kind: DatabaseKind): Migration => ({
  async up(database: Kysely<unknown>) {
    for (const column of ['engine', 'input_sha256', 'status', 'result', 'issues']) {
      await database.schema.alterTable('crossing').addColumn(column, 'text').execute()
    }
    // Until now documents were only ever inserted.
    await database.schema
      .alterTable('revision')
      .addColumn('action', 'text', (column) => column.notNull().defaultTo('insert'))
      .execute()
    await database.schema
      .createIndex('revision_by_request_key')
      .on('revision')
      .columns(['noun', 'id', 'request_key'])
      .unique()
      .execute()
    // The next migration makes the table anew, with guards of either kind; no other database was ever left at this one.
    if (kind !== 'sqlite') return
    await sql`create trigger revision_is_never_updated before update on revision
      begin select raise(abort, 'history is append-only'); end`.execute(database)
    await sql`create trigger revision_is_never_deleted before delete on revision
      begin select raise(abort, 'history is append-only'); end`.execute(database)
    // INSERT OR REPLACE deletes without asking the trigger above.
    await sql`create trigger revision_is_never_overwritten before insert on revision
      when exists (
        select 1 from revision
        where noun = new.noun and id = new.id and (version = new.version or request_key = new.request_key)
      )
      begin select raise(abort, 'history is append-only'); end`.execute(database)
  },
})
