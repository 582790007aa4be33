import type { Issue } from '../../shared/core/outcome.ts'
import type { RevisionAction } from './tables.ts'

/** Who did something, when, from where, and under which key they may send it again. */
export type Act = {
  readonly who: string
  readonly at: Date
  readonly from: string
  readonly requestKey: string | null
}

/** What the engine made of a document when it was saved, kept as made. */
export type Made = {
  readonly engine: string
  readonly inputSha256: string
  /** A word a list can show. */
  readonly status: string
  /** null when nothing could be made; `issues` then says why. */
  readonly result: unknown
  readonly issues: readonly Issue[]
}

/** What a list knows of a document. */
export type Listed<Document> = {
  readonly id: string
  /** Rises by one with each change; a change must name the version it was made from. */
  readonly version: number
  /** Of the document: 'underlane/crossing@1'. */
  readonly format: string
  readonly name: string
  readonly updatedAt: string
  /** null unless removed. */
  readonly deletedAt: string | null
  /** Came with the invented town, not from a user. */
  readonly demo: boolean
  /** The word of what was made of it, and by which engine; null while nothing has been. */
  readonly status: string | null
  readonly engine: string | null
  readonly document: Document
}

export type Stored<Document> = Listed<Document> & { readonly made: Made | null }

export type Revision<Document> = {
  readonly version: number
  readonly action: RevisionAction
  readonly who: string
  readonly at: string
  readonly from: string
  readonly requestKey: string | null
  /** null when it was removed. */
  readonly document: Document | null
}

export type Page<Item, Cursor = string> = {
  readonly items: readonly Item[]
  /** Give it as `after` for the next page; null when this was the last. */
  readonly next: Cursor | null
}

/** A page is asked for by the id it follows; ids are random, so the order means nothing but stays. */
export type PageRequest<Cursor = string> = { readonly after: Cursor | null; readonly limit: number }

export type ListRequest = PageRequest & {
  /** Only those that belong to this id: the quotes of a job, the logs of a crossing. */
  readonly belongsTo?: string | null
  /** Only those of this day, 2026-03-02. */
  readonly onDay?: string | null
  /** Those that were removed, instead of those that were not. */
  readonly removed?: boolean
}

/**
 * What came of a change. Only 'done' has written anything. 'same' was asked for before and is already so; 'conflict'
 * found something else than the asker had seen, and brings it along.
 */
export type Changed<Document> =
  | { readonly outcome: 'done' | 'same' | 'conflict'; readonly stored: Stored<Document> }
  | { readonly outcome: 'absent' | 'key-reused' | 'too-late' }

export type Entry<Document> = {
  readonly id: string
  readonly document: Document
  readonly made: Made | null
}

/** What a change is made from: optimistic, so nobody waits and nobody is overwritten. */
export type Expected = { readonly id: string; readonly expectedVersion: number }

export type Store<Document> = {
  /** One that is not removed. */
  find(id: string): Promise<Stored<Document> | null>
  list(page: ListRequest): Promise<Page<Listed<Document>>>
  /** Oldest first, removals and restorings too; empty for an id never used. */
  history(id: string, page: PageRequest<number>): Promise<Page<Revision<Document>, number>>
  insert(entry: Entry<Document> & { readonly demo: boolean }, act: Act): Promise<Changed<Document>>
  replace(entry: Entry<Document> & Expected, act: Act): Promise<Changed<Document>>
  /** Can be undone for a while. */
  remove(what: Expected, act: Act): Promise<Changed<Document>>
  restore(what: Expected, act: Act): Promise<Changed<Document>>
}

/** What tells one noun from another. */
export type Noun<Document> = {
  readonly table: string
  readonly format: string
  readonly nameOf: (document: Document) => string
  /** What it is listed by besides its id. */
  readonly keysOf: (document: Document) => {
    readonly belongsTo: string | null
    readonly onDay: string | null
  }
  /** Reads a document back out of its stored text; throws when it is not one, for then the store is damaged. */
  readonly read: (document: unknown) => Document
  /** From an older format to the next one, by the older's name: documents are brought up to date when they are read. */
  readonly upgrades: Readonly<Record<string, { readonly format: string; readonly upgrade: Upgrade }>>
}

export type Upgrade = (older: unknown) => unknown
