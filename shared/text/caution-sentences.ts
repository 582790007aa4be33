import type { Caution } from '../core/plan/plan.ts'
import { plainCode } from './by-system.ts'
import { EN_CAUTIONS } from './en-cautions.ts'
import { fill, templateOf } from './fill.ts'
import type { BothLanguages, Say } from './language.ts'
import { withSpanish } from './learned-languages.ts'

export const CAUTION_TEMPLATES: BothLanguages<keyof typeof EN_CAUTIONS> = withSpanish(EN_CAUTIONS, 'cautions')

/** A caution as the crew is to read it: what may happen and what to do. */
export function cautionSentence({ id, values }: Pick<Caution, 'id' | 'values'>, say: Say): string {
  return fill(templateOf(CAUTION_TEMPLATES[say.lang], id) ?? `${plainCode(id)}.`, values, say)
}
