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
  readonly noun: string
  readonly id: string
  readonly version: number
  readonly action: RevisionAction
  readonly who: string
  readonly acted_at: string
  readonly acted_from: string
  readonly request_key: string | null
  /** As it was from then on; null when it was removed. */
  readonly document: string | null
}

/** `noun` stands for the table of whichever noun a store is for: they all look alike. */
export type Tables = {
  readonly noun: FixedColumns
  readonly revision: RevisionRow
}
