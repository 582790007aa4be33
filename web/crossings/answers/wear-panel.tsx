import type { Plan } from '../../../shared/core/plan/plan.ts'
import { planWord } from '../../../shared/text/plan-words.ts'
import { shown, shownChance, shownNumber } from '../../fields/shown.ts'
import { say } from '../../state/unit-choice.ts'
import { FURTHER } from '../../words/further-words.ts'
import { FoldedPanel } from '../form/panel.tsx'
import { DataTable } from './data-table.tsx'
import { Figure } from './figure.tsx'
import { madeOfWear } from './made-of.ts'
import { OpenFigure } from './open-figure.tsx'

const W = FURTHER.wear

export function WearPanel({ plan }: { readonly plan: Plan }) {
  const { wear, service } = plan
  const madeOf = (part: string) => ({
    relations: [],
    parts: madeOfWear(plan, part),
    rule: FURTHER.made.wear,
  })
  return (
    <FoldedPanel
      id="wear"
      heading={W.heading}
      inBrief={`${W.next}: ${shown(service.nextDueS?.p50 ?? null, 'duration')}`}
    >
      <div class="figures">
        <Figure
          label={W.next}
          value={shown(service.nextDueS?.p50 ?? null, 'duration')}
          note={planWord('wearPart', service.part, say.value)}
          working={madeOf(service.part)}
        />
      </div>
      <DataTable
        caption={W.caption}
        columns={W.columns}
        rows={wear.map((part) => ({
          key: part.part,
          cells: [
            planWord('wearPart', part.part, say.value),
            <OpenFigure
              key="used"
              label={`${W.working} ${planWord('wearPart', part.part, say.value)}`}
              value={`${shownNumber(Math.round(part.usedFraction * 100))} %`}
              {...madeOf(part.part)}
            />,
            <OpenFigure
              key="left"
              label={`${W.columns[2] ?? ''}: ${planWord('wearPart', part.part, say.value)}`}
              value={shown(part.remainingS?.p50 ?? null, 'duration')}
              {...madeOf(part.part)}
            />,
            shownChance(part.dueDuringThisCrossingProbability),
          ],
        }))}
      />
      <ul>
        {service.tasks.map((task) => (
          <li key={task}>{planWord('serviceTask', task, say.value)}</li>
        ))}
      </ul>
    </FoldedPanel>
  )
}
