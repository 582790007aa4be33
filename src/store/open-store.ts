import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { type Access, createAccess } from './access/access.ts'
import { type Contents, createContents } from './contents.ts'
import type { Database } from './database.ts'
import { createDocumentStore } from './document-store.ts'
import { migrate } from './migrate.ts'
import type { Store } from './noun.ts'
import { type NamedDocument, NOUN_PATHS, NOUNS, type NounPath } from './nouns.ts'
import { openPostgres } from './postgres.ts'
import { openSqlite } from './sqlite.ts'
import { StoreError } from './store-error.ts'

export type Stores = Readonly<Record<NounPath, Store<NamedDocument>>> & {
  readonly contents: Contents
  readonly access: Access
}
export type OpenStore = Stores & { close(): Promise<void> }

/** Where a store is: in a folder of this machine, or, once DATABASE_URL says so, in a PostgreSQL database. */
export type StorePlace = { readonly dataFolder: string; readonly databaseUrl: string | null }

export const storeFile = (dataFolder: string): string => join(dataFolder, 'underlane.sqlite')

/** The database of a place, brought up to date; the embedded one is made when absent. */
export async function openDatabase({ dataFolder, databaseUrl }: StorePlace): Promise<Database> {
  if (databaseUrl === null) {
    try {
      // A folder that was there already is its owner's to open to others; the file in it never is.
      mkdirSync(dataFolder, { recursive: true, mode: 0o700 })
    } catch (error) {
      throw new StoreError('cannot-write-folder', dataFolder, error)
    }
  }
  const database =
    databaseUrl === null ? await openSqlite(storeFile(dataFolder)) : await openPostgres(databaseUrl)
  try {
    await migrate(database)
    return database
  } catch (error) {
    await database.queries.destroy()
    throw database.worldError(error)
  }
}

export function storesOf(database: Database): Stores {
  const stores = NOUN_PATHS.map((path) => [path, createDocumentStore(database, NOUNS[path])] as const)
  const byPath = Object.fromEntries(stores) as Record<NounPath, Store<NamedDocument>>
  return { ...byPath, contents: createContents(database), access: createAccess(database) }
}

/** The stores of one data folder or database. */
export async function openStore(dataFolder: string, databaseUrl: string | null = null): Promise<OpenStore> {
  const database = await openDatabase({ dataFolder, databaseUrl })
  return { ...storesOf(database), close: () => database.queries.destroy() }
}
