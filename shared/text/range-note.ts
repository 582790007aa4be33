import { type AnyRelation, propertyName } from '../core/relation.ts'
import type { RangeNote } from '../core/trace.ts'
import { fill } from './fill.ts'
import type { BothLanguages, Say } from './language.ts'
import { quantityWords } from './relation-words.ts'
import { saidQuantity } from './say-quantity.ts'

const TEMPLATES: BothLanguages<'between' | 'atLeast' | 'atMost'> = {
  en: {
    between: '{what:text} is {value:text}; the formula was published for {low:text} to {high:text}.',
    atLeast: '{what:text} is {value:text}; the formula was published for {low:text} and more.',
    atMost: '{what:text} is {value:text}; the formula was published for {high:text} and less.',
  },
  es: {
    between: '{what:text}: {value:text}; la fórmula se publicó de {low:text} a {high:text}.',
    atLeast: '{what:text}: {value:text}; la fórmula se publicó de {low:text} en adelante.',
    atMost: '{what:text}: {value:text}; la fórmula se publicó hasta {high:text}.',
  },
}

/** An input outside the range its formula was published for: worked out all the same, and said. */
export function rangeNoteSentence(relation: Pick<AnyRelation, 'inputs'>, note: RangeNote, say: Say): string {
  const found = Object.entries(relation.inputs).find(
    ([key, field]) => propertyName(key, field) === note.input,
  )
  const [, field] = found ?? []
  const shown = (value: number): string =>
    field !== undefined && 'kind' in field ? saidQuantity(value, field.kind, say) : String(value)
  const part = note.max === null ? 'atLeast' : note.min === null ? 'atMost' : 'between'
  const values = {
    what: field === undefined ? note.input : quantityWords(field.words, say.lang),
    value: shown(note.value),
    low: shown(note.min ?? 0),
    high: shown(note.max ?? 0),
  }
  return fill(TEMPLATES[say.lang][part], values, say)
}
