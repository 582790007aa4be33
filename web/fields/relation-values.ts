import type { InputField, OutputField } from '../../shared/core/relation.ts'
import { propertyName } from '../../shared/core/relation.ts'
import { choiceWord, quantityWords } from '../../shared/text/relation-words.ts'
import { say } from '../state/unit-choice.ts'
import { shown, shownNumber } from './shown.ts'
import { valuesByTail } from './value-by-tail.ts'

type Fields = Readonly<Record<string, InputField | OutputField>>
type Values = Readonly<Record<string, unknown>>
export type NamedValue = { readonly name: string; readonly words: string; readonly value: string }

/** One input or output of a relation as a reader sees it: numbers in the reader's units, lists one after the other. */
export function shownValue(value: unknown, field: InputField | OutputField): string {
  if (typeof value === 'number') return 'kind' in field ? shown(value, field.kind) : shownNumber(value)
  if (Array.isArray(value)) return value.map((each) => shownValue(each, field)).join(', ')
  if (typeof value !== 'string') return ''
  return 'choices' in field ? choiceWord(value, say.value) : value
}

const declaredValues = (fields: Fields, values: Values): readonly NamedValue[] =>
  Object.entries(fields)
    .map(([key, field]) => ({
      name: key,
      words: quantityWords(field.words, say.value.lang),
      value: shownValue(values[propertyName(key, field)], field),
    }))
    .filter(({ value }) => value !== '')

/** The values of a relation in the order it declares them, then what a working used beside: several hoses for one. */
export function namedValues(fields: Fields, values: Values): readonly NamedValue[] {
  const declared = new Set(Object.entries(fields).map(([key, field]) => propertyName(key, field)))
  const beside = Object.entries(values)
    .filter(([name]) => !declared.has(name))
    .flatMap(([name, value]) => valuesByTail(name, value))
  return [...declaredValues(fields, values), ...beside.map((each) => ({ ...each, words: '' }))]
}
