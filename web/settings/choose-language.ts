import type { Language } from '../../shared/text/language.ts'
import { isLanguageMissing, language, rememberLanguage } from '../state/language-choice.ts'

/** Speaks a language as soon as its words are there; without them the page goes on as it was. */
export async function beginLanguage(wanted: Language): Promise<void> {
  isLanguageMissing.value = false
  try {
    if (wanted === 'es') await import('../words/spanish.ts')
  } catch (error) {
    // A part of the page that cannot be fetched is a TypeError in every browser.
    if (!(error instanceof TypeError)) throw error
    isLanguageMissing.value = true
    return
  }
  language.value = wanted
  document.documentElement.lang = wanted
}

export async function chooseLanguage(wanted: Language): Promise<void> {
  await beginLanguage(wanted)
  if (language.value === wanted) rememberLanguage(wanted)
}
