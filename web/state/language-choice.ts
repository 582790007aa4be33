import { signal } from '@preact/signals'
import type { Language } from '../../shared/text/language.ts'
import { recall, remember } from './browser-memory.ts'

const KEY = 'underlane.language'

/** In which language the page speaks now: it changes only once the words are there. */
export const language = signal<Language>('en')
/** The Spanish words could not be fetched: no signal, and this browser has not kept them. */
export const isLanguageMissing = signal(false)

/** The language of an earlier visit, else the browser's own, else English. */
export function wantedLanguage(): Language {
  const kept = recall(KEY)
  if (kept === 'en' || kept === 'es') return kept
  return /^es\b/i.test(navigator.language) ? 'es' : 'en'
}

const speak = (wanted: Language): void => {
  language.value = wanted
  document.documentElement.lang = wanted
}

/** Speaks a language as soon as its words are there; without them the page goes on as it was. */
export async function beginLanguage(wanted: Language): Promise<void> {
  isLanguageMissing.value = false
  try {
    if (wanted === 'es') await import('../words/spanish.ts')
  } catch (error) {
    // A chunk that cannot be fetched is a TypeError in every browser.
    if (!(error instanceof TypeError)) throw error
    isLanguageMissing.value = true
    return
  }
  speak(wanted)
}

export async function chooseLanguage(wanted: Language): Promise<void> {
  await beginLanguage(wanted)
  if (language.value === wanted) remember(KEY, wanted)
}
