import type { Plan } from '../../../shared/core/plan/plan.ts'
import { useLate } from '../../late.ts'
import type { CrossingModel } from '../../state/crossing-model.ts'
import { variantOf } from '../../state/kept-variant.ts'
import { ANSWERS } from '../../words/answer-words.ts'
import { Panel } from '../form/panel.tsx'

const W = ANSWERS.compare
type Props = { readonly model: CrossingModel; readonly plan: Plan }

/** Fetched with the answers below the first screen, so that it is there without a signal. */
const load = () => import('./compared-table.tsx')

/** Two ways of doing one crossing: A put aside, and what stands in the form. */
export function ComparePanel({ model, plan }: Props) {
  const variant = variantOf(model)
  const late = useLate(load)
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
        {late && <late.ComparedTable a={a.plan} now={plan} />}
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
