import { bySystem } from '../../shared/text/by-system.ts'
import { language } from '../state/language-choice.ts'
import { units } from '../state/unit-choice.ts'
import type { SPANISH_WORDS } from './spanish.ts'

type SpanishWords = typeof SPANISH_WORDS
type Learned = { spanish: SpanishWords | null }
const learned: Learned = { spanish: null }

export const learnSpanishWords = (words: SpanishWords): void => {
  learned.spanish = words
}

const isTree = (value: unknown): value is Readonly<Record<string, unknown>> =>
  value !== null && typeof value === 'object' && !Array.isArray(value)

/** `{Fiber|Fibre}` as the reader's system spells it; lists item by item. */
function spelled(value: unknown): unknown {
  if (typeof value === 'string') return bySystem(value, units.value)
  return Array.isArray(value) ? value.map(spelled) : value
}

function spokenTree<Words extends object>(english: Words, now: () => unknown): Words {
  const branches = Object.entries(english).map(([key, each]) => {
    const here = () => {
      const at = now()
      return isTree(at) ? at[key] : undefined
    }
    if (!isTree(each)) return [key, { enumerable: true, get: () => spelled(here()) }] as const
    return [key, { enumerable: true, value: spokenTree(each, here) }] as const
  })
  return Object.create(null, Object.fromEntries(branches))
}

/**
 * Words that are read in the language and spelling of the moment: whoever reads one while drawing is drawn again when
 * the reader chooses another. Names of both tables are held together by type.
 */
export const spoken = <Name extends keyof SpanishWords, Words extends SpanishWords[Name] & object>(
  name: Name,
  english: Words,
): Words =>
  spokenTree(english, () =>
    language.value === 'es' && learned.spanish !== null ? learned.spanish[name] : english,
  )
