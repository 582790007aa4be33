import type { Working } from '../../shared/core/trace.ts'
import { SOURCES } from '../../shared/sources.ts'

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

/** Each formula that was used, in order, with what went in, what came out and where it is from; SI throughout. */
export const workingsText = (workings: readonly Working[]): string =>
  workings
    .map(({ relation, about, inputs, outputs, notes, sources }) => {
      const lines = [
        about === '' ? relation : `${relation} (${about})`,
        `  in   ${valuesText(inputs)}`,
        `  out  ${valuesText(outputs)}`,
        ...notes.map((note) => `  note ${note.code} ${note.input} ${valueText(note.value)}`),
        ...sources.map((key) => `  from ${SOURCES[key].citation}`),
      ]
      return `${lines.join('\n')}\n`
    })
    .join('')
