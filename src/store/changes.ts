import type { Transaction } from 'kysely'
import { canonicalJson } from '../../shared/contracts/canonical-json.ts'
import type { Act, Changed, Entry, Expected, Noun, Stored } from './noun.ts'
import { recordRevision, revisionByKey } from './revisions.ts'
import { revisionFrom, STORED, savedColumns, storedFrom } from './rows.ts'
import type { RevisionAction, Tables } from './tables.ts'

/** A removal can be undone for so long. */
const UNDO_DAYS = 30
const DAY_MS = 24 * 60 * 60 * 1000

/** A change holds the writer's lock from its start: what it reads stays so until it ends. */
export type ChangeContext<Document> = {
  readonly transaction: Transaction<Tables>
  readonly noun: Noun<Document>
  readonly act: Act
}

/** To the query builder every noun's table is the same one; its name is known only here. */
export const tableOf = (noun: { readonly table: string }) => noun.table as 'noun'

async function rowOf<Document>(
  { transaction, noun }: ChangeContext<Document>,
  id: string,
): Promise<Stored<Document> | null> {
  const row = await transaction
    .selectFrom(tableOf(noun))
    .select(STORED)
    .where('id', '=', id)
    .executeTakeFirst()
  return row === undefined ? null : storedFrom(row, noun)
}

const sameDocument = (before: unknown, document: unknown): boolean =>
  before === null || document === null
    ? before === document
    : canonicalJson(before) === canonicalJson(document)

/** The change found something else than expected: because it was made before, or because somebody was faster. */
async function unmade<Document>(
  context: ChangeContext<Document>,
  id: string,
  action: RevisionAction,
  document: Document | null,
): Promise<Changed<Document>> {
  const { transaction, noun, act } = context
  const stored = await rowOf(context, id)
  if (stored === null) return { outcome: 'absent' }
  const before = await revisionByKey(transaction, noun.table, id, act.requestKey)
  if (before === undefined) return { outcome: 'conflict', stored }
  const isRepeated =
    before.action === action &&
    (action === 'restore' || sameDocument(revisionFrom(before, noun).document, document))
  return isRepeated ? { outcome: 'same', stored } : { outcome: 'key-reused' }
}

/** The change is made: its line of history, and what is there now. */
async function made<Document>(
  context: ChangeContext<Document>,
  id: string,
  action: RevisionAction,
): Promise<Changed<Document>> {
  const { transaction, noun, act } = context
  const stored = await rowOf(context, id)
  if (stored === null) return { outcome: 'absent' }
  const document = action === 'remove' ? null : JSON.stringify(stored.document)
  const { version, format } = stored
  await recordRevision(transaction, { noun: noun.table, id, version, format, action, document }, act)
  return { outcome: 'done', stored }
}

/** A taken id keeps what it has; the same document again is answered as if it had just been put there. */
export async function insertOne<Document>(
  context: ChangeContext<Document>,
  entry: Entry<Document> & { readonly demo: boolean },
): Promise<Changed<Document>> {
  const { transaction, noun, act } = context
  const { id, document, demo } = entry
  const written = await transaction
    .insertInto(tableOf(noun))
    .values({
      id,
      version: 1,
      deleted_at: null,
      demo: demo ? 1 : 0,
      ...savedColumns(document, entry.made, noun, act),
    })
    .onConflict((conflict) => conflict.column('id').doNothing())
    .executeTakeFirst()
  if (written.numInsertedOrUpdatedRows !== 0n) return made(context, id, 'insert')
  const found = await rowOf(context, id)
  const isThere = found !== null && found.deletedAt === null
  if (isThere && canonicalJson(found.document) === canonicalJson(document)) {
    return { outcome: 'same', stored: found }
  }
  return unmade(context, id, 'insert', document)
}

/** Replaces only the version the asker has seen. */
export async function replaceOne<Document>(
  context: ChangeContext<Document>,
  entry: Entry<Document> & Expected,
): Promise<Changed<Document>> {
  const { transaction, noun, act } = context
  const written = await transaction
    .updateTable(tableOf(noun))
    .set({ version: entry.expectedVersion + 1, ...savedColumns(entry.document, entry.made, noun, act) })
    .where('id', '=', entry.id)
    .where('version', '=', entry.expectedVersion)
    .where('deleted_at', 'is', null)
    .executeTakeFirst()
  return written.numUpdatedRows === 0n
    ? unmade(context, entry.id, 'replace', entry.document)
    : made(context, entry.id, 'replace')
}

export async function removeOne<Document>(
  context: ChangeContext<Document>,
  { id, expectedVersion }: Expected,
): Promise<Changed<Document>> {
  const { transaction, noun, act } = context
  const at = act.at.toISOString()
  const written = await transaction
    .updateTable(tableOf(noun))
    .set({ version: expectedVersion + 1, deleted_at: at, updated_at: at })
    .where('id', '=', id)
    .where('version', '=', expectedVersion)
    .where('deleted_at', 'is', null)
    .executeTakeFirst()
  return written.numUpdatedRows === 0n ? unmade(context, id, 'remove', null) : made(context, id, 'remove')
}

/** Takes a removal back, within the days that is possible. */
export async function restoreOne<Document>(
  context: ChangeContext<Document>,
  { id, expectedVersion }: Expected,
): Promise<Changed<Document>> {
  const { transaction, noun, act } = context
  const earliest = new Date(act.at.getTime() - UNDO_DAYS * DAY_MS).toISOString()
  const written = await transaction
    .updateTable(tableOf(noun))
    .set({ version: expectedVersion + 1, deleted_at: null, updated_at: act.at.toISOString() })
    .where('id', '=', id)
    .where('version', '=', expectedVersion)
    .where('deleted_at', '>=', earliest)
    .executeTakeFirst()
  if (written.numUpdatedRows !== 0n) return made(context, id, 'restore')
  const changed = await unmade(context, id, 'restore', null)
  const isLate =
    changed.outcome === 'conflict' && changed.stored.deletedAt !== null && changed.stored.deletedAt < earliest
  return isLate ? { outcome: 'too-late' } : changed
}
