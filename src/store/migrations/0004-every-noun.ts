import type { Kysely, Migration } from 'kysely'

/** The nouns of this version, named here and not taken from the program: what has been released stays as it was. */
const NEW_NOUNS = [
  'job',
  'customer',
  'tool',
  'compressor',
  'hose',
  'crew',
  'person',
  'rate_book',
  'quote',
  'day',
  'bore_log',
  'sign_off',
  'attachment',
  'settings',
] as const

const KEY_COLUMNS = ['belongs_to', 'on_day'] as const

/** A table for every noun, all alike, the columns they are listed by, and the bytes of attachments. */
export const everyNoun: Migration = {
  async up(database: Kysely<unknown>) {
    for (const column of KEY_COLUMNS) {
      await database.schema.alterTable('crossing').addColumn(column, 'text').execute()
    }
    for (const noun of NEW_NOUNS) {
      let table = database.schema
        .createTable(noun)
        .addColumn('id', 'text', (column) => column.primaryKey().notNull())
        .addColumn('version', 'integer', (column) => column.notNull())
        .addColumn('format', 'text', (column) => column.notNull())
        .addColumn('updated_at', 'text', (column) => column.notNull())
        .addColumn('deleted_at', 'text')
        .addColumn('demo', 'integer', (column) => column.notNull())
        .addColumn('document', 'text', (column) => column.notNull())
        .addColumn('name', 'text', (column) => column.notNull())
      for (const column of ['engine', 'input_sha256', 'status', 'result', 'issues', ...KEY_COLUMNS]) {
        table = table.addColumn(column, 'text')
      }
      await table.execute()
      await database.schema.createIndex(`${noun}_by_name`).on(noun).column('name').execute()
    }
    for (const noun of ['crossing', ...NEW_NOUNS]) {
      for (const column of KEY_COLUMNS) {
        await database.schema.createIndex(`${noun}_by_${column}`).on(noun).column(column).execute()
      }
    }
    await database.schema
      .createTable('content')
      .addColumn('sha256', 'text', (column) => column.primaryKey().notNull())
      .addColumn('byte_count', 'integer', (column) => column.notNull())
      .addColumn('base64', 'text', (column) => column.notNull())
      .execute()
  },
}
