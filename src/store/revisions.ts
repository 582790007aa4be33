import type { Kysely } from 'kysely'
import type { Act } from './noun.ts'
import type { RevisionRow, Tables } from './tables.ts'

type Change = Pick<RevisionRow, 'noun' | 'id' | 'version' | 'document'>

/** Adds a line to the history, inside the transaction that makes the change. */
export async function recordRevision(transaction: Kysely<Tables>, change: Change, act: Act): Promise<void> {
  await transaction
    .insertInto('revision')
    .values({
      ...change,
      who: act.who,
      acted_at: act.at.toISOString(),
      acted_from: act.from,
      request_key: act.requestKey,
    })
    .execute()
}
