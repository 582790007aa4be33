import type { Transaction } from 'kysely'
import { CHAIN_START, revisionHash } from './chain.ts'
import type { Act } from './noun.ts'
import type { RevisionRow, Tables } from './tables.ts'

type Change = Pick<RevisionRow, 'noun' | 'id' | 'version' | 'format' | 'action' | 'document'>

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
  // Nobody else writes until this transaction ends, so the last line stays the last.
  const last = await transaction
    .selectFrom('revision')
    .select(['seq', 'hash'])
    .orderBy('seq', 'desc')
    .limit(1)
    .executeTakeFirst()
  const line = {
    ...change,
    seq: (last?.seq ?? 0) + 1,
    who: act.who,
    acted_at: act.at.toISOString(),
    acted_from: act.from,
    request_key: act.requestKey,
  }
  const hash = revisionHash(last?.hash ?? CHAIN_START, line)
  await transaction
    .insertInto('revision')
    .values({ ...line, hash })
    .execute()
}
