import type { SPANISH } from './spanish.ts'

/**
 * English is always there; Spanish is learned by importing `spanish.ts`. A program that speaks both imports it at the
 * top; a page fetches it when a reader asks for it, so that readers of English need not wait for it.
 */
type SpanishTables = typeof SPANISH
type Learned = { spanish: SpanishTables | null }
const learned: Learned = { spanish: null }

export const learnSpanish = (tables: SpanishTables): void => {
  learned.spanish = tables
}

/** Tables of one kind in both languages. To ask for Spanish before it was learned is a mistake of ours. */
export const withSpanish = <English, Name extends keyof SpanishTables>(english: English, name: Name) => ({
  en: english,
  get es(): SpanishTables[Name] {
    if (learned.spanish === null) throw new Error('Spanish was asked for before spanish.ts was loaded')
    return learned.spanish[name]
  },
})
