import type { Issue } from '../../shared/core/outcome.ts'
import type { Language } from '../../shared/text/language.ts'
import { issuesWithText } from '../issues-with-text.ts'
import { EXIT, type ExitCode } from './exit-codes.ts'
import type { Io } from './io.ts'

export const printJson = (io: Io, document: unknown): void => io.out(`${JSON.stringify(document, null, 2)}\n`)

/** Refusals are sentences for the person and, asked for JSON, one document for the script. */
export function answerRefusal(
  io: Io,
  issues: readonly Issue[],
  options: { readonly json: boolean; readonly language: Language; readonly exit?: ExitCode },
): ExitCode {
  const answered = issuesWithText(issues, options.language)
  for (const { path, text, candidates } of answered) {
    io.err(path === '' || text.includes(path) ? `${text}\n` : `${path}: ${text}\n`)
    for (const { value, means } of candidates ?? []) io.err(`  ${value}  ${means}\n`)
  }
  if (options.json) printJson(io, { schema: 'underlane/refusal@1', issues: answered })
  return options.exit ?? EXIT.refused
}

/** Rows of text as columns of equal width; the last column is left ragged. */
export function columns(rows: readonly (readonly string[])[]): string {
  const widths: number[] = []
  for (const row of rows)
    for (const [at, cell] of row.entries()) widths[at] = Math.max(widths[at] ?? 0, cell.length)
  const line = (row: readonly string[]) =>
    row.map((cell, at) => (at === row.length - 1 ? cell : cell.padEnd(widths[at] ?? 0))).join('  ')
  return rows.map((row) => `${line(row).trimEnd()}\n`).join('')
}
