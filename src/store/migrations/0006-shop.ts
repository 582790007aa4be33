import type { Kysely, Migration } from 'kysely'

/** As this version made them; what has been released stays as it was. */
const NEW_NOUNS = ['tool_template', 'part', 'inspection'] as const

const KEY_COLUMNS = ['belongs_to', 'on_day'] as const

/** The shop: what a tool is looked at by, pieces that move between tools, and the sheets of what was found. */
export const shop: Migration = {
  async up(database: Kysely<unknown>) {
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
      for (const column of ['name', ...KEY_COLUMNS]) {
        await database.schema.createIndex(`${noun}_by_${column}`).on(noun).column(column).execute()
      }
    }
  },
}
