import { type Kysely, type Migration, sql } from 'kysely'
import { CHAIN_START, revisionHash } from '../chain.ts'
import type { DatabaseKind } from '../database.ts'
import type { RevisionRow } from '../tables.ts'

type OlderLine = Omit<RevisionRow, 'seq' | 'format' | 'hash'>
type Both = { readonly revision: OlderLine; readonly revision_chained: RevisionRow }

const AT_ONCE = 500

/** Lines written before there was a chain, sealed in the order they were made. */
async function sealOlderLines(database: Kysely<Both>): Promise<void> {
  let seq = 0
  let previous = CHAIN_START
  for (;;) {
    const lines = await database
      .selectFrom('revision')
      .selectAll()
      .orderBy('acted_at')
      .orderBy('noun')
      .orderBy('id')
      .orderBy('version')
      .limit(AT_ONCE)
      .offset(seq)
      .execute()
    for (const line of lines) {
      seq += 1
      // Crossings were the only noun, and had one format.
      const unsealed = { ...line, seq, format: 'underlane/crossing@1' }
      previous = revisionHash(previous, unsealed)
      await database
        .insertInto('revision_chained')
        .values({ ...unsealed, hash: previous })
        .execute()
    }
    if (lines.length < AT_ONCE) return
  }
}

const refuseRewriting: Readonly<Record<DatabaseKind, readonly string[]>> = {
  sqlite: [
    `create trigger revision_is_never_updated before update on revision
     begin select raise(abort, 'history is append-only'); end`,
    `create trigger revision_is_never_deleted before delete on revision
     begin select raise(abort, 'history is append-only'); end`,
    // INSERT OR REPLACE deletes without asking the trigger above.
    `create trigger revision_is_never_overwritten before insert on revision
     when exists (
       select 1 from revision
       where seq = new.seq
         or (noun = new.noun and id = new.id and (version = new.version or request_key = new.request_key))
     )
     begin select raise(abort, 'history is append-only'); end`,
  ],
  postgres: [
    `create function revision_refuses() returns trigger language plpgsql as
     $$ begin raise exception 'history is append-only'; end $$`,
    `create trigger revision_is_never_changed before update or delete on revision
     for each row execute function revision_refuses()`,
    `create trigger revision_is_never_emptied before truncate on revision
     for each statement execute function revision_refuses()`,
  ],
}

/** One chain through the whole history: each line seals the one before. The table is made anew, for its lines may not change. */
export const chainedHistory = (kind: DatabaseKind): Migration => ({
  async up(database: Kysely<Both>) {
    await database.schema
      .createTable('revision_chained')
      .addColumn('seq', 'integer', (column) => column.primaryKey().notNull())
      .addColumn('noun', 'text', (column) => column.notNull())
      .addColumn('id', 'text', (column) => column.notNull())
      .addColumn('version', 'integer', (column) => column.notNull())
      .addColumn('format', 'text', (column) => column.notNull())
      .addColumn('action', 'text', (column) => column.notNull())
      .addColumn('who', 'text', (column) => column.notNull())
      .addColumn('acted_at', 'text', (column) => column.notNull())
      .addColumn('acted_from', 'text', (column) => column.notNull())
      .addColumn('request_key', 'text')
      .addColumn('document', 'text')
      .addColumn('hash', 'text', (column) => column.notNull())
      .execute()
    await sealOlderLines(database)
    await database.schema.dropTable('revision').execute()
    await database.schema.alterTable('revision_chained').renameTo('revision').execute()
    for (const [name, columns] of [
      ['revision_by_version', ['noun', 'id', 'version']],
      ['revision_by_request_key', ['noun', 'id', 'request_key']],
    ] as const) {
      await database.schema
        .createIndex(name)
        .on('revision')
        .columns([...columns])
        .unique()
        .execute()
    }
    for (const statement of refuseRewriting[kind]) await sql.raw(statement).execute(database)
  },
})
