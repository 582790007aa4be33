import type { Kind } from '../core/kinds.ts'
import { inchesText } from '../quantities/feet-and-inches.ts'
import { formatProbability, type ProbabilityWords } from '../quantities/format-probability.ts'
import { formatQuantity, NO_NUMBER } from '../quantities/format-quantity.ts'
import { unitOfKind } from '../quantities/unit-spelling.ts'
import { fromSi } from '../quantities/units.ts'
import type { Language, Say } from './language.ts'

/** Unit names that are words, and so differ by language; signs such as psi, ft and bar do not. */
const ES_UNITS: readonly (readonly [RegExp, string])[] = [
  [/blows\/min\b/, 'golpes/min'],
  [/\/blow\b/, '/golpe'],
]

/** A quantity with its unit, for a sentence. */
export function saidQuantity(valueSi: number, kind: Kind, say: Say): string {
  const text = formatQuantity(valueSi, kind, say.system)
  return say.lang === 'en' ? text : ES_UNITS.reduce((said, [unit, word]) => said.replace(unit, word), text)
}

const ES_PROBABILITY: ProbabilityWords = {
  underOneInThousand: 'menos de 1 en 1,000',
  underOnePercent: 'menos de 1 %',
  overNinetyNinePercent: 'más de 99 %',
}

/** A chance in percent. */
export const saidChance = (probability: number, lang: Language): string =>
  (lang === 'es' ? formatProbability(probability, ES_PROBABILITY) : formatProbability(probability)) ??
  NO_NUMBER

const ODDS_WORDS: Readonly<
  Record<Language, { readonly one: string; readonly ten: string; readonly rare: string }>
> = {
  en: { one: '1 in', ten: 'in 10', rare: 'fewer than 1 in 1,000' },
  es: { one: '1 de cada', ten: 'de cada 10', rare: 'menos de 1 de cada 1,000' },
}
/** Above this, "1 in 2" is coarser than tenths. */
export const ODDS_IN_TENTHS_FROM = 0.3
const RARE = 0.001

/** A chance as a crew says it: 1 in 15, 4 in 10. Never none, never all. */
export function saidOdds(probability: number, lang: Language): string {
  if (!(probability >= 0 && probability <= 1)) return NO_NUMBER
  const words = ODDS_WORDS[lang]
  if (probability <= RARE) return words.rare
  if (probability < ODDS_IN_TENTHS_FROM) return `${words.one} ${Math.round(1 / probability)}`
  return `${Math.min(9, Math.round(probability * 10))} ${words.ten}`
}

const INCH = unitOfKind('in', 'length')
/** To six feet a tape in a hole is read in inches. */
const INCHES_TO_M = 1.8288
const EIGHTHS = 8
const INCH_M = 0.0254
const CENTIMETRE_M = 0.01

/** A depth read off a tape in a test hole: inches and eighths, or centimetre-fine metres. */
export function saidTapeDepth(depthM: number, say: Say): string {
  if (say.system === 'si' || !INCH || !(Math.abs(depthM) < INCHES_TO_M))
    return saidQuantity(depthM, 'depth', say)
  return inchesText(fromSi(depthM, INCH), EIGHTHS)
}

const FOOT_M = 12 * INCH_M

/** A size nobody measured and nobody laid out: 24 in for 0.6 m, not 23-5/8; a quarter of a foot from there on. */
export function saidRoughly(lengthM: number, say: Say): string {
  if (say.system === 'si' || lengthM < INCH_M) return saidQuantity(lengthM, 'length', say)
  const stepM = lengthM < FOOT_M ? INCH_M : 3 * INCH_M
  return saidQuantity(Math.round(lengthM / stepM) * stepM, 'length', say)
}

/** Past this a difference is a rounding of the sum, not a length. */
const GRACE = 1e-6

/** The same to the safe side: what is missing or needed rounded up, what there is rounded down. */
export function saidTapeSafely(depthM: number, side: 'up' | 'down', say: Say): string {
  const quarter = INCH_M / 4
  const stepM =
    say.system === 'si' ? CENTIMETRE_M : Math.abs(depthM) < INCHES_TO_M ? INCH_M / EIGHTHS : quarter
  const steps = depthM / stepM
  const whole = side === 'up' ? Math.ceil(steps - GRACE) : Math.floor(steps + GRACE)
  return saidTapeDepth(whole * stepM, say)
}

/** Fall of a line that must run by itself: inches per foot, or percent. */
export function saidGrade(fallPerLength: number, say: Say): string {
  const each = say.lang === 'es' ? 'por pie' : 'per ft'
  if (say.system === 'us') return `${inchesText(fallPerLength * 12, 16)} ${each}`
  return `${Number((fallPerLength * 100).toPrecision(2))} %`
}

/** Room around a pipe as the volume it takes to fill: gallons per foot, or litres per metre. */
export function saidVolumePerLength(areaM2: number, say: Say): string {
  const footM = 0.3048
  const perLengthM = say.system === 'us' ? footM : 1
  const unit = say.system === 'us' ? 'gal' : 'L'
  const volume = formatQuantity(areaM2 * perLengthM, 'volume', say.system, { unit, digits: 2 })
  if (say.lang === 'en') return `${volume} per ${say.system === 'us' ? 'ft' : 'm'}`
  return `${volume} por ${say.system === 'us' ? 'pie' : 'metro'}`
}
