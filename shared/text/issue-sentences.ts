import type { Kind } from '../core/kinds.ts'
import type { Candidate, Issue, IssueCode } from '../core/outcome.ts'
import { EN_ACCEPTED } from './accepted-phrases.ts'
import { plainCode } from './by-system.ts'
import { EN_ISSUE_PARTS, EN_ISSUES, EN_QUESTIONS } from './en-issues.ts'
import { fill, templateOf } from './fill.ts'
import { isKindName, kindWords } from './kind-words.ts'
import type { BothLanguages, Language, Say, TextValues } from './language.ts'
import { withSpanish } from './learned-languages.ts'
import { saidQuantity } from './say-quantity.ts'

type WithVariants = BothLanguages<keyof typeof EN_ISSUES | IssueCode>
export const ISSUE_TEMPLATES: WithVariants = withSpanish(EN_ISSUES, 'issues')
const QUESTIONS: BothLanguages<keyof typeof EN_QUESTIONS> = withSpanish(EN_QUESTIONS, 'questions')
const PARTS: BothLanguages<keyof typeof EN_ISSUE_PARTS> = withSpanish(EN_ISSUE_PARTS, 'issueParts')
const ACCEPTED: Readonly<Record<Language, Readonly<Record<string, string>>>> = withSpanish(
  EN_ACCEPTED,
  'accepted',
)

/** Figures in a refusal are said in both systems: the reader's is not known at every door. */
const US = 'us' as const
const bothSystems = (lang: Language): { readonly us: Say; readonly si: Say } => ({
  us: { lang, system: US },
  si: { lang, system: 'si' },
})

/** A phrase of what would do, in the reader's language: a kind of quantity, a known phrase, or as it stands. */
function acceptedWords(accepted: string, lang: Language): string {
  if (isKindName(accepted)) return kindWords(accepted, lang)
  const known = ACCEPTED[lang]
  return (Object.hasOwn(known, accepted) ? known[accepted] : undefined) ?? accepted
}

/** What a reading means, in words, where the reading itself does not say it. */
export function candidateMeaning({ value, means }: Candidate, lang: Language): string | null {
  const saysNoMore = means === '' || means.split(', ').every((part) => value.includes(part))
  return saysNoMore || means === 'the nearest known key' ? null : acceptedWords(means, lang)
}

/** The value, and what it means where that says more than the value does. */
function candidateWords(candidate: Candidate, lang: Language): string {
  const meaning = candidateMeaning(candidate, lang)
  return meaning === null ? candidate.value : `${candidate.value} (${meaning})`
}

function orList(items: readonly string[], lang: Language): string {
  const or = PARTS[lang].or
  const last = items.at(-1) ?? ''
  return items.length < 2 ? last : `${items.slice(0, -1).join(', ')} ${or} ${last}`
}

/** Which wording of a code fits what came with it. */
function variantsOf({ given, values = {}, candidates = [] }: Issue): readonly (string | undefined)[] {
  const has = (name: string): boolean => values[name] !== undefined
  return [
    typeof values.reason === 'string' ? values.reason : undefined,
    typeof values.why === 'string' ? values.why : undefined,
    typeof values.datum === 'string' ? values.datum : undefined,
    has('most') || has('max') ? 'most' : undefined,
    has('bundleM') && has('boreM') ? 'sizes' : undefined,
    candidates.length > 0 && candidates.every(({ value }) => value.startsWith(`${given} `))
      ? 'no-unit'
      : undefined,
    given === undefined || given === '' ? 'bare' : 'given',
  ]
}

const SIXTEENTH_M = 0.0254 / 16
const GRACE = 1e-6

/** A limit of a diameter as a rule shows it, never outside what is taken: 25 mm at least is 1 in, not 0.984 in. */
function sixteenthsWithin(valueM: number, side: Side): number {
  const steps = valueM / SIXTEENTH_M
  return (side === 'least' ? Math.ceil(steps - GRACE) : Math.floor(steps + GRACE)) * SIXTEENTH_M
}

type Side = 'least' | 'most'

/** One limit, in both systems where its kind is known: "11-3/4 in (0.30 m)". */
function limitText(value: number | string, kind: string, side: Side, lang: Language): string {
  if (typeof value !== 'number' || !isKindName(kind)) return String(value)
  const { us, si } = bothSystems(lang)
  const inUs = saidQuantity(kind === 'diameter' ? sixteenthsWithin(value, side) : value, kind, us)
  const inSi = saidQuantity(value, kind, si)
  return inUs === inSi ? inUs : `${inUs} (${inSi})`
}

/** Kinds of the fields whose range comes without one. */
const KIND_OF_FIELD: Readonly<Record<string, Kind>> = {
  undrainedStrength: 'stress',
  pocketPenetrometer: 'stress',
  vane: 'stress',
  frictionAngle: 'angle',
  dcp: 'resistancePerBlow',
  waterTable: 'depth',
}

function kindOf({ path, values = {} }: Issue): string {
  if (values.kind !== undefined) return String(values.kind)
  if (values.leastK !== undefined) return 'temperature'
  return KIND_OF_FIELD[path.split('.').at(-1) ?? ''] ?? ''
}

function rangeSentence(issue: Issue, lang: Language): string | null {
  const { code, values = {} } = issue
  if (code !== 'out-of-range') return null
  const kind = kindOf(issue)
  const low = values.min ?? values.least ?? values.leastK
  const high = values.max ?? values.most
  const limits: TextValues = {
    ...(low === undefined ? {} : { min: limitText(low, kind, 'least', lang) }),
    ...(high === undefined ? {} : { max: limitText(high, kind, 'most', lang) }),
  }
  if (low === undefined && high === undefined) return null
  const part = high === undefined ? 'atLeast' : low === undefined ? 'atMost' : 'between'
  return fill(PARTS[lang][part], limits, { lang, system: US })
}

const NEEDS: readonly IssueCode[] = ['required', 'inputs-conflict', 'not-available', 'not-json']

function acceptedSentence({ code, accepted }: Issue, lang: Language): string | null {
  if (accepted === undefined || accepted === '') return null
  const part = NEEDS.includes(code) ? 'needed' : 'accepted'
  return fill(PARTS[lang][part], { list: acceptedWords(accepted, lang) }, { lang, system: US })
}

const BARE_NUMBER = /^[\d\s.,/-]+$/

/** The question a field asks, when it has one of its own; a number without a unit is asked for its unit. */
function questionOf({ code, path, given }: Issue, lang: Language): string | null {
  if (code !== 'ask' || (given !== undefined && BARE_NUMBER.test(given))) return null
  for (const [ending, question] of Object.entries(QUESTIONS[lang])) {
    if (path === ending || path.endsWith(`.${ending}`)) return question
  }
  return null
}

/** What is wrong with what was given, and what would do; for a place where the readings stand beside it, to be taken. */
export function issueWithoutReadings(issue: Issue, lang: Language): string {
  const { us } = bothSystems(lang)
  const values: TextValues = { ...issue.values, ...(issue.given === undefined ? {} : { given: issue.given }) }
  const most = values.most ?? values.max
  const template = templateOf(ISSUE_TEMPLATES[lang], issue.code, variantsOf(issue))
  const what =
    questionOf(issue, lang) ??
    fill(template ?? `${plainCode(issue.code)}.`, most === undefined ? values : { ...values, most }, us)
  return [what, rangeSentence(issue, lang), acceptedSentence(issue, lang)]
    .filter((part) => part !== null)
    .join(' ')
}

/**
 * What is wrong with what was given, what would do, and what may have been meant. The place is not in it: it stands
 * beside the field, or after the path.
 */
export function issueSentence(issue: Issue, lang: Language): string {
  const candidates = (issue.candidates ?? []).map((each) => candidateWords(each, lang))
  if (candidates.length === 0) return issueWithoutReadings(issue, lang)
  const part = questionOf(issue, lang) === null ? 'didYouMean' : 'answers'
  const meant = fill(PARTS[lang][part], { list: orList(candidates, lang) }, bothSystems(lang).us)
  return `${issueWithoutReadings(issue, lang)} ${meant}`
}
