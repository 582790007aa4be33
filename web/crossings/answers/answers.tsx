import { useSignalEffect } from '@preact/signals'
import type { ComponentChildren } from 'preact'
import { useErrorBoundary } from 'preact/hooks'
import type { Issue } from '../../../shared/core/outcome.ts'
import type { Plan } from '../../../shared/core/plan/plan.ts'
import { issueSentence } from '../../../shared/text/issue-sentences.ts'
import { verdictSentence } from '../../../shared/text/verdict-sentence.ts'
import { focusField } from '../../fields/focus-field.ts'
import type { CrossingModel } from '../../state/crossing-model.ts'
import { say } from '../../state/unit-choice.ts'
import { ANSWERS } from '../../words/answer-words.ts'
import { wordsOfDottedName } from '../../words/dotted-name.ts'
import { AirAnswer } from './air-panel.tsx'
import { AssumptionsPanel } from './assumptions-panel.tsx'
import { BorePanel } from './bore-panel.tsx'
import { ClearancesPanel } from './clearances-panel.tsx'
import { MapPanel } from './map-panel.tsx'
import { PathPanel } from './path-panel.tsx'
import { PipeAnswer, PitsPanel } from './pipe-panel.tsx'
import { PricePanel } from './price-panel.tsx'
import { ReleasePanel, StatusWord } from './release-panel.tsx'
import { CautionsPanel, ChecklistPanel } from './safety-panels.tsx'
import { TimePanel } from './time-panel.tsx'
import { WearPanel } from './wear-panel.tsx'
import { WorkingDialog } from './working-dialog.tsx'

type Props = { readonly model: CrossingModel }

function Problems({ issues }: { readonly issues: readonly Issue[] }) {
  return (
    <ul class="problems">
      {issues.map((issue) => (
        <li key={`${issue.path} ${issue.code}`}>
          {issue.path !== '' && (
            <button type="button" class="link" onClick={() => focusField(issue.path)}>
              {wordsOfDottedName(issue.path)}
            </button>
          )}{' '}
          {issueSentence(issue, 'en')}
        </li>
      ))}
    </ul>
  )
}

/** The first thing a reader sees, and on a telephone the line that stays. */
function Verdict({ plan, isFormer }: { readonly plan: Plan; readonly isFormer: boolean }) {
  return (
    <div class={isFormer ? 'verdict former' : 'verdict'} role="status">
      <StatusWord status={plan.release.status} />
      <p>{verdictSentence(plan, say.value)}</p>
    </div>
  )
}

function Parts({ plan }: { readonly plan: Plan }) {
  return (
    <>
      <p class="fine">{ANSWERS.openHint}</p>
      <ReleasePanel plan={plan} />
      <TimePanel plan={plan} />
      <AirAnswer plan={plan} />
      <BorePanel plan={plan} />
      <ClearancesPanel plan={plan} />
      <PathPanel plan={plan} />
      <PipeAnswer plan={plan} />
      <PitsPanel plan={plan} />
      <PricePanel plan={plan} />
      <WearPanel plan={plan} />
      <CautionsPanel plan={plan} />
      <ChecklistPanel plan={plan} />
      <AssumptionsPanel plan={plan} />
      <WorkingDialog plan={plan} />
    </>
  )
}

/** A mistake of ours is said so; the form stays, and the next change tries again. */
function Guard({ model, children }: Props & { readonly children: ComponentChildren }) {
  const [error, reset] = useErrorBoundary((mistake) => console.error(mistake))
  useSignalEffect(() => {
    if (model.document.value) reset()
  })
  if (error !== undefined) return <p class="broken">{ANSWERS.broken}</p>
  return <div class="answer-parts">{children}</div>
}

function Current({ model }: Props) {
  const answers = model.answers.value
  if (answers.state === 'none') {
    return (
      <>
        <p>{ANSWERS.waiting}</p>
        <Problems issues={answers.issues} />
      </>
    )
  }
  return (
    <>
      <Verdict plan={answers.plan} isFormer={answers.state === 'former'} />
      {answers.state === 'former' && (
        <div class="former-note" role="status">
          <p>{ANSWERS.former}</p>
          <Problems issues={answers.issues} />
        </div>
      )}
      <MapPanel input={answers.input} />
      <Parts plan={answers.plan} />
    </>
  )
}

export function Answers({ model }: Props) {
  return (
    <section class="answers" aria-labelledby="answers-heading">
      <h2 id="answers-heading" class="column-heading">
        {ANSWERS.heading}
      </h2>
      <Guard model={model}>
        <Current model={model} />
      </Guard>
    </section>
  )
}
