import type { Kind } from '../core/kinds.ts'
import type { Candidate, Issue, IssueCode } from '../core/outcome.ts'
import { LIKELY_UNITS } from './kind-units.ts'
import { shortened } from './plain-notation.ts'
import type { Unit } from './units.ts'

/** An issue before the door that read the text says where it sat. */
export type PlacelessIssue = Omit<Issue, 'path'>

/** `reads` is the same length in feet, inches and fractions; `not` the reading it is often taken for. */
export type Echo = { readonly reads: string; readonly not: string | null }

export type ParsedQuantity =
  | { readonly ok: true; readonly valueSi: number; readonly echo?: Echo }
  | { readonly ok: false; readonly issue: PlacelessIssue }

/** The units a field of this kind takes, for the reader: 'ft, m'. */
export const acceptedUnits = (kind: Kind): string =>
  LIKELY_UNITS[kind].map((each) => (each === '' ? 'number' : each)).join(', ')

export function refuse(
  code: IssueCode,
  given: unknown,
  kind: Kind,
  more: { readonly candidates?: readonly Candidate[]; readonly values?: Issue['values'] } = {},
): { readonly ok: false; readonly issue: PlacelessIssue } {
  const { candidates, values } = more
  return {
    ok: false,
    issue: {
      code,
      given: shortened(given),
      accepted: acceptedUnits(kind),
      ...(candidates && candidates.length > 0 ? { candidates } : {}),
      ...(values ? { values } : {}),
    },
  }
}

/** Asks which of several units was meant. */
export const withUnits = (number: string, units: readonly string[]): readonly Candidate[] =>
  units.map((each) => ({ value: `${number} ${each}`.trim(), means: each === '' ? 'number' : each }))

export const unitIds = (units: readonly Unit[]): readonly string[] => units.map((each) => each.id)

/** `1,5 m` is 1.5 m to half the world and 15 m to a slip of the finger; `1,200` is one thousand two hundred. */
export function refuseComma(
  given: string,
  plain: string,
  kind: Kind,
): { readonly ok: false; readonly issue: PlacelessIssue } {
  const grouped = plain.replace(/(\d)\s*,\s*(?=\d)/g, '$1')
  const asPoint = plain.replace(/(\d)\s*,\s*(?=\d)/, '$1.')
  const candidates = [{ value: grouped, means: 'no comma' }]
  if (!/,|\..*\./.test(asPoint)) candidates.push({ value: asPoint, means: 'decimal point' })
  return refuse('comma-in-number', given, kind, { candidates })
}
