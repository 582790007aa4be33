import type { Plan } from '../../../shared/core/plan/plan.ts'
import { SOURCES } from '../../../shared/sources.ts'
import { planWord } from '../../../shared/text/plan-words.ts'
import { shownByUnit } from '../../fields/shown.ts'
import { say } from '../../state/unit-choice.ts'
import { ANSWERS } from '../../words/answer-words.ts'
import { wordsOfDottedName } from '../../words/dotted-name.ts'
import { FoldedPanel } from '../form/panel.tsx'
import { DataTable } from './data-table.tsx'

const W = ANSWERS.assumptions

export function AssumptionsPanel({ plan }: { readonly plan: Plan }) {
  return (
    <FoldedPanel id="assumptions" heading={W.heading} inBrief={String(plan.assumptions.length)}>
      <DataTable
        caption={W.caption}
        columns={W.columns}
        rows={plan.assumptions.map(({ name, value, unit, standing, source }) => ({
          key: name,
          cells: [
            wordsOfDottedName(name),
            shownByUnit(value, unit, name),
            planWord('standing', standing, say.value),
            SOURCES[source].citation,
          ],
        }))}
      />
    </FoldedPanel>
  )
}
