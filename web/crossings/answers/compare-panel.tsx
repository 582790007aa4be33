import type { Plan } from '../../../shared/core/plan/plan.ts'
import type { CrossingModel } from '../../state/crossing-model.ts'
import { type Variant, variantOf } from '../../state/kept-variant.ts'
import { ANSWERS } from '../../words/answer-words.ts'
import { Panel } from '../form/panel.tsx'
import { comparedFigures } from './compared-figures.ts'
import { DataTable } from './data-table.tsx'

const W = ANSWERS.compare
type Props = { readonly model: CrossingModel; readonly plan: Plan }

function Compared({ variant, plan }: { readonly variant: Variant; readonly plan: Plan }) {
  return (
    <DataTable
      caption={W.caption}
      columns={W.columns}
      rows={comparedFigures(variant.plan, plan).map(({ name, a, now, difference, hasMoved }) => ({
        key: name,
        cells: [
          name,
          a,
          now,
          hasMoved ? (
            <strong key="difference">{difference}</strong>
          ) : (
            <span key="difference">{difference}</span>
          ),
        ],
      }))}
    />
  )
}

/** Two ways of doing one crossing: A put aside, and what stands in the form. */
export function ComparePanel({ model, plan }: Props) {
  const variant = variantOf(model)
  const keep = () => {
    variant.value = { document: model.document.value, plan }
  }
  const a = variant.value
  if (a === null) {
    return (
      <div class="compare compare-none">
        <button type="button" onClick={keep}>
          {W.keep}
        </button>
        <p class="hint">{W.hint}</p>
      </div>
    )
  }
  return (
    <div class="compare">
      <Panel id="compare" heading={W.heading}>
        <Compared variant={a} plan={plan} />
        <div class="compare-actions">
          <button type="button" onClick={() => model.open(a.document)}>
            {W.back}
          </button>
          <button type="button" onClick={keep}>
            {W.keepNow}
          </button>
          <button
            type="button"
            class="quiet"
            onClick={() => {
              variant.value = null
            }}
          >
            {W.forget}
          </button>
        </div>
      </Panel>
    </div>
  )
}
