import { readFile } from 'node:fs/promises'
import { resolve } from 'node:path'
import { done, type Outcome, refused } from '../../shared/core/outcome.ts'
import type { Io } from './io.ts'

const READING_FAILS: Readonly<Record<string, string>> = {
  ENOENT: 'a file that exists',
  EISDIR: 'a file, not a folder',
  EACCES: 'a file that may be read',
  ENOTDIR: 'a file that exists',
}

async function readFileOrStdin(file: string, io: Io): Promise<Outcome<string>> {
  if (file === '-') return done(await io.readStdin())
  try {
    return done(await readFile(resolve(io.workingFolder, file), 'utf8'))
  } catch (error) {
    const accepted = error instanceof Error && 'code' in error ? READING_FAILS[String(error.code)] : undefined
    if (accepted === undefined) throw error
    return refused({ path: '', code: 'not-available', given: file, accepted })
  }
}

function parseJson(text: string): Outcome<unknown> {
  try {
    // Editors on some systems put a mark before the first character.
    const value: unknown = JSON.parse(text.replace(/^\uFEFF/, ''))
    return done(value)
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error
    return refused({ path: '', code: 'not-json', given: error.message.slice(0, 120), accepted: 'JSON' })
  }
}

/** A JSON file, or standard input for `-`. */
export async function readJsonFile(file: string, io: Io): Promise<Outcome<unknown>> {
  const text = await readFileOrStdin(file, io)
  return text.ok ? parseJson(text.value) : text
}
