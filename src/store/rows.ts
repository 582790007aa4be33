import { z } from 'zod'
import type { Issue, IssueCode } from '../../shared/core/outcome.ts'
import type { Act, Listed, Made, Noun, Revision, Stored } from './noun.ts'
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

export const listedFrom = <Document>(row: ListedRow, noun: Noun<Document>): Listed<Document> => ({
  id: row.id,
  version: row.version,
  format: row.format,
  name: row.name,
  updatedAt: row.updated_at,
  deletedAt: row.deleted_at,
  demo: row.demo === 1,
  status: row.status,
  engine: row.engine,
  document: noun.read(JSON.parse(row.document)),
})

function madeFrom(row: FixedColumns): Made | null {
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

export const storedFrom = <Document>(row: FixedColumns, noun: Noun<Document>): Stored<Document> => ({
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
  document: row.document === null ? null : noun.read(JSON.parse(row.document)),
})

/** What a save writes, new or over what was there. */
export const savedColumns = <Document>(
  document: Document,
  made: Made | null,
  noun: Noun<Document>,
  act: Act,
) => ({
  format: noun.format,
  name: noun.nameOf(document),
  updated_at: act.at.toISOString(),
  document: JSON.stringify(document),
  engine: made?.engine ?? null,
  input_sha256: made?.inputSha256 ?? null,
  status: made?.status ?? null,
  result: made === null || made.result === null ? null : JSON.stringify(made.result),
  issues: made === null ? null : JSON.stringify(made.issues),
})
