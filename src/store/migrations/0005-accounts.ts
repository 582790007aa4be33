import type { Kysely, Migration } from 'kysely'

type ColumnKind = 'text' | 'text or null' | 'integer' | 'integer or null'

/** As this version made them; `id` comes first in each. */
const NEW_TABLES: Readonly<Record<string, Readonly<Record<string, ColumnKind>>>> = {
  account: {
    version: 'integer',
    login: 'text',
    name: 'text',
    role: 'text',
    person: 'text or null',
    password_hash: 'text or null',
    totp_secret: 'text or null',
    totp_step: 'integer or null',
    is_active: 'integer',
    updated_at: 'text',
  },
  recovery_code: { account: 'text' },
  session: {
    token_hash: 'text',
    account: 'text',
    device: 'text',
    made_at: 'text',
    seen_at: 'text',
    seen_from: 'text',
    second_factor: 'integer',
  },
  one_time_code: { purpose: 'text', account: 'text or null', expires_at: 'text' },
  failed_tries: { failures: 'integer', last_at: 'text' },
  api_token: {
    name: 'text',
    role: 'text',
    token_hash: 'text',
    made_by: 'text',
    made_at: 'text',
    used_at: 'text or null',
    revoked_at: 'text or null',
  },
  share_link: {
    crossing: 'text',
    name: 'text',
    token_hash: 'text',
    made_by: 'text',
    made_at: 'text',
    expires_at: 'text',
    revoked_at: 'text or null',
  },
  share_access: { link: 'text', seen_at: 'text', seen_from: 'text' },
}

const UNIQUE = [
  ['account', 'login'],
  ['session', 'token_hash'],
  ['api_token', 'token_hash'],
  ['share_link', 'token_hash'],
] as const

const FOUND_BY = [
  ['session', 'account'],
  ['recovery_code', 'account'],
  ['share_access', 'link'],
] as const

/** Who may come in: accounts, sessions, codes, tokens for scripts, links that show one crossing. */
export const accounts: Migration = {
  async up(database: Kysely<unknown>) {
    for (const [table, columns] of Object.entries(NEW_TABLES)) {
      let create = database.schema
        .createTable(table)
        .addColumn('id', 'text', (column) => column.primaryKey().notNull())
      for (const [name, kind] of Object.entries(columns)) {
        const type = kind.startsWith('text') ? 'text' : 'integer'
        create = create.addColumn(name, type, (column) =>
          kind.endsWith('or null') ? column : column.notNull(),
        )
      }
      await create.execute()
    }
    for (const [table, column] of UNIQUE) {
      await database.schema.createIndex(`${table}_by_${column}`).on(table).column(column).unique().execute()
    }
    for (const [table, column] of FOUND_BY) {
      await database.schema.createIndex(`${table}_by_${column}`).on(table).column(column).execute()
    }
  },
}
