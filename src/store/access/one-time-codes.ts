import type { CodePurpose } from './access-tables.ts'
import type { Working } from './working.ts'

export type OneTimeCode = {
  readonly purpose: CodePurpose
  /** Whose password it sets; null while the first owner has no account yet. */
  readonly account: string | null
  readonly expiresAt: string
}

export type OneTimeCodes = {
  /** Takes the place of an earlier one for the same. */
  put(code: OneTimeCode, codeHash: string): Promise<void>
  find(codeHash: string): Promise<OneTimeCode | null>
  /** True once. */
  take(codeHash: string): Promise<boolean>
}

export const createOneTimeCodes = ({ read, change }: Working): OneTimeCodes => ({
  put: ({ purpose, account, expiresAt }, codeHash) =>
    change(async (transaction) => {
      const former = transaction.deleteFrom('one_time_code')
      await (account === null
        ? former.where('purpose', '=', purpose).where('account', 'is', null)
        : former.where('account', '=', account)
      ).execute()
      await transaction
        .insertInto('one_time_code')
        .values({ id: codeHash, purpose, account, expires_at: expiresAt })
        .execute()
    }),
  find: (codeHash) =>
    read(async (queries) => {
      const row = await queries
        .selectFrom('one_time_code')
        .selectAll()
        .where('id', '=', codeHash)
        .executeTakeFirst()
      return row === undefined
        ? null
        : { purpose: row.purpose, account: row.account, expiresAt: row.expires_at }
    }),
  take: (codeHash) =>
    read(async (queries) => {
      const taken = await queries.deleteFrom('one_time_code').where('id', '=', codeHash).executeTakeFirst()
      return taken.numDeletedRows === 1n
    }),
})
