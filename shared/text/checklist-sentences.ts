import type { ChecklistItem } from '../core/plan/plan.ts'
import { plainCode } from './by-system.ts'
import { EN_CHECKLIST } from './en-checklist.ts'
import { fill, templateOf } from './fill.ts'
import type { BothLanguages, Say } from './language.ts'
import { withSpanish } from './learned-languages.ts'
import { planWord } from './plan-words.ts'

export const CHECKLIST_TEMPLATES: BothLanguages<keyof typeof EN_CHECKLIST> = withSpanish(
  EN_CHECKLIST,
  'checklist',
)

/** One thing to look at and put a name to. */
export const checklistSentence = ({ id }: Pick<ChecklistItem, 'id'>, say: Say): string =>
  fill(templateOf(CHECKLIST_TEMPLATES[say.lang], id) ?? `${plainCode(id)}.`, {}, say)

/** What brought an item onto the list: "gas crossed". */
export const checklistWhen = ({ when }: Pick<ChecklistItem, 'when'>, say: Say): string =>
  planWord('when', when, say)
