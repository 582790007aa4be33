/** Who did something, when, from where, and under which key they may send it again. */
export type Act = {
  readonly who: string
  readonly at: Date
  readonly from: string
  readonly requestKey: string | null
}

/** What the store keeps beside a document, whatever the document is. */
export type Stored<Document> = {
  readonly id: string
  /** Rises by one with each change; a change must name the version it was made from. */
  readonly version: number
  /** Of the document: 'underlane/crossing@1'. */
  readonly format: string
  readonly updatedAt: string
  /** Came with the invented town, not from a user. */
  readonly demo: boolean
  readonly document: Document
}

export type Page<Item> = {
  readonly items: readonly Item[]
  /** Give it as `after` for the next page; null when this was the last. */
  readonly next: string | null
}

/** A page is asked for by the id it follows; ids are random, so the order means nothing but stays. */
export type PageRequest = { readonly after: string | null; readonly limit: number }

export type Inserted<Document> = {
  /** 'present': the id was taken before, and what is there stays as it is. */
  readonly outcome: 'inserted' | 'present'
  readonly stored: Stored<Document>
}

export type Store<Document> = {
  find(id: string): Promise<Stored<Document> | null>
  list(page: PageRequest): Promise<Page<Stored<Document>>>
  insert(
    entry: { readonly id: string; readonly document: Document; readonly demo: boolean },
    act: Act,
  ): Promise<Inserted<Document>>
}

/** What tells one noun's table from another's. */
export type Noun<Document, Keys> = {
  readonly table: 'crossing'
  readonly format: string
  /** The few columns it is listed or found by. */
  readonly keys: (document: Document) => Keys
  /** Reads a document back out of its stored text; throws when it is not one, for then the store is damaged. */
  readonly read: (document: unknown) => Document
}
