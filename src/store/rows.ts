import { z } from 'zod'
import type { Issue, IssueCode } from '../../shared/core/outcome.ts'
import type { Act, Listed, Made, Noun, Revision, Stored } from './noun.ts'
import { StoreError } from './store-error.ts'
import type { FixedColumns, RevisionRow } from './tables.ts'

/** A list leaves the results where they are: they are far longer than the documents. */
export const LISTED = [
  'id',
  'version',
  'format',
  'name',
  'updated_at',
  'deleted_at',
  'demo',
  'document',
  'engine',
  'status',
] as const
export const STORED = [...LISTED, 'input_sha256', 'result', 'issues'] as const

type ListedRow = Pick<FixedColumns, (typeof LISTED)[number]>
type StoredRow = Pick<FixedColumns, (typeof STORED)[number]>

const candidate = z.object({ value: z.string(), means: z.string() })
const issues: z.ZodType<Issue[]> = z.array(
  z.object({
    path: z.string(),
    // A code of an engine that is no more still opens; its sentence falls back on the code.
    code: z.custom<IssueCode>((code) => typeof code === 'string'),
    given: z.exactOptional(z.string()),
    accepted: z.exactOptional(z.string()),
    candidates: z.exactOptional(z.array(candidate)),
    values: z.exactOptional(z.record(z.string(), z.union([z.number(), z.string()]))),
  }),
)

/** A stored text as a document of today, by way of every format between. */
export function documentFrom<Document>(text: string, format: string, noun: Noun<Document>): Document {
  let document: unknown = JSON.parse(text)
  let at = format
  for (let left = Object.keys(noun.upgrades).length; at !== noun.format; left--) {
    const step = noun.upgrades[at]
    if (step === undefined || left <= 0) throw new StoreError('made-by-a-newer-version', noun.table, at)
    document = step.upgrade(document)
    at = step.format
  }
  return noun.read(document)
}

export const listedFrom = <Document>(row: ListedRow, noun: Noun<Document>): Listed<Document> => ({
  id: row.id,
  version: row.version,
  format: noun.format,
  name: row.name,
  updatedAt: row.updated_at,
  deletedAt: row.deleted_at,
  demo: row.demo === 1,
  status: row.status,
  engine: row.engine,
  document: documentFrom(row.document, row.format, noun),
})

function madeFrom(row: StoredRow): Made | null {
  const { engine, input_sha256: inputSha256, status, result } = row
  if (engine === null || inputSha256 === null || status === null) return null
  return {
    engine,
    inputSha256,
    status,
    result: result === null ? null : JSON.parse(result),
    issues: issues.parse(JSON.parse(row.issues ?? '[]')),
  }
}

export const storedFrom = <Document>(row: StoredRow, noun: Noun<Document>): Stored<Document> => ({
  ...listedFrom(row, noun),
  made: madeFrom(row),
})

export const revisionFrom = <Document>(row: RevisionRow, noun: Noun<Document>): Revision<Document> => ({
  version: row.version,
  action: row.action,
  who: row.who,
  at: row.acted_at,
  from: row.acted_from,
  requestKey: row.request_key,
  document: row.document === null ? null : documentFrom(row.document, row.format, noun),
})

/** What a save writes, new or over what was there. */
export const savedColumns = <Document>(
  document: Document,
  made: Made | null,
  noun: Noun<Document>,
  act: Act,
) => ({
  format: noun.format,
  // PostgreSQL keeps no NUL in a text of its own; the document's is escaped.
  name: noun.nameOf(document).replaceAll('\0', ''),
  belongs_to: noun.keysOf(document).belongsTo,
  on_day: noun.keysOf(document).onDay,
  updated_at: act.at.toISOString(),
  document: JSON.stringify(document),
  engine: made?.engine ?? null,
  input_sha256: made?.inputSha256 ?? null,
  status: made?.status ?? null,
  result: made === null || made.result === null ? null : JSON.stringify(made.result),
  issues: made === null ? null : JSON.stringify(made.issues),
})
