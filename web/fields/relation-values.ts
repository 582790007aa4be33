import type { InputField, OutputField } from '../../shared/core/relation.ts'
import { propertyName } from '../../shared/core/relation.ts'
import { shown, shownNumber } from './shown.ts'

export type NamedValue = { readonly name: string; readonly words: string; readonly value: string }

/** One input or output of a relation as a reader sees it: numbers in the reader's units, lists one after the other. */
export function shownValue(value: unknown, field: InputField | OutputField): string {
  if (typeof value === 'number') return 'kind' in field ? shown(value, field.kind) : shownNumber(value)
  if (Array.isArray(value)) return value.map((each) => shownValue(each, field)).join(', ')
  return typeof value === 'string' ? value : ''
}

/** The values of a relation in the order it declares them. */
export const namedValues = (
  fields: Readonly<Record<string, InputField | OutputField>>,
  values: Readonly<Record<string, unknown>>,
): readonly NamedValue[] =>
  Object.entries(fields)
    .map(([key, field]) => {
      const name = propertyName(key, field)
      return { name: key, words: field.words, value: shownValue(values[name], field) }
    })
    .filter(({ value }) => value !== '')
