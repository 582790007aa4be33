import type { Kysely, Migration } from 'kysely'

/** The first noun, and the history every noun shares. */
export const crossingsAndRevisions: Migration = {
  async up(database: Kysely<unknown>) {
    await database.schema
      .createTable('crossing')
      .addColumn('id', 'text', (column) => column.primaryKey().notNull())
      .addColumn('version', 'integer', (column) => column.notNull())
      .addColumn('format', 'text', (column) => column.notNull())
      .addColumn('updated_at', 'text', (column) => column.notNull())
      .addColumn('deleted_at', 'text')
      .addColumn('demo', 'integer', (column) => column.notNull())
      .addColumn('document', 'text', (column) => column.notNull())
      .addColumn('name', 'text', (column) => column.notNull())
      .execute()
    await database.schema.createIndex('crossing_by_name').on('crossing').column('name').execute()
    await database.schema
      .createTable('revision')
      .addColumn('noun', 'text', (column) => column.notNull())
      .addColumn('id', 'text', (column) => column.notNull())
      .addColumn('version', 'integer', (column) => column.notNull())
      .addColumn('who', 'text', (column) => column.notNull())
      .addColumn('acted_at', 'text', (column) => column.notNull())
      .addColumn('acted_from', 'text', (column) => column.notNull())
      .addColumn('request_key', 'text')
      .addColumn('document', 'text')
      .addPrimaryKeyConstraint('revision_key', ['noun', 'id', 'version'])
      .execute()
  },
}
