import { mkdirSync, readdirSync, rmSync, statfsSync, statSync } from 'node:fs'
import { join } from 'node:path'
import type { Database } from '../database.ts'
import { BackupError } from './backup-error.ts'
import { copiesToKeep } from './copies-to-keep.ts'
import { writeBackup } from './write-backup.ts'

const COPY = /^underlane-(\d{4}-\d\d-\d\d)\.tar\.gz$/
/** What a copy that was cut off by a power cut leaves behind. */
const CUT_OFF = /^\.underlane-.*\.part/
const CUT_OFF_AFTER_MS = 24 * 60 * 60 * 1000

/** A copy is first unpacked beside: room for several times the last one, so that the store keeps room to write. */
const ROOM_FOR_COPIES = 10

export type CopyPlace = {
  /** A connection of its own, so that nobody waits for the copy. */
  readonly open: () => Promise<Database>
  /** Where the copies are, one a day. */
  readonly folder: string
}

const dayOf = (at: Date): string => at.toISOString().slice(0, 10)
const copyName = (day: string): string => `underlane-${day}.tar.gz`

function daysThere(folder: string): readonly string[] {
  return readdirSync(folder)
    .map((name) => COPY.exec(name)?.[1])
    .filter((day) => day !== undefined)
    .sort()
}

function hasRoom(folder: string, lastDay: string | undefined): boolean {
  if (lastDay === undefined) return true
  const { bavail, bsize } = statfsSync(folder)
  return bavail * bsize >= ROOM_FOR_COPIES * statSync(join(folder, copyName(lastDay))).size
}

function tidy(folder: string, now: Date): void {
  const days = daysThere(folder)
  const kept = copiesToKeep(days)
  for (const day of days) if (!kept.has(day)) rmSync(join(folder, copyName(day)), { force: true })
  for (const name of readdirSync(folder)) {
    const isOld = now.getTime() - statSync(join(folder, name)).mtimeMs > CUT_OFF_AFTER_MS
    if (CUT_OFF.test(name) && isOld) rmSync(join(folder, name), { recursive: true, force: true })
  }
}

/**
 * Makes today's copy when there is none yet, and only then takes away those that are no longer kept. The file that was
 * made, or null when today has one. Days are counted in UTC, whatever the clock on the wall says.
 */
export async function makeDailyCopy({ open, folder }: CopyPlace, now: Date): Promise<string | null> {
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 })
    const days = daysThere(folder)
    if (days.includes(dayOf(now))) return null
    if (!hasRoom(folder, days.at(-1))) throw new BackupError('no-room', folder, null)
  } catch (error) {
    throw error instanceof BackupError ? error : new BackupError('cannot-write', folder, error)
  }
  const file = join(folder, copyName(dayOf(now)))
  const database = await open()
  try {
    await writeBackup(database, file, now)
  } finally {
    await database.queries.destroy()
  }
  tidy(folder, now)
  return file
}
