import { existsSync } from 'node:fs'
import { Option } from 'commander'
import { serverConfig } from '../config.ts'
import { projectRoot } from '../project-root.ts'
import type { Database } from '../store/database.ts'
import type { StorePlace } from '../store/open-store.ts'
import { EXIT, type ExitCode } from './exit-codes.ts'
import type { Io } from './io.ts'
import { UsageError } from './usage-error.ts'

export const dataOption = () =>
  new Option(
    '--data <folder>',
    'folder of the store; without it DATABASE_URL or UNDERLANE_DATA says where it is',
  )

/** Where the store is, as `serve` would find it. */
export function storePlace(options: { readonly data?: string }, io: Io): StorePlace {
  // Where it listens is no matter here.
  const listening = { PORT: '', UNDERLANE_HOST: '', UNDERLANE_NAMES: '', PUBLIC_URL: '', TRUST_PROXY: '' }
  const found = serverConfig(
    options,
    { ...io.environment, ...listening },
    { root: projectRoot(), working: io.workingFolder },
  )
  if (!found.ok) throw new UsageError(found.sentence)
  return found.config
}

/** Works on the store of a place; what a person can mend is said in one sentence. */
export async function withStore(
  place: StorePlace,
  io: Io,
  how: { readonly mustExist: boolean },
  work: (database: Database) => Promise<ExitCode>,
): Promise<ExitCode> {
  // Loaded only here: every other command starts without the databases' packages.
  const { openDatabase, storeFile } = await import('../store/open-store.ts')
  const { StoreError } = await import('../store/store-error.ts')
  const { storeSentence } = await import('../store/store-sentence.ts')
  if (how.mustExist && place.databaseUrl === null && !existsSync(storeFile(place.dataFolder))) {
    io.err(`There is no store in ${place.dataFolder}: say where it is with --data DIR.\n`)
    return EXIT.unfinished
  }
  try {
    const database = await openDatabase(place)
    try {
      return await work(database)
    } finally {
      await database.queries.destroy()
    }
  } catch (error) {
    if (!(error instanceof StoreError)) throw error
    io.err(`${storeSentence(error)}\n`)
    return EXIT.unfinished
  }
}

/** Says in one sentence what a person can mend about a file or folder. */
export async function withBackupErrors(io: Io, work: () => Promise<ExitCode>): Promise<ExitCode> {
  const { BackupError } = await import('../store/backup/backup-error.ts')
  try {
    return await work()
  } catch (error) {
    if (!(error instanceof BackupError)) throw error
    io.err(`${error.sentence}\n`)
    return EXIT.unfinished
  }
}
