import type { Context } from 'hono'
import { accepts } from 'hono/accepts'
import type { Language } from '../../shared/text/language.ts'
import { LANGUAGES, languageNamed } from '../language.ts'

/** The reader's first choice among the languages we write, else English. */
export function languageOf(c: Context): Language {
  const chosen = accepts(c, {
    header: 'Accept-Language',
    supports: [...LANGUAGES],
    default: 'en',
    match: (wanted, { default: otherwise }) =>
      wanted
        .filter((each) => each.q > 0)
        .sort((a, b) => b.q - a.q)
        .map((each) => languageNamed(each.type))
        .find((language) => language !== null) ?? otherwise,
  })
  return languageNamed(chosen) ?? 'en'
}
