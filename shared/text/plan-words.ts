import { bySystem, plainCode } from './by-system.ts'
import { EN_WORDS } from './en-words.ts'
import type { Say } from './language.ts'
import { withSpanish } from './learned-languages.ts'

export type WordGroup = keyof typeof EN_WORDS
type Group = Readonly<Record<string, string>>

const WORDS: Readonly<Record<Say['lang'], Readonly<Record<WordGroup, Group>>>> = withSpanish(
  EN_WORDS,
  'words',
)

export const knowsWordGroup = (group: string): group is WordGroup => Object.hasOwn(EN_WORDS, group)
export const knowsWord = (group: WordGroup, code: string): boolean => Object.hasOwn(EN_WORDS[group], code)

/** The words for one of the plan's codes, lower case to stand inside a sentence or a table: ('surface', 'road'). */
export function planWord(group: WordGroup, code: string, say: Say): string {
  const words = WORDS[say.lang][group]
  const found = Object.hasOwn(words, code) ? words[code] : undefined
  return found === undefined ? plainCode(code) : bySystem(found, say.system)
}

/** One step of the air line as the plan numbers it: 'hose-2' is "hose 2". */
export function airElementWord(element: string, say: Say): string {
  const [kind = element, number] = element.split('-')
  const word = planWord('airElement', kind, say)
  const isNumbered = kind === 'hose' || kind === 'valve'
  return number === undefined || !isNumbered ? word : `${word} ${number}`
}
