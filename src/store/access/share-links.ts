import { randomUUID } from 'node:crypto'
import type { Act } from '../noun.ts'
import type { ShareLinkRow } from './access-tables.ts'
import { recordAccess, type Working } from './working.ts'

export type ShareLink = {
  readonly id: string
  readonly crossing: string
  readonly name: string
  readonly madeBy: string
  readonly madeAt: string
  readonly expiresAt: string
  readonly revokedAt: string | null
}
type ShareAccess = { readonly at: string; readonly from: string }

export type ShareLinks = {
  add(
    link: Pick<ShareLink, 'id' | 'crossing' | 'name' | 'madeBy' | 'expiresAt'>,
    tokenHash: string,
    act: Act,
  ): Promise<ShareLink>
  /** One that is neither revoked nor over. */
  byToken(tokenHash: string, at: Date): Promise<ShareLink | null>
  find(id: string): Promise<ShareLink | null>
  list(): Promise<readonly ShareLink[]>
  noteAccess(id: string, at: Date, from: string): Promise<void>
  /** The latest first. */
  accesses(id: string, limit: number): Promise<readonly ShareAccess[]>
  revoke(id: string, act: Act): Promise<boolean>
}

const linkFrom = (row: ShareLinkRow): ShareLink => ({
  id: row.id,
  crossing: row.crossing,
  name: row.name,
  madeBy: row.made_by,
  madeAt: row.made_at,
  expiresAt: row.expires_at,
  revokedAt: row.revoked_at,
})

const lineOf = ({ id, crossing, name, expires_at: expiresAt }: ShareLinkRow) => ({
  noun: 'share_link' as const,
  id,
  document: { crossing, name, expiresAt },
})

const reading = ({ read }: Working) => ({
  byToken: (tokenHash: string, at: Date) =>
    read(async (queries) => {
      const row = await queries
        .selectFrom('share_link')
        .selectAll()
        .where('token_hash', '=', tokenHash)
        .where('revoked_at', 'is', null)
        .where('expires_at', '>', at.toISOString())
        .executeTakeFirst()
      return row === undefined ? null : linkFrom(row)
    }),
  find: (id: string) =>
    read(async (queries) => {
      const row = await queries.selectFrom('share_link').selectAll().where('id', '=', id).executeTakeFirst()
      return row === undefined ? null : linkFrom(row)
    }),
  list: () =>
    read(async (queries) =>
      (await queries.selectFrom('share_link').selectAll().orderBy('made_at', 'desc').execute()).map(linkFrom),
    ),
  accesses: (id: string, limit: number) =>
    read(async (queries) => {
      const rows = await queries
        .selectFrom('share_access')
        .selectAll()
        .where('link', '=', id)
        .orderBy('seen_at', 'desc')
        .limit(limit)
        .execute()
      return rows.map((row) => ({ at: row.seen_at, from: row.seen_from }))
    }),
})

export const createShareLinks = (working: Working): ShareLinks => ({
  ...reading(working),
  add: ({ id, crossing, name, madeBy, expiresAt }, tokenHash, act) =>
    working.change(async (transaction) => {
      const row: ShareLinkRow = {
        id,
        crossing,
        name,
        token_hash: tokenHash,
        made_by: madeBy,
        made_at: act.at.toISOString(),
        expires_at: expiresAt,
        revoked_at: null,
      }
      await transaction.insertInto('share_link').values(row).execute()
      await recordAccess(transaction, { ...lineOf(row), version: 1, action: 'insert' }, act)
      return linkFrom(row)
    }),
  async noteAccess(id, at, from) {
    const row = { id: randomUUID(), link: id, seen_at: at.toISOString(), seen_from: from }
    await working.read((queries) => queries.insertInto('share_access').values(row).execute())
  },
  revoke: (id, act) =>
    working.change(async (transaction) => {
      const row = await transaction
        .selectFrom('share_link')
        .selectAll()
        .where('id', '=', id)
        .where('revoked_at', 'is', null)
        .executeTakeFirst()
      if (row === undefined) return false
      await transaction
        .updateTable('share_link')
        .set({ revoked_at: act.at.toISOString() })
        .where('id', '=', id)
        .execute()
      await recordAccess(transaction, { ...lineOf(row), version: 2, action: 'remove' }, act)
      return true
    }),
})
