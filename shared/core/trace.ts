import type { SourceKey } from '../sources.ts'
import { PreconditionError } from './outcome.ts'
import type { Found, Given, InputField, Inputs, Outputs, Range, Relation } from './relation.ts'
import { propertyName } from './relation.ts'

/** Said beside a result when an input lies outside the range the relation was published for. */
export type RangeNote = {
  readonly code: 'outside-range'
  readonly input: string
  readonly value: number
  readonly min: number | null
  readonly max: number | null
}

export type Working = {
  readonly relation: string
  /** Which part of the plan asked: 'shot 1', 'stretch 2' … */
  readonly about: string
  readonly inputs: Readonly<Record<string, unknown>>
  readonly outputs: Readonly<Record<string, unknown>>
  readonly sources: readonly SourceKey[]
  readonly notes: readonly RangeNote[]
}

function rangeNote(name: string, value: number, range: Range): RangeNote | null {
  const low = range.min !== undefined && value < range.min
  const high = range.max !== undefined && value > range.max
  if (!low && !high) return null
  return { code: 'outside-range', input: name, value, min: range.min ?? null, max: range.max ?? null }
}

/** Range notes of one set of inputs; a value past a hard bound or not finite is our bug here: doors check before. */
export function rangeNotes(inputs: Inputs, given: Readonly<Record<string, unknown>>): RangeNote[] {
  const notes: RangeNote[] = []
  for (const [key, field] of Object.entries<InputField>(inputs)) {
    if (!('kind' in field)) continue
    const name = propertyName(key, field)
    const value = given[name]
    if (typeof value !== 'number' || !Number.isFinite(value)) {
      throw new PreconditionError(`${name} must be a finite number, got ${String(value)}`)
    }
    const range = field.range
    if (range === undefined) continue
    if (
      (range.hardMin !== undefined && value < range.hardMin) ||
      (range.hardMax !== undefined && value > range.hardMax)
    ) {
      throw new PreconditionError(`${name} = ${value} lies outside what is physically possible`)
    }
    const note = rangeNote(name, value, range)
    if (note) notes.push(note)
  }
  return notes
}

/** The deterministic pass runs relations through a trace: checked, and their working kept in order. */
export type Trace = {
  run<I extends Inputs, O extends Outputs>(
    relation: Relation<I, O>,
    given: Given<I>,
    about?: string,
  ): Found<O>
  /** Keeps a working that was solved by a wider function than the relation's own: several hoses, several tools. */
  note(
    relation: { readonly id: string; readonly sources: readonly SourceKey[] },
    inputs: Readonly<Record<string, unknown>>,
    outputs: Readonly<Record<string, unknown>>,
    about: string,
  ): void
  readonly workings: readonly Working[]
}

export function createTrace(): Trace {
  const workings: Working[] = []
  return {
    workings,
    run(relation, given, about = '') {
      const notes = rangeNotes(relation.inputs, given as Readonly<Record<string, unknown>>)
      const outputs = relation.fn(given)
      workings.push({
        relation: relation.id,
        about,
        inputs: given as Readonly<Record<string, unknown>>,
        outputs: outputs as Readonly<Record<string, unknown>>,
        sources: relation.sources,
        notes,
      })
      return outputs
    },
    note({ id, sources }, inputs, outputs, about) {
      workings.push({ relation: id, about, inputs, outputs, sources, notes: [] })
    },
  }
}
