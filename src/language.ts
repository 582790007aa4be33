import '../shared/text/spanish.ts'
import type { Language } from '../shared/text/language.ts'

export const LANGUAGES = ['en', 'es'] as const satisfies readonly Language[]

/** The language named by a tag such as 'es-MX', when it is one we write. */
export function languageNamed(tag: string): Language | null {
  const primary = tag.toLowerCase().split('-')[0]
  return LANGUAGES.find((language) => language === primary) ?? null
}
