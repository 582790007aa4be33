import { cautionSentence } from '../shared/text/caution-sentences.ts'
import { checklistSentence } from '../shared/text/checklist-sentences.ts'
import type { Say } from '../shared/text/language.ts'
import { proposalSentence, toExposeSentence } from '../shared/text/path-sentences.ts'
import { releaseSentence, statusMeaning } from '../shared/text/release-sentences.ts'
import { verdictSentence } from '../shared/text/verdict-sentence.ts'
import type { PlanDocument } from './plan-document.ts'

/** Puts the sentence beside every code, for a person who asked in a language; what is stored keeps codes and values only. */
export function planWithText(plan: PlanDocument, say: Say) {
  return {
    ...plan,
    text: verdictSentence(plan, say),
    toExpose: plan.toExpose.map((each) => ({ ...each, text: toExposeSentence(each, say) })),
    proposals: plan.proposals.map((each) => ({ ...each, text: proposalSentence(each, say) })),
    checklist: plan.checklist.map((item) => ({ ...item, text: checklistSentence(item, say) })),
    cautions: plan.cautions.map((caution) => ({ ...caution, text: cautionSentence(caution, say) })),
    release: {
      ...plan.release,
      text: statusMeaning(plan.release.status, say.lang),
      reasons: plan.release.reasons.map((reason) => ({ ...reason, text: releaseSentence(reason, say) })),
    },
  }
}
