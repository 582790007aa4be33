import type { Kysely } from 'kysely'
import type { Tables } from './tables.ts'

export type DatabaseKind = 'sqlite' | 'postgres'

/** A database that is open: the same query layer over either kind, and what only its own kind knows. */
export type Database = {
  readonly kind: DatabaseKind
  readonly queries: Kysely<Tables>
  /** What a person calls it: the file, or the address without its password. */
  readonly place: string
  /** The driver's own errors as the store's; anything else is a bug and passes through. */
  readonly worldError: (error: unknown) => unknown
}
