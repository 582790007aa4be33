import type { Plan } from '../../../shared/core/plan/plan.ts'
import { cautionSentence } from '../../../shared/text/caution-sentences.ts'
import { checklistSentence, checklistWhen } from '../../../shared/text/checklist-sentences.ts'
import { planWord } from '../../../shared/text/plan-words.ts'
import { say } from '../../state/unit-choice.ts'
import { FURTHER } from '../../words/further-words.ts'
import { Citation } from '../../workings/citation.tsx'
import { FoldedPanel, Panel } from '../form/panel.tsx'
import { StatusMark } from './status-mark.tsx'

const SHAPES = { danger: 'stop', warning: 'look', advice: 'note' } as const
type Props = { readonly plan: Plan }

export function CautionsPanel({ plan }: Props) {
  return (
    <Panel id="cautions" heading={FURTHER.cautions.heading}>
      <ul class="reasons">
        {plan.cautions.map((caution) => (
          <li key={caution.id} class={`reason severity-${caution.severity}`}>
            <StatusMark shape={SHAPES[caution.severity]} />
            <div>
              <span class="kind">{planWord('severity', caution.severity, say.value)}</span>
              <p>{cautionSentence(caution, say.value)}</p>
              <p class="fine">
                <Citation source={caution.source} />
              </p>
            </div>
          </li>
        ))}
      </ul>
    </Panel>
  )
}

export function ChecklistPanel({ plan }: Props) {
  return (
    <FoldedPanel id="checklist" heading={FURTHER.checklist.heading} inBrief={String(plan.checklist.length)}>
      <ul class="checklist">
        {plan.checklist.map((item) => (
          <li key={item.id}>
            {checklistSentence(item, say.value)} <span class="fine">{checklistWhen(item, say.value)}</span>
          </li>
        ))}
      </ul>
    </FoldedPanel>
  )
}
