import { createHash } from 'node:crypto'
import {
  createReadStream,
  createWriteStream,
  existsSync,
  mkdirSync,
  mkdtempSync,
  renameSync,
  rmSync,
} from 'node:fs'
import { type FileHandle, open } from 'node:fs/promises'
import { basename, dirname, join } from 'node:path'
import { Readable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import { createGzip } from 'node:zlib'
import type { Transaction } from 'kysely'
import { ENGINE_VERSION } from '../../../shared/core/engine-version.ts'
import { CHAIN_START } from '../chain.ts'
import { tableOf } from '../changes.ts'
import type { Database } from '../database.ts'
import { MIGRATION_NAMES } from '../migrate.ts'
import type { Tables } from '../tables.ts'
import { BackupError } from './backup-error.ts'
import {
  ACCESS_FILES_OF_BACKUP,
  contentName,
  type Manifest,
  type ManifestFile,
  NOUN_COLUMNS,
  NOUN_FILES_OF_BACKUP,
  REVISION_COLUMNS,
  REVISION_FILE,
} from './backup-tables.ts'
import { TAR_END, tarHeader, tarPadding } from './tar.ts'

const AT_ONCE = 500
/** Attachments are long: fetched one at a time. */
const CONTENT_AT_ONCE = 1

type Page<Row> = (after: string | number) => Promise<readonly Row[]>

/** The rows of a table, page after page. */
export async function* rowsOf<Row>(
  page: Page<Row>,
  keyOf: (row: Row) => string | number,
  start: string | number,
  atOnce: number,
): AsyncGenerator<Row> {
  for (let after = start; ; ) {
    const rows = await page(after)
    yield* rows
    const last = rows.at(-1)
    if (last === undefined || rows.length < atOnce) return
    after = keyOf(last)
  }
}

/** Writes one file into the folder and counts what it wrote. */
async function spool(
  folder: string,
  name: string,
  pieces: AsyncIterable<Buffer>,
  countRows: boolean,
): Promise<ManifestFile> {
  const hash = createHash('sha256')
  let rows = 0
  let byteCount = 0
  let file: FileHandle | null = null
  try {
    file = await open(join(folder, name), 'wx')
    for await (const piece of pieces) {
      hash.update(piece)
      byteCount += piece.length
      rows += 1
      await file.write(piece)
    }
  } finally {
    await file?.close()
  }
  return { name, rows: countRows ? rows : null, byteCount, sha256: hash.digest('hex') }
}

/** Two signs JSON leaves as they are end a line for many readers of lines. */
const oneLine = (row: unknown): string =>
  JSON.stringify(row).replaceAll('\u2028', '\\u2028').replaceAll('\u2029', '\\u2029')

async function* jsonLines(rows: AsyncIterable<unknown>): AsyncGenerator<Buffer> {
  for await (const row of rows) yield Buffer.from(`${oneLine(row)}\n`)
}

async function spoolTables(transaction: Transaction<Tables>, folder: string): Promise<ManifestFile[]> {
  const files: ManifestFile[] = []
  for (const { name, noun } of NOUN_FILES_OF_BACKUP) {
    const page = (after: string | number) =>
      transaction
        .selectFrom(tableOf(noun))
        .select([...NOUN_COLUMNS])
        .where('id', '>', String(after))
        .orderBy('id')
        .limit(AT_ONCE)
        .execute()
    files.push(await spool(folder, name, jsonLines(rowsOf(page, (row) => row.id, '', AT_ONCE)), true))
  }
  for (const { name, table } of ACCESS_FILES_OF_BACKUP) {
    const page = (after: string | number) =>
      transaction
        .selectFrom(table)
        .selectAll()
        .where('id', '>', String(after))
        .orderBy('id')
        .limit(AT_ONCE)
        .execute()
    files.push(await spool(folder, name, jsonLines(rowsOf(page, (row) => row.id, '', AT_ONCE)), true))
  }
  const lines = (after: string | number) =>
    transaction
      .selectFrom('revision')
      .select([...REVISION_COLUMNS])
      .where('seq', '>', Number(after))
      .orderBy('seq')
      .limit(AT_ONCE)
      .execute()
  files.push(await spool(folder, REVISION_FILE, jsonLines(rowsOf(lines, (row) => row.seq, 0, AT_ONCE)), true))
  return files
}

async function spoolContents(transaction: Transaction<Tables>, folder: string): Promise<ManifestFile[]> {
  const page = (after: string | number) =>
    transaction
      .selectFrom('content')
      .selectAll()
      .where('sha256', '>', String(after))
      .orderBy('sha256')
      .limit(CONTENT_AT_ONCE)
      .execute()
  const files: ManifestFile[] = []
  mkdirSync(join(folder, 'attachments'))
  for await (const row of rowsOf(page, (each) => each.sha256, '', CONTENT_AT_ONCE)) {
    const bytes = Readable.from([Buffer.from(row.base64, 'base64')])
    files.push(await spool(folder, contentName(row), bytes, false))
  }
  return files
}

/** Everything there is at one moment; whoever writes meanwhile is not kept waiting, and comes into the next backup. */
function spoolAll(database: Database, folder: string, madeAt: Date): Promise<Manifest> {
  return database.queries
    .transaction()
    .setAccessMode('read only')
    .execute(async (transaction) => {
      const files = [
        ...(await spoolTables(transaction, folder)),
        ...(await spoolContents(transaction, folder)),
      ]
      const last = await transaction
        .selectFrom('revision')
        .select(['seq', 'hash'])
        .orderBy('seq', 'desc')
        .limit(1)
        .executeTakeFirst()
      return {
        schema: 'underlane/backup@1',
        engine: ENGINE_VERSION,
        migration: MIGRATION_NAMES.at(-1) ?? '',
        madeAt: madeAt.toISOString(),
        from: database.kind,
        history: { lines: last?.seq ?? 0, lastHash: last?.hash ?? CHAIN_START },
        files,
      }
    })
}

async function* archive(folder: string, manifest: Manifest): AsyncGenerator<Buffer> {
  const first = Buffer.from(`${JSON.stringify(manifest, null, 2)}\n`)
  yield tarHeader('manifest.json', first.length)
  yield first
  yield tarPadding(first.length)
  for (const { name, byteCount } of manifest.files) {
    yield tarHeader(name, byteCount)
    for await (const piece of createReadStream(join(folder, name))) yield Buffer.from(piece)
    yield tarPadding(byteCount)
  }
  yield TAR_END
}

async function packed(folder: string, manifest: Manifest, file: string): Promise<void> {
  await pipeline(
    Readable.from(archive(folder, manifest)),
    createGzip(),
    // Prices and customers: for whoever made it, and nobody else.
    createWriteStream(file, { flags: 'wx', flush: true, mode: 0o600 }),
  )
}

/** The file system's refusal, not the database's. */
export const isFileError = (error: unknown): boolean =>
  error instanceof Error && 'syscall' in error && 'errno' in error && !('port' in error)

/** One file with everything in it, whole or not there: it gets its name last. An older file of that name is replaced. */
export async function writeBackup(database: Database, file: string, madeAt: Date): Promise<Manifest> {
  let folder: string | null = null
  const part = join(dirname(file), `.${basename(file)}.${process.pid}.part`)
  try {
    if (existsSync(part)) rmSync(part, { force: true })
    folder = mkdtempSync(`${part}-`)
    const manifest = await spoolAll(database, folder, madeAt)
    await packed(folder, manifest, part)
    renameSync(part, file)
    return manifest
  } catch (error) {
    if (existsSync(part)) rmSync(part, { force: true })
    throw isFileError(error) ? new BackupError('cannot-write', file, error) : database.worldError(error)
  } finally {
    if (folder !== null) rmSync(folder, { recursive: true, force: true })
  }
}
