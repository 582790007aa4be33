// Is something built older than what it was built from?
import { readdirSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { ROOT } from './project.mjs'

/** What each built thing is made from. A folder's own time counts too: it moves when a file is removed. */
export const SOURCES = {
  program: ['src', 'shared', 'package.json', 'package-lock.json', 'tsconfig.json'],
  web: ['web', 'shared', 'package.json', 'package-lock.json', 'tsconfig.json'],
}

function newestTime(path) {
  const about = statSync(path, { throwIfNoEntry: false })
  if (about === undefined) return 0
  if (!about.isDirectory()) return about.mtimeMs
  let newest = about.mtimeMs
  for (const name of readdirSync(path)) newest = Math.max(newest, newestTime(join(path, name)))
  return newest
}

/** True when `output` is missing or older than the newest of `sources` (paths from the project's root). */
export function isStale(output, sources) {
  const built = statSync(join(ROOT, output), { throwIfNoEntry: false })
  if (built === undefined) return true
  return sources.some((source) => newestTime(join(ROOT, source)) > built.mtimeMs)
}
