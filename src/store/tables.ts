import type { AccessTables } from './access/access-tables.ts'

/** The columns every noun's table has; no SQL looks inside a text of `document`, `result` or `issues`. */
export type FixedColumns = {
  readonly id: string
  readonly version: number
  readonly format: string
  /** What a list calls it. */
  readonly name: string
  readonly updated_at: string
  readonly deleted_at: string | null
  readonly demo: number
  readonly document: string
  /** Key columns a noun may be listed by: the id of what it belongs to, and a day (2026-03-02). */
  readonly belongs_to: string | null
  readonly on_day: string | null
  /** What the engine made of the document when it was saved; all null while it has made nothing. */
  readonly engine: string | null
  readonly input_sha256: string | null
  readonly status: string | null
  readonly result: string | null
  readonly issues: string | null
}

export type RevisionAction = 'insert' | 'replace' | 'remove' | 'restore'

/** History, audit, undo and idempotency in one: written once, and the database refuses to change it. */
export type RevisionRow = {
  /** Place in the one chain all nouns share: 1, 2, 3, without a gap. */
  readonly seq: number
  readonly noun: string
  readonly id: string
  readonly version: number
  readonly format: string
  readonly action: RevisionAction
  readonly who: string
  readonly acted_at: string
  readonly acted_from: string
  readonly request_key: string | null
  /** As it was from then on; null when it was removed. */
  readonly document: string | null
  /** Over this line and the hash of the one before. */
  readonly hash: string
}

/** The bytes an attachment speaks of, known by their hash; as text, for that is the same in both databases. */
export type ContentRow = {
  readonly sha256: string
  readonly byte_count: number
  readonly base64: string
}

/** `noun` stands for the table of whichever noun a store is for: they all look alike. */
export type Tables = AccessTables & {
  readonly noun: FixedColumns
  readonly revision: RevisionRow
  readonly content: ContentRow
}
