import { canonicalJson } from '../../shared/contracts/canonical-json.ts'
import { type BrokenLine, CHAIN_START, type ChainEnd, followChain, isBroken } from './chain.ts'
import { tableOf } from './changes.ts'
import type { Database } from './database.ts'
import { NOUN_PATHS, NOUNS } from './nouns.ts'
import { documentFrom } from './rows.ts'

/** A document that is not the one its last line of history says. */
export type StrayDocument = {
  readonly noun: string
  readonly id: string
  readonly version: number
  readonly what: 'document-altered' | 'document-missing' | 'history-missing'
}

export type Verified = {
  /** How far the chain was followed and found whole. */
  readonly end: ChainEnd
  readonly broken: BrokenLine | StrayDocument | null
}

const AT_ONCE = 500

type Reading = Pick<Database, 'queries'>

async function followAll({ queries }: Reading): Promise<ChainEnd | BrokenLine> {
  let end: ChainEnd = { seq: 0, hash: CHAIN_START }
  for (;;) {
    const lines = await queries
      .selectFrom('revision')
      .selectAll()
      .where('seq', '>', end.seq)
      .orderBy('seq')
      .limit(AT_ONCE)
      .execute()
    for (const line of lines) {
      const followed = followChain(end, line)
      if (isBroken(followed)) return followed
      end = followed
    }
    if (lines.length < AT_ONCE) return end
  }
}

/** Every document against its last line: whoever goes round the program changes the one and forgets the other. */
async function strayIn(
  { queries }: Reading,
  path: (typeof NOUN_PATHS)[number],
): Promise<StrayDocument | null> {
  const noun = NOUNS[path]
  for (let after = ''; ; ) {
    const rows = await queries
      .selectFrom(tableOf(noun))
      .select(['id', 'version', 'format', 'document', 'deleted_at'])
      .where('id', '>', after)
      .orderBy('id')
      .limit(AT_ONCE)
      .execute()
    for (const { id, version, format, document, deleted_at } of rows) {
      const line = await queries
        .selectFrom('revision')
        .select(['version', 'format', 'document'])
        .where('noun', '=', noun.table)
        .where('id', '=', id)
        .orderBy('version', 'desc')
        .limit(1)
        .executeTakeFirst()
      if (line === undefined || line.version !== version) {
        return { noun: noun.table, id, version, what: 'history-missing' }
      }
      const written = line.document === null ? null : documentFrom(line.document, line.format, noun)
      const isSame =
        written === null
          ? deleted_at !== null
          : deleted_at === null &&
            canonicalJson(written) === canonicalJson(documentFrom(document, format, noun))
      if (!isSame) return { noun: noun.table, id, version, what: 'document-altered' }
      after = id
    }
    if (rows.length < AT_ONCE) return null
  }
}

/** A line of history whose document has gone: removals keep theirs, so nothing ever takes one away. */
async function missingOf(
  { queries }: Reading,
  path: (typeof NOUN_PATHS)[number],
): Promise<StrayDocument | null> {
  const noun = NOUNS[path]
  const line = await queries
    .selectFrom('revision')
    .select(['id', 'version'])
    .where('noun', '=', noun.table)
    .where('id', 'not in', queries.selectFrom(tableOf(noun)).select('id'))
    .orderBy('seq')
    .limit(1)
    .executeTakeFirst()
  return line === undefined ? null : { noun: noun.table, ...line, what: 'document-missing' }
}

/** Walks the whole history from its first line, then holds every document against it, all at one moment. */
export async function verifyHistory(database: Database): Promise<Verified> {
  const work = database.queries
    .transaction()
    .setAccessMode('read only')
    .execute(async (queries): Promise<Verified> => {
      const end = await followAll({ queries })
      if (isBroken(end)) return { end: { seq: end.seq - 1, hash: '' }, broken: end }
      for (const path of NOUN_PATHS) {
        const broken = (await missingOf({ queries }, path)) ?? (await strayIn({ queries }, path))
        if (broken !== null) return { end, broken }
      }
      return { end, broken: null }
    })
  return work.catch((error: unknown) => {
    throw database.worldError(error)
  })
}
