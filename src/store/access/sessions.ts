import type { SessionRow } from './access-tables.ts'
import type { Working } from './working.ts'

export type Session = {
  readonly id: string
  readonly account: string
  readonly device: string
  readonly madeAt: string
  readonly seenAt: string
  readonly seenFrom: string
  readonly hasSecondFactor: boolean
}

export type Sessions = {
  open(session: Session, tokenHash: string): Promise<void>
  byToken(tokenHash: string): Promise<Session | null>
  /** Notes that it is in use. */
  touch(id: string, at: Date, from: string): Promise<void>
  of(account: string): Promise<readonly Session[]>
  /** Ends one of an account's sessions; false when it has none such. */
  end(account: string, id: string): Promise<boolean>
  /** Ends all of an account's, but the one to keep. */
  endAll(account: string, keep?: string): Promise<void>
  /** Clears away what ended by itself. */
  forget(before: { readonly seen: Date; readonly made: Date }): Promise<void>
}

const sessionFrom = (row: SessionRow): Session => ({
  id: row.id,
  account: row.account,
  device: row.device,
  madeAt: row.made_at,
  seenAt: row.seen_at,
  seenFrom: row.seen_from,
  hasSecondFactor: row.second_factor === 1,
})

export const createSessions = ({ read }: Working): Sessions => ({
  async open({ id, account, device, madeAt, seenAt, seenFrom, hasSecondFactor }, tokenHash) {
    const row: SessionRow = {
      id,
      token_hash: tokenHash,
      account,
      device,
      made_at: madeAt,
      seen_at: seenAt,
      seen_from: seenFrom,
      second_factor: hasSecondFactor ? 1 : 0,
    }
    await read((queries) => queries.insertInto('session').values(row).execute())
  },
  byToken: (tokenHash) =>
    read(async (queries) => {
      const row = await queries
        .selectFrom('session')
        .selectAll()
        .where('token_hash', '=', tokenHash)
        .executeTakeFirst()
      return row === undefined ? null : sessionFrom(row)
    }),
  async touch(id, at, from) {
    await read((queries) =>
      queries
        .updateTable('session')
        .set({ seen_at: at.toISOString(), seen_from: from })
        .where('id', '=', id)
        .execute(),
    )
  },
  of: (account) =>
    read(async (queries) => {
      const rows = await queries
        .selectFrom('session')
        .selectAll()
        .where('account', '=', account)
        .orderBy('seen_at', 'desc')
        .execute()
      return rows.map(sessionFrom)
    }),
  end: (account, id) =>
    read(async (queries) => {
      const ended = await queries
        .deleteFrom('session')
        .where('id', '=', id)
        .where('account', '=', account)
        .executeTakeFirst()
      return ended.numDeletedRows === 1n
    }),
  async endAll(account, keep = '') {
    await read((queries) =>
      queries.deleteFrom('session').where('account', '=', account).where('id', '!=', keep).execute(),
    )
  },
  async forget({ seen, made }) {
    await read((queries) =>
      queries
        .deleteFrom('session')
        .where((each) =>
          each.or([each('seen_at', '<', seen.toISOString()), each('made_at', '<', made.toISOString())]),
        )
        .execute(),
    )
  },
})
