import { EN_AIR_FIXES } from './en-air-fixes.ts'
import { fill, templateOf } from './fill.ts'
import type { BothLanguages, Say, TextValues } from './language.ts'
import { withSpanish } from './learned-languages.ts'

export const AIR_FIX_TEMPLATES: BothLanguages<keyof typeof EN_AIR_FIXES> = withSpanish(
  EN_AIR_FIXES,
  'airFixes',
)

/** A change in words; a compressor without a name is of a usual size. */
export function airFixSentence(
  { code, values }: { readonly code: string; readonly values: TextValues },
  say: Say,
): string {
  const template = templateOf(AIR_FIX_TEMPLATES[say.lang], code, [values.name === '' ? 'usual' : undefined])
  return fill(template ?? code, values, say)
}
