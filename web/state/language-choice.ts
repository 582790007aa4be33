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

export const rememberLanguage = (chosen: Language): void => {
  remember(KEY, chosen)
}
