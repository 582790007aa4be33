import type { Act } from '../noun.ts'
import type { ApiTokenRow } from './access-tables.ts'
import { recordAccess, type Working } from './working.ts'

export type ApiToken = {
  readonly id: string
  readonly name: string
  readonly role: string
  readonly madeBy: string
  readonly madeAt: string
  readonly usedAt: string | null
  readonly revokedAt: string | null
}

export type ApiTokens = {
  add(
    token: Pick<ApiToken, 'id' | 'name' | 'role' | 'madeBy'>,
    tokenHash: string,
    act: Act,
  ): Promise<ApiToken>
  byToken(tokenHash: string): Promise<ApiToken | null>
  list(): Promise<readonly ApiToken[]>
  touch(id: string, at: Date): Promise<void>
  /** False when there is none, or it is revoked already. */
  revoke(id: string, act: Act): Promise<boolean>
}

const tokenFrom = (row: ApiTokenRow): ApiToken => ({
  id: row.id,
  name: row.name,
  role: row.role,
  madeBy: row.made_by,
  madeAt: row.made_at,
  usedAt: row.used_at,
  revokedAt: row.revoked_at,
})

export const createApiTokens = ({ read, change }: Working): ApiTokens => ({
  add: ({ id, name, role, madeBy }, tokenHash, act) =>
    change(async (transaction) => {
      const row: ApiTokenRow = {
        id,
        name,
        role,
        token_hash: tokenHash,
        made_by: madeBy,
        made_at: act.at.toISOString(),
        used_at: null,
        revoked_at: null,
      }
      await transaction.insertInto('api_token').values(row).execute()
      const document = { name, role }
      await recordAccess(transaction, { noun: 'api_token', id, version: 1, action: 'insert', document }, act)
      return tokenFrom(row)
    }),
  byToken: (tokenHash) =>
    read(async (queries) => {
      const row = await queries
        .selectFrom('api_token')
        .selectAll()
        .where('token_hash', '=', tokenHash)
        .where('revoked_at', 'is', null)
        .executeTakeFirst()
      return row === undefined ? null : tokenFrom(row)
    }),
  list: () =>
    read(async (queries) =>
      (await queries.selectFrom('api_token').selectAll().orderBy('made_at', 'desc').execute()).map(tokenFrom),
    ),
  async touch(id, at) {
    await read((queries) =>
      queries.updateTable('api_token').set({ used_at: at.toISOString() }).where('id', '=', id).execute(),
    )
  },
  revoke: (id, act) =>
    change(async (transaction) => {
      const row = await transaction
        .selectFrom('api_token')
        .selectAll()
        .where('id', '=', id)
        .where('revoked_at', 'is', null)
        .executeTakeFirst()
      if (row === undefined) return false
      await transaction
        .updateTable('api_token')
        .set({ revoked_at: act.at.toISOString() })
        .where('id', '=', id)
        .execute()
      const document = { name: row.name, role: row.role }
      await recordAccess(transaction, { noun: 'api_token', id, version: 2, action: 'remove', document }, act)
      return true
    }),
})
