/** The columns every noun's table has; no SQL looks inside `document`. */
export type FixedColumns = {
  readonly id: string
  readonly version: number
  readonly format: string
  readonly updated_at: string
  readonly deleted_at: string | null
  readonly demo: number
  readonly document: string
}

export type CrossingKeys = { readonly name: string }

/** History, audit, undo and idempotency in one: written once, never changed. */
export type RevisionRow = {
  readonly noun: string
  readonly id: string
  readonly version: number
  readonly who: string
  readonly acted_at: string
  readonly acted_from: string
  readonly request_key: string | null
  readonly document: string | null
}

export type Tables = {
  readonly crossing: FixedColumns & CrossingKeys
  readonly revision: RevisionRow
}
