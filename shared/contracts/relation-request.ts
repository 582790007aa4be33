import { readCivil } from '../core/digsafe/civil.ts'
import {
  type Candidate,
  done,
  type Issue,
  type Outcome,
  PreconditionError,
  refused,
} from '../core/outcome.ts'
import type { AnyRelation, ChoiceField, CivilField, InputField, QuantityField } from '../core/relation.ts'
import { propertyName } from '../core/relation.ts'
import { type RangeNote, rangeNotes } from '../core/trace.ts'
import { nearestWord } from '../quantities/nearest-word.ts'
import { type ParseOptions, parseQuantity } from '../quantities/parse-quantity.ts'
import { shortened } from '../quantities/plain-notation.ts'
import { acceptedUnits } from '../quantities/quantity-refusals.ts'
import { CIVIL_NOTATION, civilInZone, hasOffset } from './civil-text.ts'
import {
  bad,
  LIST_NOTATION,
  MOST_ISSUES,
  POSITION_NOTATION,
  pairsNotation,
  type Read,
  readList,
  readPairs,
  readPosition,
} from './relation-many-values.ts'

export type RelationInputs = {
  /** SI, by the name with its unit tail. */
  readonly inputs: Readonly<Record<string, unknown>>
  /** What was not given, as it would be typed. */
  readonly defaulted: readonly string[]
}
export type RelationResult = RelationInputs & {
  readonly id: string
  readonly outputs: Readonly<Record<string, number | string | null>>
  readonly notes: readonly RangeNote[]
  readonly sources: AnyRelation['sources']
}

/** Free words may carry a list of readings, each a pair. */
const LONGEST_WORD = 4000

/** What a person typed for a relation, name by name, into SI inputs; every problem at once. */
export function parseRelationRequest(
  relation: AnyRelation,
  given: Readonly<Record<string, unknown>>,
  options: ParseOptions = {},
): Outcome<RelationInputs> {
  const issues: Issue[] = unknownKeys(relation, given)
  const inputs: Record<string, unknown> = {}
  const defaulted: string[] = []
  for (const [key, field] of Object.entries<InputField>(relation.inputs)) {
    const value = Object.hasOwn(given, key) ? given[key] : undefined
    const fallback = 'default' in field ? field.default : undefined
    if (value === undefined && fallback !== undefined) {
      inputs[propertyName(key, field)] = fallback
      defaulted.push(key)
      continue
    }
    const read = value === undefined ? bad(missing(key, field)) : readField(key, field, value, given, options)
    if ('issues' in read) issues.push(...read.issues)
    else inputs[propertyName(key, field)] = read.value
  }
  return issues.length > 0 ? refused(...issues.slice(0, MOST_ISSUES)) : done({ inputs, defaulted })
}

/** Reads the request and works the relation out; a case without an answer is a refusal, never an exception. */
export function evaluateRelation(
  relation: AnyRelation,
  given: Readonly<Record<string, unknown>>,
  options: ParseOptions = {},
): Outcome<RelationResult> {
  const request = parseRelationRequest(relation, given, options)
  if (!request.ok) return request
  const { inputs, defaulted } = request.value
  const found = workedOut(relation, inputs)
  if (!found.ok) return found
  const { outputs, notes } = found.value
  const issues = Object.entries(relation.outputs).flatMap(([key, field]): Issue[] => {
    const name = propertyName(key, field)
    const value = outputs[name]
    const isNone = value === null && 'orNull' in field && field.orNull === true
    const fine = isNone || ('kind' in field ? Number.isFinite(value) : typeof value === 'string')
    return fine
      ? []
      : [{ path: name, code: 'no-convergence', given: String(value), values: { output: name } }]
  })
  if (issues.length > 0) return refused(...issues)
  return done({ id: relation.id, inputs, outputs, defaulted, notes, sources: relation.sources })
}

function workedOut(
  relation: AnyRelation,
  inputs: Readonly<Record<string, unknown>>,
): Outcome<Pick<RelationResult, 'outputs' | 'notes'>> {
  try {
    const notes = rangeNotes(relation.inputs, inputs)
    /** The inputs were built from this very relation's declaration, which is what `fn` asks for. */
    return done({ outputs: relation.fn(inputs as never), notes })
  } catch (error) {
    if (!(error instanceof PreconditionError)) throw error
    return refused({
      path: '',
      code: 'out-of-range',
      values: { relation: relation.id, detail: error.message },
    })
  }
}

function unknownKeys(relation: AnyRelation, given: Readonly<Record<string, unknown>>): Issue[] {
  const known = Object.keys(relation.inputs)
  return Object.keys(given)
    .filter((key) => !known.includes(key))
    .slice(0, MOST_ISSUES)
    .map((key) => ({
      path: shortened(key),
      code: 'unknown-key',
      given: shortened(key),
      accepted: known.join(', '),
      ...nearest(key, known),
    }))
}

function nearest(word: string, known: readonly string[]): { readonly candidates?: readonly Candidate[] } {
  const near = nearestWord(word, known)
  return near === null ? {} : { candidates: [{ value: near, means: near }] }
}

const missing = (key: string, field: InputField): Issue => ({
  path: key,
  code: 'required',
  accepted: accepted(field),
})

function accepted(field: InputField): string {
  if ('kind' in field) return acceptedUnits(field.kind)
  if ('choices' in field) return field.choices.join(', ')
  if ('list' in field) return LIST_NOTATION
  if ('civil' in field) return CIVIL_NOTATION
  if ('pairs' in field) return pairsNotation(field)
  return 'position' in field ? POSITION_NOTATION : field.words
}

function readField(
  key: string,
  field: InputField,
  value: unknown,
  given: Readonly<Record<string, unknown>>,
  options: ParseOptions,
): Read {
  if ('kind' in field) return readQuantity(key, field, value, options)
  if ('choices' in field) return readChoice(key, field, value)
  if ('list' in field) return readList(key, value)
  if ('pairs' in field) return readPairs(key, field, value, options)
  if ('position' in field) return readPosition(key, value)
  if ('civil' in field) return readCivilField(key, field, value, given)
  return readWord(key, field.words, value)
}

function readQuantity(key: string, field: QuantityField, value: unknown, options: ParseOptions): Read {
  const parsed = parseQuantity(value, field.kind, options)
  if (!parsed.ok) return bad({ path: key, ...parsed.issue })
  const { hardMin, hardMax } = field.range ?? {}
  const low = hardMin !== undefined && parsed.valueSi < hardMin
  const high = hardMax !== undefined && parsed.valueSi > hardMax
  if (!low && !high) return { value: parsed.valueSi }
  const values = {
    kind: field.kind,
    ...(hardMin === undefined ? {} : { min: hardMin }),
    ...(hardMax === undefined ? {} : { max: hardMax }),
  }
  return bad({ path: key, code: 'out-of-range', given: shortened(value), values })
}

function readChoice(key: string, field: ChoiceField, value: unknown): Read {
  // Grades and methods are typed in any case: PE4710 is pe4710.
  const wanted = typeof value === 'string' ? value.trim().toLowerCase() : null
  const found = field.choices.find((choice) => choice.toLowerCase() === wanted)
  if (found !== undefined) return { value: found }
  const near = typeof value === 'string' ? nearest(value, field.choices) : {}
  const code = typeof value === 'string' ? 'unknown-choice' : 'wrong-type'
  return bad({ path: key, code, given: shortened(value), accepted: accepted(field), ...near })
}

/** A moment with its offset is read in the zone named beside it; without a zone it is asked about, never guessed. */
function readCivilField(
  key: string,
  field: CivilField,
  value: unknown,
  given: Readonly<Record<string, unknown>>,
): Read {
  if (typeof value !== 'string') {
    return bad({ path: key, code: 'wrong-type', given: shortened(value), accepted: CIVIL_NOTATION })
  }
  const text = value.trim()
  if (readCivil(text) !== null) return { value: text }
  const zone = field.zoneIn === undefined ? undefined : given[field.zoneIn]
  if (field.zoneIn !== undefined && hasOffset(text)) {
    const local = typeof zone === 'string' ? civilInZone(text, zone.trim()) : null
    if (local !== null) return { value: local }
    return bad({
      path: key,
      code: 'ask',
      given: shortened(text),
      accepted: 'the time on the clock there, or a zone as well: zone=America/New_York',
    })
  }
  return bad({ path: key, code: 'wrong-type', given: shortened(text), accepted: CIVIL_NOTATION })
}

function readWord(key: string, words: string, value: unknown): Read {
  const text = typeof value === 'number' ? String(value) : value
  if (typeof text !== 'string')
    return bad({ path: key, code: 'wrong-type', given: shortened(value), accepted: words })
  if (text.length > LONGEST_WORD) {
    return bad({
      path: key,
      code: 'too-long',
      given: shortened(text),
      values: { characters: text.length, most: LONGEST_WORD },
    })
  }
  return { value: text.trim() }
}
