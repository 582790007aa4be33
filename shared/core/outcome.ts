/** What the user can mend is data: a code, where it sits, what was given, what would do. Sentences are made in text/. */
export type IssueCode =
  | 'required'
  | 'unknown-key'
  | 'wrong-type'
  | 'unknown-choice'
  | 'not-a-quantity'
  | 'unknown-unit'
  | 'wrong-dimension'
  | 'comma-in-number'
  | 'too-long'
  | 'out-of-range'
  | 'ask'
  | 'not-finite'
  | 'not-json'
  | 'unknown-relation'
  | 'not-available'
  | 'inputs-conflict'
  | 'no-convergence'
  | 'pipe-does-not-pass'
  | 'stretch-outside-line'
  | 'no-operating-point'
  | 'no-ground-here'
  | 'body-too-large'
  | 'damaged-file'
  | 'two-kinds-of-file'

export type Candidate = { readonly value: string; readonly means: string }

export type Issue = {
  readonly path: string
  readonly code: IssueCode
  readonly given?: string
  readonly accepted?: string
  readonly candidates?: readonly Candidate[]
  /** Numbers and names the sentence needs; SI. */
  readonly values?: Readonly<Record<string, number | string>>
}

export type Outcome<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly issues: readonly Issue[] }

export const done = <Value>(value: Value): Outcome<Value> => ({ ok: true, value })
export const refused = (
  ...issues: readonly Issue[]
): { readonly ok: false; readonly issues: readonly Issue[] } => ({
  ok: false,
  issues,
})

/** Ours to mend, never the user's: thrown, and never caught to carry on. */
export class PreconditionError extends Error {
  override readonly name = 'PreconditionError'
}

export function requireFinite(name: string, value: number): void {
  if (!Number.isFinite(value)) throw new PreconditionError(`${name} must be finite, got ${value}`)
}

export function requirePositive(name: string, value: number): void {
  requireFinite(name, value)
  if (value <= 0) throw new PreconditionError(`${name} must be above zero, got ${value}`)
}

export function requireNotNegative(name: string, value: number): void {
  requireFinite(name, value)
  if (value < 0) throw new PreconditionError(`${name} must not be negative, got ${value}`)
}
