import { describe, expect, test } from 'vitest'
import { CATALOGUE } from '../../shared/core/catalogue.ts'
import { SOURCES } from '../../shared/sources.ts'
import { EXAMPLE_RATE_BOOK } from '../../shared/tables/example-rate-book.ts'
import { PIPE_SYSTEMS } from '../../shared/tables/pipes.ts'
import { EN_CHOICE_WORDS } from '../../shared/text/en-choice-words.ts'
import type { Say } from '../../shared/text/language.ts'
import { knowsWord } from '../../shared/text/plan-words.ts'
import { priceBookName } from '../../shared/text/price-quantity.ts'
import { rangeNoteSentence } from '../../shared/text/range-note.ts'
import { aboutWords, choiceWord, relationTitle, sourceWords } from '../../shared/text/relation-words.ts'
import { SPANISH } from '../../shared/text/spanish.ts'
import { DEMO_NAMES, planOfDemo } from '../support/crossings.ts'
import { sourcesUnder } from './codes-in-core.ts'

const missing = (keys: readonly string[], words: Readonly<Record<string, string>>): readonly string[] =>
  keys.filter((key) => !Object.hasOwn(words, key))
const surplus = (words: Readonly<Record<string, string>>, keys: readonly string[]): readonly string[] =>
  Object.keys(words).filter((key) => !keys.includes(key))

const ids = CATALOGUE.map((each) => each.id)
const fields = CATALOGUE.flatMap(({ inputs, outputs }) => [
  ...Object.values(inputs),
  ...Object.values(outputs),
])
const quantities = [...new Set(fields.map((field) => field.words))]
const choices = [...new Set(fields.flatMap((field) => ('choices' in field ? field.choices : [])))]

/** Names of single authors, letters of classes, codes of rules and places; the same in every language. */
const NAMES =
  /^(?:[A-D]|B[1-4]|colebrook|serghides|haaland|churchill|wolff|peck|meyerhof|hara|osha|niosh|[A-Z]{2}(?:-[A-Z]{2})?|pe\d{4})$/
/** A formula with no word of English in it reads the same in Spanish. */
const WORDY = /[a-z]{5,}|\bif\b|\belse\b|\btop\b/
const SYMBOLS_ONLY = /\b(?:log10|acos|asin|atan|tanh|erfc?)\b/g

describe('every formula in Spanish', () => {
  test('titles', () => {
    expect(missing(ids, SPANISH.relationTitles)).toEqual([])
    expect(surplus(SPANISH.relationTitles, ids)).toEqual([])
  })
  test('what goes in and comes out', () => {
    expect(missing(quantities, SPANISH.relationQuantities)).toEqual([])
    expect(surplus(SPANISH.relationQuantities, quantities)).toEqual([])
  })
  test('remarks', () => {
    const remarked = CATALOGUE.filter((each) => each.remarks !== undefined).map((each) => each.id)
    expect(missing(remarked, SPANISH.relationRemarks)).toEqual([])
    expect(surplus(SPANISH.relationRemarks, remarked)).toEqual([])
  })
  test('the words in a formula', () => {
    const wordy = CATALOGUE.filter(({ formula }) => WORDY.test(formula.replace(SYMBOLS_ONLY, '')))
    expect(
      missing(
        wordy.map((each) => each.id),
        SPANISH.relationFormulas,
      ),
    ).toEqual([])
    expect(surplus(SPANISH.relationFormulas, ids)).toEqual([])
  })
  test('choices', () => {
    const open = choices.filter((code) => !NAMES.test(code))
    expect(open.length).toBeGreaterThan(20)
    expect(
      open.filter((code) => !Object.hasOwn(EN_CHOICE_WORDS, code) && !knowsWord('pipeSystem', code)),
    ).toEqual([])
    expect(choiceWord('stalls', { lang: 'es', system: 'us' })).toBe('se atora')
    expect(choiceWord('swamee-jain', { lang: 'es', system: 'us' })).toBe('Swamee y Jain')
  })
})

describe('sources and names in Spanish', () => {
  /** What a caution, an assumption or a rule of the check list names as its source. */
  const named = [
    ...new Set(
      sourcesUnder('shared/core/plan')
        .flatMap(({ text }) => [...text.matchAll(/'([A-Z][A-Za-z0-9]{3,})'/g)].map((found) => found[1] ?? ''))
        .filter((key) => Object.hasOwn(SOURCES, key)),
    ),
  ]
  /** Cited by title and publisher: stands as it was printed. */
  const PRINTED = [
    'CrossBorePractices',
    'TenStatesStandards',
    'NewYork753',
    'IsttImpactMoling',
    'AstmF1804',
    'Fm5434',
    'AshraeFundamentals',
  ]
  test('every source a crew is shown', () => {
    expect(named.length).toBeGreaterThan(10)
    expect(
      missing(
        named.filter((key) => !PRINTED.includes(key)),
        SPANISH.sources,
      ),
    ).toEqual([])
    expect(surplus(SPANISH.sources, Object.keys(SOURCES))).toEqual([])
  })
  test('what is no publication of others', () => {
    const ours = Object.entries(SOURCES).filter(([, { standing }]) =>
      ['common practice', 'our judgement', 'your value'].includes(standing),
    )
    expect(
      missing(
        ours.map(([key]) => key),
        SPANISH.sources,
      ),
    ).toEqual([])
  })
  test('a publication is cited as printed', () => {
    const { citation } = SOURCES.Colebrook1939
    expect(sourceWords('Colebrook1939', citation, 'es')).toEqual({ text: citation, lang: 'en' })
    expect(sourceWords('CommonPractice', SOURCES.CommonPractice.citation, 'es').lang).toBe('es')
  })
  test('every pipe system, and our invented book', () => {
    expect(PIPE_SYSTEMS.filter(({ id }) => !knowsWord('pipeSystem', id))).toEqual([])
    expect(priceBookName(EXAMPLE_RATE_BOOK.name, { lang: 'es', system: 'us' })).toBe(
      'Libro de ejemplo (inventado)',
    )
    expect(priceBookName('Rates 2026 - north', { lang: 'es', system: 'us' })).toBe('Rates 2026 - north')
  })
})

const ES: Say = { lang: 'es', system: 'us' }

describe('a formula that was used', () => {
  const relation = CATALOGUE.find(({ id }) => id === 'advance-rate')
  if (relation === undefined) throw new Error('no advance-rate')
  test('its title, and which part it was for', () => {
    expect(relationTitle(relation, 'es')).toBe('Avance mientras golpea')
    expect(relationTitle(relation, 'en')).toBe('Rate of advance while hammering')
    expect(aboutWords('shot 1, ground 2', { lang: 'es', system: 'us' })).toBe('tiro 1, suelo 2')
    expect(aboutWords('pit at reception', { lang: 'en', system: 'us' })).toBe('receiving pit')
  })
  test('every part of a demo plan a formula was used for', () => {
    const abouts = new Set(
      DEMO_NAMES.flatMap((name) => planOfDemo(name).workings.map((working) => working.about)),
    )
    const raw = [...abouts]
      .filter((about) => about !== '')
      .filter((about) =>
        /\b(?:air|bore|bundle|line|over|pipe|pit|shot|ground|tool|at)\b/.test(aboutWords(about, ES)),
      )
    expect(abouts.size).toBeGreaterThan(8)
    expect(raw).toEqual([])
    for (const about of abouts) if (about !== '') expect(aboutWords(about, ES)).not.toBe(about)
  })
  test('an input out of the published range', () => {
    const note = { code: 'outside-range', input: 'blowRateHz', value: 20, min: null, max: 15 } as const
    expect(rangeNoteSentence(relation, note, { lang: 'es', system: 'si' })).toBe(
      'Golpes por segundo: 1200 golpes/min; la fórmula se publicó hasta 900 golpes/min.',
    )
    expect(rangeNoteSentence(relation, { ...note, min: 2 }, { lang: 'en', system: 'us' })).toBe(
      'Blows per second is 1200 blows/min; the formula was published for 120 blows/min to 900 blows/min.',
    )
  })
})
