import type { Plan } from '../../../shared/core/plan/plan.ts'
import { formatMoney } from '../../../shared/quantities/format-money.ts'
import { verdictInBrief, verdictSentence } from '../../../shared/text/verdict-sentence.ts'
import type { CrossingModel } from '../../state/crossing-model.ts'
import { say } from '../../state/unit-choice.ts'
import { ANSWERS } from '../../words/answer-words.ts'
import { StatusWord } from './release-panel.tsx'

const priceWords = ({ price }: Plan): string | null =>
  price === undefined
    ? null
    : `${ANSWERS.quoted} ${formatMoney(price.quotedMinorUnits, price.currency, price.stepMinorUnits)}`

/** The first thing a reader sees, and the line that stays while the form moves under it. */
export function VerdictLine({ model }: { readonly model: CrossingModel }) {
  const answers = model.answers.value
  if (answers.state === 'none') return null
  const isFormer = answers.state === 'former'
  const price = priceWords(answers.plan)
  return (
    <div class={isFormer ? 'verdict former' : 'verdict'} role="status">
      <a class="verdict-status" href="#release-heading">
        <StatusWord status={answers.plan.release.status} />
      </a>
      {isFormer && <p class="verdict-former">{ANSWERS.formerInBrief}</p>}
      <p class="verdict-full">{verdictSentence(answers.plan, say.value)}</p>
      <p class="verdict-brief">{verdictInBrief(answers.plan, say.value)}</p>
      {price !== null && !isFormer && <p class="verdict-price">{price}</p>}
    </div>
  )
}
