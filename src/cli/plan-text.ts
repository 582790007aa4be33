import type { CrossingInput } from '../../shared/core/plan/crossing-input.ts'
import type { UnitSystem } from '../../shared/quantities/format-quantity.ts'
import { cautionSentence } from '../../shared/text/caution-sentences.ts'
import { checklistSentence } from '../../shared/text/checklist-sentences.ts'
import { learnedSentence } from '../../shared/text/ground-sentences.ts'
import type { Language, Say } from '../../shared/text/language.ts'
import { PLAN_TABLE_WORDS } from '../../shared/text/plan-table-words.ts'
import { releaseSentence, statusMeaning, statusWord } from '../../shared/text/release-sentences.ts'
import { clearanceSentence, verdictSentence, wayOutSentence } from '../../shared/text/verdict-sentence.ts'
import type { PlanDocument } from '../plan-document.ts'
import { columns } from './answer.ts'
import { PARTS } from './plan-rows.ts'
import { workingsText } from './workings-text.ts'

/** A plan as a page of text: first whether it is held and why, last what was assumed. */
export function planText(
  plan: PlanDocument,
  input: CrossingInput,
  options: { readonly units: UnitSystem; readonly language: Language; readonly working: boolean },
): string {
  const words = PLAN_TABLE_WORDS[options.language]
  const say: Say = { lang: options.language, system: options.units }
  const { status, reasons } = plan.release
  const why = reasons.map((reason) => `  - ${releaseSentence(reason, say)}\n`).join('')
  const head = `${plan.name}\n${statusWord(status, options.language).toUpperCase()}: ${statusMeaning(status, options.language)}\n${why}\n${verdictSentence(plan, say)}\n`
  const parts = PARTS.map(([heading, part]) => {
    const rows = part(plan, words, options.units, say).map(([label = '', ...cells]) => [
      `  ${label}`,
      ...cells,
    ])
    return rows.length === 0 ? '' : `\n${words[heading]}\n${columns(rows)}`
  })
  const echoes = plan.clearances.flatMap((clearance) => {
    const utility = input.utilities?.[clearance.utility]
    if (!utility) return []
    const bore = { axisDepthM: clearance.axisDepthM, boreDiameterM: plan.bore.diameterM }
    return [`  ${clearanceSentence(utility, bore, say)} ${wayOutSentence(clearance, say)}\n`]
  })
  const learned = (plan.learned ?? []).map((part) => `  ${learnedSentence(part, say)}\n`).join('')
  const checks = plan.checklist.map((item) => `  [ ] ${checklistSentence(item, say)}\n`).join('')
  const cautions = plan.cautions.map((caution) => `  - ${cautionSentence(caution, say)}\n`).join('')
  const working = options.working ? `\n${words.working}\n${workingsText(plan.workings, say)}` : ''
  return `${head}\n${words.cautions}\n${cautions}${parts.join('')}${echoes.length === 0 ? '' : `\n${words.depths}\n${echoes.join('')}`}${learned === '' ? '' : `\n${words.learned}\n${learned}`}\n${words.checklist}\n${checks}${working}\n${words.neverReady}\n`
}
