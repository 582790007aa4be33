import { existsSync, mkdirSync, readdirSync, renameSync, rmdirSync, rmSync } from 'node:fs'
import { type FileHandle, open, writeFile } from 'node:fs/promises'
import { basename, dirname, join } from 'node:path'
import type { Transaction } from 'kysely'
import { attachmentFile } from '../../../shared/contracts/attachment.ts'
import { BackupError } from '../backup/backup-error.ts'
import { isFileError, rowsOf } from '../backup/write-backup.ts'
import { tableOf } from '../changes.ts'
import type { Database } from '../database.ts'
import { NOUN_PATHS, NOUNS, type NounPath } from '../nouns.ts'
import { documentFrom } from '../rows.ts'
import type { FixedColumns, RevisionRow, Tables } from '../tables.ts'
import { csvCell, fileName } from './file-names.ts'
import { READ_ME } from './read-me.ts'

const AT_ONCE = 100

const EXTENSIONS: Readonly<Record<string, string>> = {
  'image/jpeg': '.jpg',
  'image/png': '.png',
  'image/webp': '.webp',
  'application/pdf': '.pdf',
}

/** How many documents of each noun, and how many files of attachments. */
export type Exported = Readonly<Record<NounPath, number>> & { readonly files: number }

const INDEX_HEAD = 'noun,id,name,version,updated,removed,demo,file'

const asText = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`
/** For its owner's eyes, as a backup is. */
const writeNew = (file: string, data: string | Buffer) => writeFile(file, data, { flag: 'wx', mode: 0o600 })

class Export {
  readonly #transaction: Transaction<Tables>
  readonly #folder: string
  readonly #index: FileHandle
  files = 0
  constructor(transaction: Transaction<Tables>, folder: string, index: FileHandle) {
    this.#transaction = transaction
    this.#folder = folder
    this.#index = index
  }

  async #attachment(document: unknown, file: string): Promise<void> {
    const said = attachmentFile.safeParse(document).data
    if (said === undefined) return
    const row = await this.#transaction
      .selectFrom('content')
      .select('base64')
      .where('sha256', '=', said.sha256)
      .executeTakeFirst()
    if (row === undefined) return
    const extension = EXTENSIONS[said.mediaType] ?? '.bin'
    await writeNew(file.replace(/\.json$/, extension), Buffer.from(row.base64, 'base64'))
    this.files += 1
  }

  async #document(path: NounPath, row: FixedColumns): Promise<void> {
    const noun = NOUNS[path]
    const document = documentFrom(row.document, row.format, noun)
    const inFolder = row.deleted_at === null ? path : join('removed', path)
    const name = join(inFolder, fileName(row.name, row.id, '.json'))
    const file = join(this.#folder, name)
    mkdirSync(dirname(file), { recursive: true, mode: 0o700 })
    await writeNew(file, asText({ schema: noun.format, ...document }))
    if (row.result !== null)
      await writeNew(file.replace(/\.json$/, '.plan.json'), asText(JSON.parse(row.result)))
    if (path === 'attachments') await this.#attachment(document, file)
    const { id, version, updated_at, deleted_at, demo } = row
    const said = [path, id, row.name, version, updated_at, deleted_at ?? '', demo === 1 ? 'yes' : '', name]
    await this.#index.write(`${said.map((cell) => csvCell(String(cell))).join(',')}\r\n`)
  }

  async noun(path: NounPath): Promise<number> {
    const page = (after: string | number) =>
      this.#transaction
        .selectFrom(tableOf(NOUNS[path]))
        .selectAll()
        .where('id', '>', String(after))
        .orderBy('id')
        .limit(AT_ONCE)
        .execute()
    let count = 0
    for await (const row of rowsOf(page, (each) => each.id, '', AT_ONCE)) {
      await this.#document(path, row)
      count += 1
    }
    return count
  }

  async history(): Promise<void> {
    const tables = NOUN_PATHS.map((path) => NOUNS[path].table)
    const page = (after: string | number): Promise<readonly RevisionRow[]> =>
      this.#transaction
        .selectFrom('revision')
        .selectAll()
        .where('seq', '>', Number(after))
        .where('noun', 'in', tables)
        .orderBy('seq')
        .limit(AT_ONCE)
        .execute()
    const file = await open(join(this.#folder, 'history.jsonl'), 'wx', 0o600)
    try {
      for await (const row of rowsOf(page, (each) => each.seq, 0, AT_ONCE)) {
        const { request_key: _key, document, ...line } = row
        const plain = { ...line, document: document === null ? null : JSON.parse(document) }
        await file.write(`${JSON.stringify(plain)}\n`)
      }
    } finally {
      await file.close()
    }
  }
}

async function writeAll(transaction: Transaction<Tables>, folder: string): Promise<Exported> {
  const index = await open(join(folder, 'index.csv'), 'wx', 0o600)
  try {
    await index.write(`${INDEX_HEAD}\r\n`)
    const writing = new Export(transaction, folder, index)
    const counts: [NounPath, number][] = []
    for (const path of NOUN_PATHS) counts.push([path, await writing.noun(path)])
    await writing.history()
    await writeNew(join(folder, 'README.txt'), READ_ME)
    return { ...(Object.fromEntries(counts) as Record<NounPath, number>), files: writing.files }
  } finally {
    await index.close()
  }
}

/**
 * Everything the store keeps as files anybody can open, of one moment, in a new folder that gets its name last: whole or
 * not there.
 */
export async function writeExport(database: Database, folder: string): Promise<Exported> {
  const part = join(dirname(folder), `.${basename(folder)}.${process.pid}.part`)
  try {
    const isThere = existsSync(folder)
    if (isThere && readdirSync(folder).length > 0) throw new BackupError('folder-not-empty', folder, null)
    rmSync(part, { recursive: true, force: true })
    mkdirSync(part, { mode: 0o700 })
    const exported = await database.queries
      .transaction()
      .setAccessMode('read only')
      .execute((transaction) => writeAll(transaction, part))
    if (isThere) rmdirSync(folder)
    renameSync(part, folder)
    return exported
  } catch (error) {
    if (existsSync(part)) rmSync(part, { recursive: true, force: true })
    if (error instanceof BackupError) throw error
    throw isFileError(error) ? new BackupError('cannot-write', folder, error) : database.worldError(error)
  }
}
