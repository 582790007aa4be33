import type { Plan, ReleaseReason } from '../../../shared/core/plan/plan.ts'
import { planWord } from '../../../shared/text/plan-words.ts'
import { releaseSentence, statusMeaning, statusWord } from '../../../shared/text/release-sentences.ts'
import { say } from '../../state/unit-choice.ts'
import { ANSWERS } from '../../words/answer-words.ts'
import { Panel } from '../form/panel.tsx'
import { StatusMark } from './status-mark.tsx'

const SHAPES = { rule: 'stop', missing: 'stop', advice: 'look' } as const

export const StatusWord = ({ status }: { readonly status: 'hold' | 'check' }) => (
  <span class={`status status-${status}`}>
    <StatusMark shape={status === 'hold' ? 'stop' : 'look'} />
    <span>{statusWord(status, say.value.lang)}</span>
  </span>
)

function Reason({ reason }: { readonly reason: ReleaseReason }) {
  return (
    <li class={`reason reason-${reason.kind}`}>
      <StatusMark shape={SHAPES[reason.kind]} />
      <div>
        <span class="kind">{planWord('reasonKind', reason.kind, say.value)}</span>
        <p>{releaseSentence(reason, say.value)}</p>
      </div>
    </li>
  )
}

export function ReleasePanel({ plan }: { readonly plan: Plan }) {
  const { status, reasons } = plan.release
  return (
    <Panel id="release" heading={ANSWERS.release.heading}>
      <p class="release-status">
        <StatusWord status={status} /> {statusMeaning(status, say.value.lang)}
      </p>
      <p class="fine">{ANSWERS.release.ready}</p>
      <ul class="reasons" aria-label={ANSWERS.release.why}>
        {reasons.map((reason, place) => (
          // The same reason may stand for two lines: its place tells them apart.
          <Reason key={`${reason.code} ${place}`} reason={reason} />
        ))}
      </ul>
    </Panel>
  )
}
