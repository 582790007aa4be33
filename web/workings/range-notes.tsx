import type { AnyRelation } from '../../shared/core/relation.ts'
import { propertyName } from '../../shared/core/relation.ts'
import type { RangeNote } from '../../shared/core/trace.ts'
import { shownValue } from '../fields/relation-values.ts'
import { ANSWERS } from '../words/answer-words.ts'

type Props = { readonly relation: AnyRelation; readonly notes: readonly RangeNote[] }

/** Inputs outside the range a formula was published for: worked out all the same, and said. */
export function RangeNotes({ relation, notes }: Props) {
  return (
    <>
      {notes.map((note) => {
        const found = Object.entries(relation.inputs).find(
          ([key, field]) => propertyName(key, field) === note.input,
        )
        if (found === undefined) return null
        const [, field] = found
        const text = (value: number | null) => (value === null ? null : shownValue(value, field))
        return (
          <p key={note.input} class="range-note">
            {ANSWERS.working.outside(field.words, text(note.value) ?? '', text(note.min), text(note.max))}
          </p>
        )
      })}
    </>
  )
}
