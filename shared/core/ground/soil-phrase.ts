import type { Moisture, SoilWord, StonesWord } from '../../tables/trade-soil-words.ts'
import {
  FROZEN_WORDS,
  IDLE_WORDS,
  MOISTURE_WORDS,
  SOIL_WORDS,
  STATE_WORDS,
  STONES_WORDS,
} from '../../tables/trade-soil-words.ts'
import {
  SPANISH_FROZEN_WORDS,
  SPANISH_IDLE_WORDS,
  SPANISH_MOISTURE_WORDS,
  SPANISH_OPEN_WORDS,
  SPANISH_SOIL_WORDS,
  SPANISH_STATE_WORDS,
  SPANISH_STONES_WORDS,
} from '../../tables/trade-soil-words-es.ts'
import type { Candidate, Outcome } from '../outcome.ts'
import { done, PreconditionError, refused } from '../outcome.ts'

/** What a phrase like "firm moist clay with few stones" says. */
export type SoilPhrase = {
  readonly soil: SoilWord | null
  /** The soil's name as it was said. */
  readonly name: string
  readonly stateCode: string | null
  readonly moisture: Moisture | null
  readonly stones: StonesWord | null
  readonly fill: boolean
  readonly frozen: boolean
  /** Another soil was named beside it. */
  readonly layered: boolean
}

const ENGLISH_SOILS = new Map(SOIL_WORDS.flatMap((soil) => soil.words.map((each) => [each, soil] as const)))

/** The soil an English word of the trade stands for; a Spanish word that names no such word is a slip in our table. */
function englishSoil(word: string): SoilWord {
  const soil = ENGLISH_SOILS.get(word)
  if (soil === undefined) throw new PreconditionError(`no soil is called ${word}`)
  return soil
}

/** `{ code: [words] }` the other way about. */
const byWord = <Code extends string>(words: Readonly<Record<Code, readonly string[]>>) =>
  Object.entries<readonly string[]>(words).flatMap(([code, all]) =>
    all.map((each) => [each, code as Code] as const),
  )

const SOIL_BY_WORDS: ReadonlyMap<string, SoilWord> = new Map([
  ...ENGLISH_SOILS,
  ...byWord(SPANISH_SOIL_WORDS).map(([spanish, english]) => [spanish, englishSoil(english)] as const),
])
const STATE_BY_WORDS: ReadonlyMap<string, string> = new Map([
  ...STATE_WORDS.flatMap(({ words, code }) => words.map((each) => [each, code] as const)),
  ...byWord(SPANISH_STATE_WORDS),
])
const MOISTURE_BY_WORDS: ReadonlyMap<string, Moisture> = new Map([
  ...Object.entries(MOISTURE_WORDS),
  ...byWord(SPANISH_MOISTURE_WORDS),
])
const STONES_BY_WORDS: ReadonlyMap<string, StonesWord> = new Map([
  ...Object.entries(STONES_WORDS),
  ...byWord(SPANISH_STONES_WORDS),
])
const FROZEN: ReadonlySet<string> = new Set([...FROZEN_WORDS, ...SPANISH_FROZEN_WORDS])
const IDLE: ReadonlySet<string> = new Set([...IDLE_WORDS, ...SPANISH_IDLE_WORDS])
const LONGEST_NAME = 4
const MOST_CANDIDATES = 3
const STONES_ORDER: readonly StonesWord[] = ['none', 'few', 'many', 'cobbles']

/** The stonier of two reports; nothing said counts as less than any report. */
export function stonier(a: StonesWord | null, b: StonesWord | null): StonesWord | null {
  if (a === null) return b
  if (b === null) return a
  return STONES_ORDER.indexOf(a) >= STONES_ORDER.indexOf(b) ? a : b
}

/** Single-letter edits between two words. */
function edits(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, i) => i)
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i]
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1
      next.push(Math.min((row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1, (row[j - 1] ?? 0) + same))
    }
    row = next
  }
  return row[b.length] ?? 0
}

/** Soils whose name, or one of its words, is spelled most like what was given. */
function nearest(given: string, unknown: string): readonly Candidate[] {
  const scored = [...SOIL_BY_WORDS].map(([words, soil]) => {
    const byWord = Math.min(...words.split(' ').map((each) => edits(unknown, each) + 0.5))
    return { words, soil, score: Math.min(edits(given, words), byWord) }
  })
  scored.sort((a, b) => a.score - b.score || a.words.length - b.words.length || (a.words < b.words ? -1 : 1))
  return scored.slice(0, MOST_CANDIDATES).map(({ words, soil }) => ({ value: words, means: soil.uscs }))
}

const tokensOf = (phrase: string): readonly string[] =>
  phrase
    .toLowerCase()
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z]+/g, ' ')
    .trim()
    .split(' ')
    .filter((each) => each !== '')

type Found = {
  soils: { readonly name: string; readonly soil: SoilWord }[]
  stateCode: string | null
  moisture: Moisture | null
  stones: StonesWord | null
  frozen: boolean
  /** Words that name one soil here and another there. */
  open: string[]
}

/** Takes in one run of words if the tables know it. */
function takes(found: Found, words: string): boolean {
  const soil = SOIL_BY_WORDS.get(words)
  const state = STATE_BY_WORDS.get(words)
  const moisture = MOISTURE_BY_WORDS.get(words)
  const stones = STONES_BY_WORDS.get(words)
  if (soil) found.soils.push({ name: words, soil })
  else if (state) found.stateCode = state
  else if (moisture) found.moisture = moisture
  else if (stones) found.stones = stonier(found.stones, stones)
  else if (FROZEN.has(words)) found.frozen = true
  else if (Object.hasOwn(SPANISH_OPEN_WORDS, words)) found.open.push(words)
  else return IDLE.has(words)
  return true
}

/** A word of two meanings is a question, with the phrase as it would read for each. */
function askWhich(given: string, tokens: readonly string[], open: string): Outcome<never> {
  const candidates = (SPANISH_OPEN_WORDS[open]?.candidates ?? []).map((word) => ({
    value: tokens.map((each) => (each === open ? word : each)).join(' '),
    means: SOIL_BY_WORDS.get(word)?.uscs ?? '',
  }))
  return refused({ path: 'word', code: 'ask', given, candidates })
}

/** Reads a soil as crews name it: the longest known run of words first, state, moisture and stones out of the same phrase. */
export function readSoilPhrase(phrase: string): Outcome<SoilPhrase> {
  const tokens = tokensOf(phrase)
  const found: Found = { soils: [], stateCode: null, moisture: null, stones: null, frozen: false, open: [] }
  let at = 0
  while (at < tokens.length) {
    let length = Math.min(LONGEST_NAME, tokens.length - at)
    while (length > 0 && !takes(found, tokens.slice(at, at + length).join(' '))) length -= 1
    if (length === 0) {
      const unknown = tokens[at] ?? ''
      return refused({
        path: 'word',
        code: 'unknown-choice',
        given: phrase,
        candidates: nearest(tokens.join(' '), unknown),
        values: { unknown },
      })
    }
    at += length
  }
  if (tokens.length === 0) {
    return refused({ path: 'word', code: 'unknown-choice', given: phrase, candidates: nearest('', '') })
  }
  const open = found.open.find((word) => found.soils.length === 0 || SPANISH_OPEN_WORDS[word]?.weak !== true)
  if (open !== undefined) return askWhich(phrase, tokens, open)
  const strong = found.soils.filter(({ soil }) => soil.weak !== true)
  // Of several soils the stronger resists the tool: the plan is made for it.
  const chosen = [...(strong.length > 0 ? strong : found.soils)].sort((a, b) => b.soil.n - a.soil.n)[0]
  const wordStones = found.soils.reduce<StonesWord | null>(
    (most, { soil }) => stonier(most, soil.stones ?? null),
    null,
  )
  return done({
    soil: chosen?.soil ?? null,
    name: chosen?.name ?? '',
    stateCode: found.stateCode,
    moisture: found.moisture ?? (chosen?.soil.wet ? 'wet' : null),
    stones: stonier(found.stones, wordStones),
    fill: found.soils.some(({ soil }) => soil.fill === true),
    frozen: found.frozen,
    layered: strong.length > 1,
  })
}

/** Candidates for a phrase that names a state but no soil. */
export const soilCandidates = (given: string): readonly Candidate[] => nearest(given, given)
