import { useSignalEffect } from '@preact/signals'
import type { ComponentChildren } from 'preact'
import { useErrorBoundary } from 'preact/hooks'
import type { Issue } from '../../../shared/core/outcome.ts'
import type { CrossingInput } from '../../../shared/core/plan/crossing-input.ts'
import type { Plan } from '../../../shared/core/plan/plan.ts'
import { verdictSentence } from '../../../shared/text/verdict-sentence.ts'
import { useLate } from '../../late.ts'
import type { CrossingModel } from '../../state/crossing-model.ts'
import { say } from '../../state/unit-choice.ts'
import { ANSWERS } from '../../words/answer-words.ts'
import { ComparePanel } from './compare-panel.tsx'
import { RecordedRelations, relationsOf } from './recorded-relations.ts'
import { ReleasePanel } from './release-panel.tsx'
import { TimePanel } from './time-panel.tsx'

type Props = { readonly model: CrossingModel }
type SiteProps = { readonly site?: ComponentChildren }
type PartsProps = { readonly plan: Plan; readonly input: CrossingInput }

const loadFurther = () => import('./further-answers.tsx')

/** What lies below the first screen, and the dialog that needs every formula there is. */
function LaterParts({ plan, input }: PartsProps) {
  const late = useLate(loadFurther)
  return late === null ? null : <late.FurtherAnswers plan={plan} input={input} />
}

function Parts({ model, plan, input, site }: Props & PartsProps & SiteProps) {
  return (
    <RecordedRelations.Provider value={relationsOf(plan)}>
      <p class="verdict-whole">{verdictSentence(plan, say.value)}</p>
      <ComparePanel model={model} plan={plan} />
      <ReleasePanel plan={plan} />
      {site}
      <TimePanel plan={plan} />
      <LaterParts plan={plan} input={input} />
    </RecordedRelations.Provider>
  )
}

/** A mistake of ours is said so; the form stays, and the next change tries again. */
export function Guard({ model, children }: Props & { readonly children: ComponentChildren }) {
  const [error, reset] = useErrorBoundary((mistake) => console.error(mistake))
  useSignalEffect(() => {
    if (model.document.value) reset()
  })
  if (error !== undefined) return <p class="broken">{ANSWERS.broken}</p>
  return children
}

const loadProblems = () => import('../still-needed.tsx')

/** A first visit shows an example that has none. */
function LateProblems(props: { readonly issues: readonly Issue[]; readonly isBegun: boolean }) {
  const late = useLate(loadProblems)
  return late === null ? null : <late.Problems {...props} />
}

function Current({ model, site }: Props & SiteProps) {
  const answers = model.answers.value
  if (answers.state === 'none') {
    return <LateProblems issues={answers.issues} isBegun={false} />
  }
  return (
    <div class={answers.state === 'former' ? 'answers-body former' : 'answers-body'}>
      <div class="answers-state" role="status">
        {answers.state === 'former' ? (
          <div class="former-note">
            <p>{ANSWERS.former}</p>
            <LateProblems issues={answers.issues} isBegun />
          </div>
        ) : (
          <p class="fine">{ANSWERS.openHint}</p>
        )}
      </div>
      <Parts model={model} plan={answers.plan} input={answers.input} site={site} />
    </div>
  )
}

/** On a narrow screen, where form and answers follow one another: each is one tap away. */
const Jumps = () => (
  <nav class="jumps" aria-label={ANSWERS.jumps.region}>
    <a href="#form-heading">{ANSWERS.jumps.inputs}</a>
    <a href="#answers-heading">{ANSWERS.jumps.answers}</a>
  </nav>
)

export function Answers({ model, site }: Props & SiteProps) {
  return (
    <section class="answers" aria-labelledby="answers-heading">
      <h2 id="answers-heading" class="column-heading" tabIndex={-1}>
        {ANSWERS.heading}
      </h2>
      <Guard model={model}>
        <Current model={model} site={site} />
      </Guard>
      <Jumps />
    </section>
  )
}
