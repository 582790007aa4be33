import type { Transaction } from 'kysely'
import type { Tables } from '../tables.ts'
import type { Working } from './working.ts'

export type Tries = { readonly failures: number; readonly lastAt: string }

/** Failed tries in a row, kept in the store so that several servers count together and a restart forgets none. */
export type FailedTries = {
  /**
   * Counts a try as failed before anybody knows, so that many at once are no way round the waiting; `waitOf` says from
   * what is known how long to wait instead. 0: counted, go on.
   */
  begin(
    keys: readonly string[],
    count: readonly string[],
    at: Date,
    waitOf: (tries: ReadonlyMap<string, Tries>) => number,
  ): Promise<number>
  add(keys: readonly string[], at: Date): Promise<void>
  clear(keys: readonly string[]): Promise<void>
  forget(before: Date): Promise<void>
}

async function addOne(transaction: Transaction<Tables>, key: string, at: Date): Promise<void> {
  const last_at = at.toISOString()
  await transaction
    .insertInto('failed_tries')
    .values({ id: key, failures: 1, last_at })
    .onConflict((conflict) =>
      conflict
        .column('id')
        .doUpdateSet((each) => ({ failures: each('failed_tries.failures', '+', 1), last_at })),
    )
    .execute()
}

export const createFailedTries = ({ read, change }: Working): FailedTries => ({
  begin: (keys, count, at, waitOf) =>
    change(async (transaction) => {
      const rows = await transaction.selectFrom('failed_tries').selectAll().where('id', 'in', keys).execute()
      const tries = rows.map((row) => [row.id, { failures: row.failures, lastAt: row.last_at }] as const)
      const wait = waitOf(new Map(tries))
      if (wait > 0) return wait
      for (const key of count) await addOne(transaction, key, at)
      return 0
    }),
  add: (keys, at) =>
    change(async (transaction) => {
      for (const key of keys) await addOne(transaction, key, at)
    }),
  async clear(keys) {
    await read((queries) => queries.deleteFrom('failed_tries').where('id', 'in', keys).execute())
  },
  async forget(before) {
    await read((queries) =>
      queries.deleteFrom('failed_tries').where('last_at', '<', before.toISOString()).execute(),
    )
  },
})
