import type { Plan } from '../../../shared/core/plan/plan.ts'
import { assumedValue, assumptionName } from '../../../shared/text/assumption-words.ts'
import { planWord } from '../../../shared/text/plan-words.ts'
import { say } from '../../state/unit-choice.ts'
import { FURTHER } from '../../words/further-words.ts'
import { Citation } from '../../workings/citation.tsx'
import { FoldedPanel } from '../form/panel.tsx'
import { DataTable } from './data-table.tsx'

const W = FURTHER.assumptions

export function AssumptionsPanel({ plan }: { readonly plan: Plan }) {
  return (
    <FoldedPanel id="assumptions" heading={W.heading} inBrief={String(plan.assumptions.length)}>
      <DataTable
        caption={W.caption}
        columns={W.columns}
        rows={plan.assumptions.map((assumption) => ({
          key: assumption.name,
          cells: [
            assumptionName(assumption.name, say.value),
            assumedValue(assumption, say.value),
            planWord('standing', assumption.standing, say.value),
            <Citation key="source" source={assumption.source} />,
          ],
        }))}
      />
    </FoldedPanel>
  )
}
