import { language } from '../state/language-choice.ts'

/** A moment as the reader's clock and language have it. */
export function whenWords(iso: string): string {
  const at = new Date(iso)
  if (Number.isNaN(at.getTime())) return iso
  return new Intl.DateTimeFormat(language.value === 'es' ? 'es' : 'en', {
    dateStyle: 'medium',
    timeStyle: 'short',
  }).format(at)
}
