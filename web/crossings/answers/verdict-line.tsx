import { verdictSentence } from '../../../shared/text/verdict-sentence.ts'
import type { CrossingModel } from '../../state/crossing-model.ts'
import { say } from '../../state/unit-choice.ts'
import { ANSWERS } from '../../words/answer-words.ts'
import { StatusWord } from './release-panel.tsx'

/** The first thing a reader sees, and the line that stays while the form moves under it. */
export function VerdictLine({ model }: { readonly model: CrossingModel }) {
  const answers = model.answers.value
  if (answers.state === 'none') return null
  const isFormer = answers.state === 'former'
  return (
    <div class={isFormer ? 'verdict former' : 'verdict'} role="status">
      <StatusWord status={answers.plan.release.status} />
      <p>
        {isFormer && `${ANSWERS.formerInBrief} `}
        {verdictSentence(answers.plan, say.value)}
      </p>
    </div>
  )
}
