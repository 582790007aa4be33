import { createHash } from 'node:crypto'
import { createReadStream, mkdirSync, mkdtempSync, rmSync, statSync } from 'node:fs'
import { open } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import { pipeline } from 'node:stream/promises'
import { createGunzip } from 'node:zlib'
import type { z } from 'zod'
import { ACCESS_FORMATS } from '../access/access-tables.ts'
import { CHAIN_START, type ChainEnd, followChain, isBroken } from '../chain.ts'
import { MIGRATION_NAMES } from '../migrate.ts'
import { documentFrom } from '../rows.ts'
import { StoreError } from '../store-error.ts'
import { BackupError, type BackupErrorCode } from './backup-error.ts'
import {
  ACCESS_FILES_OF_BACKUP,
  contentHash,
  FIRST_WITH_ACCOUNTS,
  type Manifest,
  type ManifestFile,
  manifestSchema,
  NOUN_FILES_OF_BACKUP,
  nounRow,
  REVISION_FILE,
  revisionRow,
} from './backup-tables.ts'
import { readTar, type TarEntry, TarError } from './tar.ts'

/** A backup that has been looked through to its last byte, unpacked beside. */
export type ReadBackup = {
  readonly manifest: Manifest
  readonly folder: string
  /** Takes the unpacked files away. */
  close(): void
}

/** Says what is wrong without yet knowing the file's name. */
class Wrong extends Error {
  readonly code: BackupErrorCode
  constructor(code: BackupErrorCode, what: string) {
    super(what)
    this.code = code
  }
}

/** How our own gzip files begin: no name, no time. Everything after is under its checksum. */
const GZIP = Buffer.from([0x1f, 0x8b, 0x08, 0, 0, 0, 0, 0])
const LONGEST_MANIFEST = 64 * 1024 * 1024

const TABLE_NAMES = [...NOUN_FILES_OF_BACKUP, ...ACCESS_FILES_OF_BACKUP]
  .map((each) => each.name)
  .concat(REVISION_FILE)

async function requireGzip(file: string): Promise<void> {
  const handle = await open(file, 'r')
  try {
    const start = Buffer.alloc(GZIP.length)
    const { bytesRead } = await handle.read(start, 0, start.length, 0)
    if (bytesRead < 2 || !start.subarray(0, 2).equals(GZIP.subarray(0, 2)))
      throw new Wrong('foreign', 'no gzip')
    if (!start.equals(GZIP)) throw new Wrong('damaged', 'another gzip header')
  } finally {
    await handle.close()
  }
}

/** The file's own checksum, to its last byte: what is in it is only looked at once it is what was written. */
async function requireWhole(file: string): Promise<void> {
  const gunzip = createGunzip()
  await pipeline(createReadStream(file), gunzip, async (chunks: AsyncIterable<Buffer>) => {
    for await (const _ of chunks);
  })
  if (gunzip.bytesWritten !== statSync(file).size) throw new TarError('something after the end')
}

async function readManifest({ name, size, body }: TarEntry): Promise<Manifest> {
  if (name !== 'manifest.json' || size > LONGEST_MANIFEST) throw new Wrong('foreign', 'no manifest')
  const pieces: Buffer[] = []
  for await (const piece of body) pieces.push(piece)
  let given: unknown
  try {
    given = JSON.parse(Buffer.concat(pieces).toString('utf8'))
  } catch (error) {
    // Named as ours and no JSON: ours, and spoilt on the way.
    throw new Wrong('damaged', String(error))
  }
  const schema = given !== null && typeof given === 'object' && 'schema' in given ? String(given.schema) : ''
  if (!schema.startsWith('underlane/backup@')) throw new Wrong('foreign', 'another manifest')
  if (schema !== 'underlane/backup@1') throw new Wrong('newer', schema)
  const parsed = manifestSchema.safeParse(given)
  if (!parsed.success) throw new Wrong('damaged', parsed.error.message)
  if (!MIGRATION_NAMES.includes(parsed.data.migration)) throw new Wrong('newer', parsed.data.migration)
  return parsed.data
}

async function unpack({ name, size, body }: TarEntry, said: ManifestFile, folder: string): Promise<void> {
  const hash = createHash('sha256')
  const file = await open(join(folder, name), 'wx')
  try {
    for await (const piece of body) {
      hash.update(piece)
      await file.write(piece)
    }
  } finally {
    await file.close()
  }
  const found = hash.digest('hex')
  if (size !== said.byteCount || found !== said.sha256) throw new Wrong('damaged', name)
  const content = contentHash(name)
  if (content !== null && content !== found) throw new Wrong('damaged', name)
}

async function unpackAll(chunks: AsyncIterable<Buffer>, folder: string): Promise<Manifest> {
  let manifest: Manifest | null = null
  const wanted = new Map<string, ManifestFile>()
  for await (const entry of readTar(chunks)) {
    if (manifest === null) {
      manifest = await readManifest(entry)
      for (const each of manifest.files) wanted.set(each.name, each)
      continue
    }
    const said = wanted.get(entry.name)
    const isOurs = TABLE_NAMES.includes(entry.name) || contentHash(entry.name) !== null
    if (said === undefined || !isOurs) throw new Wrong('damaged', `${entry.name} is not in the manifest`)
    wanted.delete(entry.name)
    await unpack(entry, said, folder)
  }
  if (manifest === null) throw new Wrong('foreign', 'empty')
  const [left] = wanted.keys()
  if (left !== undefined) throw new Wrong('damaged', `${left} is missing`)
  return manifest
}

/** The rows of a table in a backup that has been unpacked. */
export async function* backupRows<Schema extends z.ZodType>(
  folder: string,
  name: string,
  schema: Schema,
): AsyncGenerator<z.output<Schema>> {
  const lines = createInterface({
    input: createReadStream(join(folder, name)),
    crlfDelay: Number.POSITIVE_INFINITY,
  })
  for await (const line of lines) yield schema.parse(JSON.parse(line))
}

/** The tables a backup has of who may come in: all, or none where it is older than they are. */
export const accessFilesOf = ({ migration }: Manifest) =>
  migration < FIRST_WITH_ACCOUNTS ? [] : ACCESS_FILES_OF_BACKUP

/** A line about who may come in has a format of its own, and nothing of ours reads its document back. */
const isAboutAccess = ({ noun, format }: { readonly noun: string; readonly format: string }): boolean =>
  Object.entries(ACCESS_FORMATS).some(([name, known]) => name === noun && known === format)

/** Reads every row as it will be read in use: a hash tells that it is what was written, not that it can be opened. */
async function readEveryRow(folder: string, manifest: Manifest): Promise<void> {
  const rowsSaid = new Map(manifest.files.map(({ name, rows }) => [name, rows]))
  const requireCount = (name: string, rows: number) => {
    if (rowsSaid.get(name) !== rows) throw new Wrong('damaged', `${name} has ${rows} rows`)
  }
  const readers = new Map(NOUN_FILES_OF_BACKUP.map(({ noun }) => [noun.table, noun]))
  for (const { name, noun } of NOUN_FILES_OF_BACKUP) {
    let rows = 0
    for await (const row of backupRows(folder, name, nounRow)) {
      documentFrom(row.document, row.format, noun)
      rows += 1
    }
    requireCount(name, rows)
  }
  for (const { name, row } of accessFilesOf(manifest)) {
    let rows = 0
    for await (const _ of backupRows(folder, name, row)) rows += 1
    requireCount(name, rows)
  }
  let end: ChainEnd = { seq: 0, hash: CHAIN_START }
  for await (const line of backupRows(folder, REVISION_FILE, revisionRow)) {
    const noun = readers.get(line.noun)
    if (noun === undefined && !isAboutAccess(line)) throw new Wrong('newer', line.noun)
    if (noun !== undefined && line.document !== null) documentFrom(line.document, line.format, noun)
    const followed = followChain(end, line)
    if (isBroken(followed)) throw new Wrong('damaged', `line ${line.seq} of the history`)
    end = followed
  }
  requireCount(REVISION_FILE, end.seq)
  const { lines, lastHash } = manifest.history
  if (end.seq !== lines || end.hash !== lastHash) throw new Wrong('damaged', 'the end of the history')
}

/** A file that cannot be read, or bytes that are not what was written: which of the two, and how bad. */
function codeFor(error: unknown): BackupErrorCode {
  if (error instanceof Wrong) return error.code
  if (error instanceof StoreError && error.code === 'made-by-a-newer-version') return 'newer'
  const isFileError = error instanceof Error && 'syscall' in error
  return isFileError ? 'cannot-read' : 'damaged'
}

const isNoRoom = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && (error.code === 'ENOSPC' || error.code === 'EDQUOT')

/** Looks a backup through before anything is changed; throws a BackupError unless it is whole and ours. */
export async function readBackup(file: string): Promise<ReadBackup> {
  let folder: string | null = null
  try {
    await requireGzip(file)
    await requireWhole(file)
    const unpacked = mkdtempSync(join(tmpdir(), 'underlane-restore-'))
    folder = unpacked
    mkdirSync(join(unpacked, 'attachments'))
    const gunzip = createGunzip()
    // Both are waited for, also when one fails: what is taken away below must not still be written to.
    const [read, taken] = await Promise.allSettled([
      pipeline(createReadStream(file), gunzip),
      unpackAll(gunzip, unpacked).catch((error: unknown) => {
        gunzip.destroy()
        throw error
      }),
    ])
    if (taken.status === 'rejected') throw taken.reason
    if (read.status === 'rejected') throw read.reason
    const manifest = taken.value
    await readEveryRow(unpacked, manifest)
    return { manifest, folder: unpacked, close: () => rmSync(unpacked, { recursive: true, force: true }) }
  } catch (error) {
    if (folder !== null) rmSync(folder, { recursive: true, force: true })
    // It is unpacked elsewhere before anything is changed, and there may be no room there.
    if (isNoRoom(error)) throw new BackupError('no-room-to-unpack', tmpdir(), error)
    throw new BackupError(codeFor(error), file, error)
  }
}
