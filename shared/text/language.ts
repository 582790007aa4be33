import type { UnitSystem } from '../quantities/shown-units.ts'

export type Language = 'en' | 'es'

/** To whom a sentence is said: in which language, in which units. */
export type Say = { readonly lang: Language; readonly system: UnitSystem }

/** Values of a code as the engine gives them: SI numbers, names and codes. */
export type TextValues = Readonly<Record<string, number | string>>

/** One table a language: the same keys in both, held by type where the tables are written. */
export type BothLanguages<Key extends string> = Readonly<Record<Language, Readonly<Record<Key, string>>>>
