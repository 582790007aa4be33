import type { ReleasePart, ReleaseReason } from '../core/plan/plan.ts'
import { plainCode } from './by-system.ts'
import { EN_RELEASE, EN_STATUS, EN_STATUS_MEANING } from './en-release.ts'
import { fill, templateOf } from './fill.ts'
import type { BothLanguages, Language, Say } from './language.ts'
import { withSpanish } from './learned-languages.ts'

export const RELEASE_TEMPLATES: BothLanguages<keyof typeof EN_RELEASE> = withSpanish(EN_RELEASE, 'release')
const STATUS: BothLanguages<ReleasePart['status']> = withSpanish(EN_STATUS, 'status')
const MEANING: BothLanguages<ReleasePart['status']> = withSpanish(EN_STATUS_MEANING, 'statusMeaning')

/** Hold or Check: the two things a plan can say. The third word is only ever signed on site. */
export const statusWord = (status: ReleasePart['status'], lang: Language): string => STATUS[lang][status]

/** What the word means for the crew, in one line. */
export const statusMeaning = (status: ReleasePart['status'], lang: Language): string => MEANING[lang][status]

/** Why the plan is held or wants a look, and the way out. */
export function releaseSentence(reason: Pick<ReleaseReason, 'code' | 'values'>, say: Say): string {
  const { code, values } = reason
  const template = templateOf(RELEASE_TEMPLATES[say.lang], code, [values.kind, values.method])
  return fill(template ?? `${plainCode(code)}.`, values, say)
}
