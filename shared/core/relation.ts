import type { SourceKey } from '../sources.ts'
import type { GeoPosition, Kind, Tail } from './kinds.ts'
import { KINDS } from './kinds.ts'

/** Range outside which the relation is still computed, and says so. `hard` bounds are the physical ones: outside is refused. */
export type Range = {
  readonly min?: number
  readonly max?: number
  readonly hardMin?: number
  readonly hardMax?: number
}

export type QuantityField = {
  readonly kind: Kind
  /** What it is, in the trade's words, a few words long. */
  readonly words: string
  readonly range?: Range
  readonly default?: number
}
export type ChoiceField = {
  readonly choices: readonly string[]
  readonly words: string
  readonly default?: string
}
export type ListField = {
  readonly list: 'numbers'
  readonly words: string
  readonly default?: readonly number[]
}
/** Two quantities at a time, as a run of readings: `20 h:0.25 mm,35 h:0.41 mm`; SI, in the order of the kinds. */
export type PairsField = { readonly pairs: readonly [Kind, Kind]; readonly words: string }
export type PositionField = { readonly position: true; readonly words: string }
/** Free words: a pipe size as printed, a jurisdiction's code. */
export type WordField = { readonly word: true; readonly words: string; readonly default?: string }
/** A date, or a date and time, as printed: `2026-03-02T09:10`, on the clock of the place. */
export type CivilField = {
  readonly civil: true
  readonly words: string
  /** The input that names a time zone, in which a moment given with its offset from UTC is read. */
  readonly zoneIn?: string
}
export type InputField =
  | QuantityField
  | ChoiceField
  | ListField
  | PairsField
  | PositionField
  | WordField
  | CivilField
/** `orNull`: there may be none, and another output says why. */
export type OutputField =
  | (QuantityField & { readonly orNull?: true })
  | { readonly choices: readonly string[]; readonly words: string }
  | (CivilField & { readonly orNull?: true })

export type Inputs = Readonly<Record<string, InputField>>
export type Outputs = Readonly<Record<string, OutputField>>

type Name<Key, Field> = Field extends { readonly kind: infer K extends Kind }
  ? `${Key & string}${Tail<K>}`
  : Key & string
type Value<Field> = Field extends { readonly kind: Kind; readonly orNull: true }
  ? number | null
  : Field extends { readonly civil: true; readonly orNull: true }
    ? string | null
    : Field extends { readonly kind: Kind }
      ? number
      : Field extends { readonly choices: readonly (infer Choice)[] }
        ? Choice
        : Field extends { readonly list: 'numbers' }
          ? readonly number[]
          : Field extends { readonly pairs: readonly [Kind, Kind] }
            ? readonly (readonly [number, number])[]
            : Field extends { readonly position: true }
              ? GeoPosition
              : string

/** What the function gets: every input, defaults filled in, SI, the unit at the tail of its name. */
export type Given<I extends Inputs> = { readonly [K in keyof I as Name<K, I[K]>]: Value<I[K]> }
export type Found<O extends Outputs> = { readonly [K in keyof O as Name<K, O[K]>]: Value<O[K]> }

export type Relation<I extends Inputs = Inputs, O extends Outputs = Outputs> = {
  readonly id: string
  readonly title: string
  /** The formula as a reader with the book open would write it. */
  readonly formula: string
  readonly sources: readonly SourceKey[]
  readonly inputs: I
  readonly outputs: O
  readonly fn: (given: Given<I>) => Found<O>
  /** Files of shared/published whose printed values this relation is held against. */
  readonly checks: readonly string[]
  /** What a reader must know before trusting it: error, limits, standing. */
  readonly remarks?: string
}

/** Declares a relation; only fixes the types so that names and units agree. */
export const relation = <const I extends Inputs, const O extends Outputs>(
  declared: Relation<I, O>,
): Relation<I, O> => declared

/** A relation of any shape, for lists of them. */
export type AnyRelation = Omit<Relation, 'fn'> & {
  readonly fn: (given: never) => Readonly<Record<string, number | string | null>>
}

/** The property's name inside the engine: `bore` of kind diameter → `boreM`. */
export function propertyName(key: string, field: InputField | OutputField): string {
  return 'kind' in field ? `${key}${KINDS[field.kind].tail}` : key
}
