import { findRelation } from '../../shared/core/catalogue.ts'
import type { Working } from '../../shared/core/trace.ts'
import { SOURCES } from '../../shared/sources.ts'
import type { Say } from '../../shared/text/language.ts'
import { rangeNoteSentence } from '../../shared/text/range-note.ts'
import { aboutWords, relationTitle, sourceWords } from '../../shared/text/relation-words.ts'

const DIGITS = 6

/** A value of a working: SI, digits enough to follow the sum by hand. */
export function valueText(value: unknown): string {
  if (typeof value === 'number') return String(Number(value.toPrecision(DIGITS)))
  if (Array.isArray(value)) return value.map(valueText).join(', ')
  return typeof value === 'string' ? value : JSON.stringify(value)
}

export const valuesText = (values: Readonly<Record<string, unknown>>): string =>
  Object.entries(values)
    .map(([name, value]) => `${name} ${valueText(value)}`)
    .join(', ')

const LABELS = {
  en: { in: 'in', out: 'out', note: 'mind', from: 'from' },
  es: { in: 'con', out: 'da', note: 'ojo', from: 'de' },
} as const

/** Each formula that was used, in order, with what went in, what came out and where it is from; SI throughout. */
export function workingsText(workings: readonly Working[], say: Say): string {
  const labels = LABELS[say.lang]
  const width = Math.max(...Object.values(labels).map((label) => label.length))
  const line = (label: string, text: string) => `  ${label.padEnd(width)} ${text}`
  return workings
    .map(({ relation: id, about, inputs, outputs, notes, sources }) => {
      const relation = findRelation(id)
      const title = relation === undefined ? id : `${relationTitle(relation, say.lang)} [${id}]`
      const lines = [
        about === '' ? title : `${title}, ${aboutWords(about, say)}`,
        line(labels.in, valuesText(inputs)),
        line(labels.out, valuesText(outputs)),
        ...(relation === undefined
          ? []
          : notes.map((note) => line(labels.note, rangeNoteSentence(relation, note, say)))),
        ...sources.map((key) => line(labels.from, sourceWords(key, SOURCES[key].citation, say.lang).text)),
      ]
      return `${lines.join('\n')}\n`
    })
    .join('')
}
