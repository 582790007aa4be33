import { asSentence, bySystem, plainCode } from './by-system.ts'
import { EN_CHOICE_WORDS } from './en-choice-words.ts'
import type { Language, Say } from './language.ts'
import { withSpanish } from './learned-languages.ts'
import { knowsWord, planWord } from './plan-words.ts'

type Words = Readonly<Record<string, string>>
const NONE: Words = {}
const TITLES: Readonly<Record<Language, Words>> = withSpanish(NONE, 'relationTitles')
const FORMULAS: Readonly<Record<Language, Words>> = withSpanish(NONE, 'relationFormulas')
const REMARKS: Readonly<Record<Language, Words>> = withSpanish(NONE, 'relationRemarks')
const QUANTITIES: Readonly<Record<Language, Words>> = withSpanish(NONE, 'relationQuantities')
const CHOICES: Readonly<Record<Language, Words>> = withSpanish(EN_CHOICE_WORDS, 'choices')
const SOURCES: Readonly<Record<Language, Words>> = withSpanish(NONE, 'sources')

/** A relation as the catalogue has it; English is written beside the formula, Spanish here. */
type Named = { readonly id: string; readonly title: string }

const known = (words: Words, key: string): string | undefined =>
  Object.hasOwn(words, key) ? words[key] : undefined

/** What a formula is called. */
export const relationTitle = ({ id, title }: Named, lang: Language): string =>
  known(TITLES[lang], id) ?? title

/** The formula itself; only the words in it change. */
export const relationFormula = (id: string, formula: string, lang: Language): string =>
  known(FORMULAS[lang], id) ?? formula

/** What to know before trusting a formula; none where it has none. */
export const relationRemarks = (
  id: string,
  remarks: string | undefined,
  lang: Language,
): string | undefined => (remarks === undefined ? undefined : (known(REMARKS[lang], id) ?? remarks))

/** What one input or output of a formula is. */
export const quantityWords = (words: string, lang: Language): string =>
  known(QUANTITIES[lang], words) ?? words

/** Grades of polyethylene, and the rules known by their letters. */
const UPPER_CASE = /^(?:pe\d{4}|osha|niosh)$/
const PLACE = /^[A-Z]{2}-[A-Z]{2}$/

/** One of the choices of an input or output: 'stalls', 'copper-b88'. Names of authors stand as they are. */
export function choiceWord(code: string, say: Say): string {
  const choice = known(CHOICES[say.lang], code)
  if (choice !== undefined) return bySystem(choice, say.system)
  if (knowsWord('pipeSystem', code)) return planWord('pipeSystem', code, say)
  if (UPPER_CASE.test(code)) return code.toUpperCase()
  if (PLACE.test(code)) return code
  return asSentence(plainCode(code))
}

/** A source as a reader is told it: a publication as printed, what is ours in the reader's language. */
export function sourceWords(
  key: string,
  citation: string,
  lang: Language,
): { readonly text: string; readonly lang: Language } {
  const said = known(SOURCES[lang], key)
  return said === undefined ? { text: citation, lang: 'en' } : { text: said, lang }
}

const ABOUTS: Readonly<Record<Language, Words>> = {
  en: {
    'pit at launch': 'launch pit',
    'pit at middle': 'middle pit',
    'pit at reception': 'receiving pit',
  },
  es: {
    'pit at launch': 'pozo de lanzamiento',
    'pit at middle': 'pozo intermedio',
    'pit at reception': 'pozo de recepción',
    'over the bore': 'sobre la perforación',
    air: 'aire',
    bore: 'perforación',
    bundle: 'haz de tubos',
    tool: 'topo',
    shot: 'tiro',
    ground: 'suelo',
    line: 'línea',
    pipe: 'tubo',
  },
}

/** Which part of the plan a formula was used for: 'shot 1, ground 2' in the reader's words. */
export const aboutWords = (about: string, say: Say): string =>
  Object.entries(ABOUTS[say.lang]).reduce(
    (said, [code, words]) => said.replace(new RegExp(`\\b${code}\\b`), words),
    about,
  )
