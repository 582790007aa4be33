import { useEffect, useRef } from 'preact/hooks'
import { findRelation } from '../../../shared/core/catalogue.ts'
import type { Plan } from '../../../shared/core/plan/plan.ts'
import type { Working } from '../../../shared/core/trace.ts'
import { namedValues } from '../../fields/relation-values.ts'
import { ANSWERS } from '../../words/answer-words.ts'
import { RangeNotes } from '../../workings/range-notes.tsx'
import { SourceList } from '../../workings/source-list.tsx'
import { ValueTable } from '../../workings/value-table.tsx'
import { closeWorking, type WorkingOf, workingShown } from './working-shown.ts'

const W = ANSWERS.working
/** More than this at once is a scroll, not an answer: the rest stays folded. */
const OPEN_AT_ONCE = 1

/** The workings behind a figure, the nearest relation first. */
function workingsOf(plan: Plan, of: WorkingOf): readonly Working[] {
  return of.relations.flatMap((id) =>
    plan.workings.filter(
      ({ relation, about }) => relation === id && (of.about === undefined || about.startsWith(of.about)),
    ),
  )
}

function OneWorking({ working, isOpen }: { readonly working: Working; readonly isOpen: boolean }) {
  const relation = findRelation(working.relation)
  if (relation === undefined) return null
  return (
    <details class="working" open={isOpen}>
      <summary>
        {relation.title}
        {working.about !== '' && <span class="fine"> {working.about}</span>}
      </summary>
      <p class="formula">{relation.formula}</p>
      <ValueTable heading={W.inputs} values={namedValues(relation.inputs, working.inputs)} />
      <ValueTable heading={W.outputs} values={namedValues(relation.outputs, working.outputs)} />
      <RangeNotes relation={relation} notes={working.notes} />
      {relation.remarks && <p>{relation.remarks}</p>}
      <SourceList heading={W.sources} sources={working.sources} />
      <p>
        <a href={`/workings#${relation.id}`}>{relation.id}</a>
      </p>
    </details>
  )
}

export function WorkingDialog({ plan }: { readonly plan: Plan }) {
  const dialog = useRef<HTMLDialogElement>(null)
  const of = workingShown.value
  const isOpen = of !== null
  useEffect(() => {
    if (isOpen) dialog.current?.showModal()
    else dialog.current?.close()
  }, [isOpen])
  // Leaving the page closes it: it speaks of this crossing only.
  useEffect(() => closeWorking, [])
  const workings = of === null ? [] : workingsOf(plan, of)
  return (
    <dialog ref={dialog} class="working-dialog" aria-labelledby="working-heading" onClose={closeWorking}>
      {of !== null && (
        <>
          <header>
            <h2 id="working-heading">
              {of.label}: {of.value}
            </h2>
            <button type="button" onClick={closeWorking}>
              {W.close}
            </button>
          </header>
          {of.isOfDraws && <p>{W.ofDraws}</p>}
          {workings.length === 0 && <p>{W.none}</p>}
          {workings.map((working, place) => (
            // One relation may be used several times for the same thing: the order they were worked out in tells them apart.
            <OneWorking
              key={`${working.relation} ${working.about} ${place}`}
              working={working}
              isOpen={place < OPEN_AT_ONCE}
            />
          ))}
        </>
      )}
    </dialog>
  )
}
