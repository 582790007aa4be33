import { z } from 'zod'
import type { Issue, Outcome } from '../core/outcome.ts'
import { nearestWord } from '../quantities/nearest-word.ts'
import { printable } from './quantity-field.ts'

/** More than this many problems at once help nobody. */
const MOST_ISSUES = 50

type RawIssue = z.core.$ZodIssue

/** Follows a path through wrappers to the keys the object there knows. */
function keysAt(schema: z.core.$ZodType, path: readonly PropertyKey[]): readonly string[] {
  let at: z.core.$ZodType | undefined = unwrap(schema)
  for (const step of path) {
    if (at instanceof z.ZodObject) at = unwrap((at.shape as Record<string, z.core.$ZodType>)[String(step)])
    else if (at instanceof z.ZodArray) at = unwrap(at.element)
    else return []
  }
  return at instanceof z.ZodObject ? Object.keys(at.shape) : []
}

function unwrap(schema: z.core.$ZodType | undefined): z.core.$ZodType | undefined {
  let at = schema
  for (let depth = 0; depth < 12; depth++) {
    if (at instanceof z.ZodOptional || at instanceof z.ZodNullable || at instanceof z.ZodDefault)
      at = at.unwrap()
    else if (at instanceof z.ZodPipe) at = at.in
    else break
  }
  return at
}

function valueAt(root: unknown, path: readonly PropertyKey[]): unknown {
  let at: unknown = root
  for (const step of path) {
    if (at === null || typeof at !== 'object') return undefined
    at = (at as Record<PropertyKey, unknown>)[step]
  }
  return at
}

const pathText = (path: readonly PropertyKey[]): string => path.map(String).join('.')

function ofOne(raw: RawIssue, schema: z.core.$ZodType, given: unknown): Issue[] {
  const path = pathText(raw.path)
  if (raw.code === 'custom' && raw.params && 'issue' in raw.params) {
    return [{ path, ...(raw.params.issue as Omit<Issue, 'path'>) }]
  }
  if (raw.code === 'unrecognized_keys') {
    const known = keysAt(schema, raw.path)
    return raw.keys.map((key) => {
      const nearest = nearestWord(key, known)
      return {
        path: path === '' ? key : `${path}.${key}`,
        code: 'unknown-key' as const,
        given: key,
        accepted: known.join(', '),
        ...(nearest === null ? {} : { candidates: [{ value: nearest, means: 'the nearest known key' }] }),
      }
    })
  }
  const value = valueAt(given, raw.path)
  if (value === undefined) return [{ path, code: 'required' }]
  if (raw.code === 'too_big' || raw.code === 'too_small') {
    const max = raw.code === 'too_big' ? { max: Number(raw.maximum) } : { min: Number(raw.minimum) }
    const long = typeof value === 'string' && raw.code === 'too_big'
    return [{ path, code: long ? 'too-long' : 'out-of-range', given: printable(value), values: { ...max } }]
  }
  if (raw.code === 'invalid_value') {
    return [
      { path, code: 'unknown-choice', given: printable(value), accepted: raw.values.map(String).join(', ') },
    ]
  }
  if (raw.code === 'invalid_type') {
    return [{ path, code: 'wrong-type', given: printable(value), accepted: raw.expected }]
  }
  const isDay = raw.code === 'invalid_format' && raw.format === 'date'
  const accepted = isDay ? 'a day such as 2026-03-02' : raw.message
  return [{ path, code: 'wrong-type', given: printable(value), accepted }]
}

/** Parses with a schema; every problem comes back as one of our issues, at most 50, and nothing is thrown. */
export function parseWith<Schema extends z.ZodType>(
  schema: Schema,
  given: unknown,
): Outcome<z.output<Schema>> {
  const parsed = schema.safeParse(given)
  if (parsed.success) return { ok: true, value: parsed.data }
  const issues = parsed.error.issues.flatMap((raw) => ofOne(raw, schema, given))
  return { ok: false, issues: issues.slice(0, MOST_ISSUES) }
}
