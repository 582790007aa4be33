import type { AnyRelation } from '../../shared/core/relation.ts'
import type { RangeNote } from '../../shared/core/trace.ts'
import { rangeNoteSentence } from '../../shared/text/range-note.ts'
import { say } from '../state/unit-choice.ts'

type Props = { readonly relation: AnyRelation; readonly notes: readonly RangeNote[] }

/** Inputs outside the range a formula was published for: worked out all the same, and said. */
export function RangeNotes({ relation, notes }: Props) {
  return (
    <>
      {notes.map((note) => (
        <p key={note.input} class="range-note">
          {rangeNoteSentence(relation, note, say.value)}
        </p>
      ))}
    </>
  )
}
