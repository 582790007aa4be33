import type { ReleaseAnswer } from '../contracts/release-answer.ts'
import type { ReleaseReason } from '../core/plan/plan.ts'
import { EN_GATE } from './en-gate.ts'
import { fill } from './fill.ts'
import type { BothLanguages, Say } from './language.ts'
import { withSpanish } from './learned-languages.ts'
import { releaseSentence } from './release-sentences.ts'

export const GATE_TEMPLATES: BothLanguages<keyof typeof EN_GATE> = withSpanish(EN_GATE, 'gate')
type Key = keyof typeof EN_GATE

const isKey = (key: string): key is Key => Object.hasOwn(EN_GATE, key)

/** Words of the release on site: ('item', 'pits-inspected'). A code of a later version stands as it is. */
export function gateWord(group: string, code: string | number, say: Say): string {
  const key = `${group}/${code}`
  return isKey(key) ? fill(GATE_TEMPLATES[say.lang][key], {}, say) : String(code)
}

/** Hold, check or ready, and what it means here. */
export function gateMeaning(
  { status, why }: Pick<ReleaseAnswer, 'status' | 'why'>,
  values: { readonly bore: number; readonly until: string },
  say: Say,
): string {
  const key: Key = status === 'check' ? `meaning/${why ?? 'elsewhere'}` : `meaning/${status}`
  return fill(GATE_TEMPLATES[say.lang][key], values, say)
}

/** What is open at a point; a rule of the plan in the plan's own words. */
export function openSentence(
  open: ReleaseAnswer['others'][number],
  reasons: readonly Pick<ReleaseReason, 'code' | 'values'>[],
  say: Say,
): string {
  const { code, of, line, needed, had } = open
  if (code === 'plan-hold') {
    const reason = reasons.find((each) => each.code === of && (line === null || each.values.line === line))
    if (reason) return releaseSentence(reason, say)
  }
  const named = code === 'not-signed' || code === 'no-photo' ? gateWord('item', of, say) : of
  return fill(GATE_TEMPLATES[say.lang][`open/${code}`], { of: named, needed, had }, say)
}

/** Whether what the bore crossed has been looked at, and by whom. */
export const afterSentence = (
  after: { readonly by: string; readonly at: string } | null,
  say: Say,
): string =>
  after === null
    ? fill(GATE_TEMPLATES[say.lang]['after/none'], {}, say)
    : fill(GATE_TEMPLATES[say.lang]['after/done'], after, say)
