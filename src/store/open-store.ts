import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { CROSSING, type CrossingDocument } from './crossing-noun.ts'
import { createDocumentStore } from './document-store.ts'
import { migrate } from './migrate.ts'
import type { Store } from './noun.ts'
import { openSqlite, storeErrorFrom } from './sqlite.ts'
import { StoreError } from './store-error.ts'

export type Stores = { readonly crossings: Store<CrossingDocument> }
export type OpenStore = Stores & { close(): Promise<void> }

/** The stores of one data folder, made and brought up to date when needed. */
export async function openStore(dataFolder: string): Promise<OpenStore> {
  try {
    mkdirSync(dataFolder, { recursive: true })
  } catch (error) {
    throw new StoreError('cannot-write-folder', dataFolder, error)
  }
  const file = join(dataFolder, 'underlane.sqlite')
  const database = await openSqlite(file)
  try {
    await migrate(database, file)
  } catch (error) {
    await database.destroy()
    throw error
  }
  return {
    crossings: createDocumentStore(database, CROSSING, (error) => storeErrorFrom(error, file)),
    close: () => database.destroy(),
  }
}
