import { z } from 'zod'
import { ACCESS_TABLES, CARRIED_TABLES, type CarriedTable } from '../access/access-tables.ts'
import { NOUN_PATHS, NOUNS } from '../nouns.ts'
import type { ContentRow, FixedColumns, RevisionRow } from '../tables.ts'

/**
 * The rows of a backup, one JSON object a line, the same from either database. A migration that adds a column gives it
 * here the value that older backups mean by leaving it out.
 */

const text = z.string()
const textOrNull = z.string().nullable()
const whole = z.number().int()

export const nounRow = z.strictObject({
  id: text,
  version: whole,
  format: text,
  name: text,
  updated_at: text,
  deleted_at: textOrNull,
  demo: whole,
  document: text,
  belongs_to: textOrNull,
  on_day: textOrNull,
  engine: textOrNull,
  input_sha256: textOrNull,
  status: textOrNull,
  result: textOrNull,
  issues: textOrNull,
}) satisfies z.ZodType<FixedColumns>

export const revisionRow = z.strictObject({
  seq: whole,
  noun: text,
  id: text,
  version: whole,
  format: text,
  action: z.enum(['insert', 'replace', 'remove', 'restore']),
  who: text,
  acted_at: text,
  acted_from: text,
  request_key: textOrNull,
  document: textOrNull,
  hash: text,
}) satisfies z.ZodType<RevisionRow>

export const NOUN_COLUMNS = Object.keys(nounRow.shape) as readonly (keyof FixedColumns)[]
export const REVISION_COLUMNS = Object.keys(revisionRow.shape) as readonly (keyof RevisionRow)[]

export const REVISION_FILE = 'revision.jsonl'
const CONTENT = /^attachments\/([0-9a-f]{64})$/

export const NOUN_FILES_OF_BACKUP = NOUN_PATHS.map(
  (path) => ({ name: `${NOUNS[path].table}.jsonl`, noun: NOUNS[path] }) as const,
)

/** Who may come in; a backup from before there were accounts has none of them. */
export const ACCESS_FILES_OF_BACKUP: readonly {
  readonly name: string
  readonly table: CarriedTable
  readonly row: z.ZodObject
}[] = CARRIED_TABLES.map((table) => ({ name: `${table}.jsonl`, table, row: ACCESS_TABLES[table] }))
export const FIRST_WITH_ACCOUNTS = '0005-accounts'

export const contentName = ({ sha256 }: Pick<ContentRow, 'sha256'>): string => `attachments/${sha256}`
export const contentHash = (name: string): string | null => CONTENT.exec(name)?.[1] ?? null

const sha256 = z.string().regex(/^[0-9a-f]{64}$/)

/** What stands first in a backup: what else is in it, how much, and under which hash. */
export const manifestSchema = z.strictObject({
  schema: z.literal('underlane/backup@1'),
  engine: text,
  /** The store's version, by its last migration. */
  migration: text,
  madeAt: text,
  from: z.enum(['sqlite', 'postgres']),
  history: z.strictObject({ lines: whole, lastHash: sha256 }),
  files: z.array(
    z.strictObject({
      name: text,
      /** Lines of a table; null for an attachment. */
      rows: whole.nullable(),
      byteCount: whole,
      sha256,
    }),
  ),
})
export type Manifest = z.infer<typeof manifestSchema>
export type ManifestFile = Manifest['files'][number]
