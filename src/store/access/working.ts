import type { Kysely, Transaction } from 'kysely'
import type { Database } from '../database.ts'
import type { Act } from '../noun.ts'
import { recordRevision } from '../revisions.ts'
import type { RevisionAction, Tables } from '../tables.ts'
import { ACCESS_FORMATS } from './access-tables.ts'

/** How the stores of this folder read and change: errors of the world as the store's, a change in one transaction. */
export type Working = {
  read<Answer>(work: (queries: Kysely<Tables>) => Promise<Answer>): Promise<Answer>
  change<Answer>(work: (transaction: Transaction<Tables>) => Promise<Answer>): Promise<Answer>
}

export function workingOn({ queries, worldError }: Database): Working {
  const guarded = <Answer>(work: Promise<Answer>): Promise<Answer> =>
    work.catch((error: unknown) => {
      throw worldError(error)
    })
  return {
    read: (work) => guarded(work(queries)),
    change: (work) => guarded(queries.transaction().execute(work)),
  }
}

/** A line of the one history about who may come in: what was done, and never a secret. */
export function recordAccess(
  transaction: Transaction<Tables>,
  line: {
    readonly noun: keyof typeof ACCESS_FORMATS
    readonly id: string
    readonly version: number
    readonly action: RevisionAction
    readonly document: Readonly<Record<string, unknown>>
  },
  act: Act,
): Promise<void> {
  const { noun, document } = line
  const format = ACCESS_FORMATS[noun]
  return recordRevision(transaction, { ...line, format, document: JSON.stringify(document) }, act)
}
