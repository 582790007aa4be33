import { useEffect, useRef } from 'preact/hooks'
import { findRelation } from '../../../shared/core/catalogue.ts'
import type { Plan } from '../../../shared/core/plan/plan.ts'
import type { Working } from '../../../shared/core/trace.ts'
import { planWord } from '../../../shared/text/plan-words.ts'
import {
  aboutWords,
  relationFormula,
  relationRemarks,
  relationTitle,
} from '../../../shared/text/relation-words.ts'
import { namedValues } from '../../fields/relation-values.ts'
import { say } from '../../state/unit-choice.ts'
import { FURTHER } from '../../words/further-words.ts'
import { RelationChecks } from '../../workings/checks.tsx'
import { RangeNotes } from '../../workings/range-notes.tsx'
import { SourceList } from '../../workings/source-list.tsx'
import { ValueTable } from '../../workings/value-table.tsx'
import { closeWorking, leaveWorking, type MadeOf, type WorkingOf, workingShown } from './working-shown.ts'

const W = FURTHER.working
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

function Parts({ heading, parts }: { readonly heading: string; readonly parts: readonly MadeOf[] }) {
  return (
    <table class="values">
      <caption>{heading}</caption>
      <tbody>
        {parts.map(({ name, value, standing }, place) => (
          // Two lines of a price may have one name: their order tells them apart.
          <tr key={`${name} ${place}`}>
            <th scope="row">
              {name}
              {standing && <span class="standing">{planWord('standing', standing, say.value)}</span>}
            </th>
            <td>{value}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

type WorkingProps = { readonly working: Working; readonly isOpen: boolean; readonly onLeave: () => void }

function OneWorking({ working, isOpen, onLeave }: WorkingProps) {
  const relation = findRelation(working.relation)
  if (relation === undefined) return null
  return (
    <details class="working" open={isOpen}>
      <summary>
        <span>{relationTitle(relation, say.value.lang)}</span>
        {working.about !== '' && <span class="fine"> {aboutWords(working.about, say.value)}</span>}
      </summary>
      <p class="formula">{relationFormula(relation.id, relation.formula, say.value.lang)}</p>
      <ValueTable heading={W.inputs} values={namedValues(relation.inputs, working.inputs)} />
      <ValueTable heading={W.outputs} values={namedValues(relation.outputs, working.outputs)} />
      <RangeNotes relation={relation} notes={working.notes} />
      {relation.remarks && <p>{relationRemarks(relation.id, relation.remarks, say.value.lang)}</p>}
      <SourceList heading={W.sources} sources={working.sources} />
      <p class="sources-heading">{W.checks}</p>
      <RelationChecks relation={relation} />
      <p>
        <a href={`/workings#${relation.id}`} onClick={onLeave}>
          {W.open} <code>{relation.id}</code>
        </a>
      </p>
    </details>
  )
}

function DialogBody({ plan, of }: { readonly plan: Plan; readonly of: WorkingOf }) {
  const workings = workingsOf(plan, of)
  return (
    <>
      <header>
        <h2 id="working-heading">
          {of.label}: {of.value}
        </h2>
        <button type="button" onClick={closeWorking}>
          {W.close}
        </button>
      </header>
      {of.days && <Parts heading={W.days} parts={of.days} />}
      {of.isOfDraws && <p>{W.ofDraws}</p>}
      {of.parts && <Parts heading={W.parts} parts={of.parts} />}
      {of.rule && <p>{of.rule}</p>}
      {workings.length === 0 && of.parts === undefined && <p>{W.none}</p>}
      {workings.map((working, place) => (
        // One relation may be used several times for the same thing: the order they were worked out in tells them apart.
        <OneWorking
          key={`${working.relation} ${working.about} ${place}`}
          working={working}
          isOpen={place < OPEN_AT_ONCE}
          onLeave={() => leaveWorking(of, location.pathname)}
        />
      ))}
    </>
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
  return (
    <dialog ref={dialog} class="working-dialog" aria-labelledby="working-heading" onClose={closeWorking}>
      {of !== null && <DialogBody plan={plan} of={of} />}
    </dialog>
  )
}
