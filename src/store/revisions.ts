import type { Transaction } from 'kysely'
import type { Act } from './noun.ts'
import type { RevisionRow, Tables } from './tables.ts'

type Change = Pick<RevisionRow, 'noun' | 'id' | 'version' | 'action' | 'document'>

/** Thrown to undo a change whose key was used for another one before; caught where the transaction ends. */
export class KeyReused extends Error {
  override readonly name = 'KeyReused'
}

/** The change that was made under a key, if there was one. */
export async function revisionByKey(
  transaction: Transaction<Tables>,
  noun: string,
  id: string,
  requestKey: string | null,
): Promise<RevisionRow | undefined> {
  if (requestKey === null) return undefined
  return transaction
    .selectFrom('revision')
    .selectAll()
    .where('noun', '=', noun)
    .where('id', '=', id)
    .where('request_key', '=', requestKey)
    .executeTakeFirst()
}

/** Adds a line to the history, inside the transaction that makes the change. */
export async function recordRevision(
  transaction: Transaction<Tables>,
  change: Change,
  act: Act,
): Promise<void> {
  if (await revisionByKey(transaction, change.noun, change.id, act.requestKey)) throw new KeyReused()
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
