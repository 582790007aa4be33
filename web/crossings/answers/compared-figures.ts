import type { Kind } from '../../../shared/core/kinds.ts'
import type { Plan } from '../../../shared/core/plan/plan.ts'
import { formatMoney } from '../../../shared/quantities/format-money.ts'
import { NO_NUMBER } from '../../../shared/quantities/format-quantity.ts'
import { statusWord } from '../../../shared/text/release-sentences.ts'
import { shown, shownChance, shownNumber } from '../../fields/shown.ts'
import { say } from '../../state/unit-choice.ts'
import { ANSWERS } from '../../words/answer-words.ts'
import { WHOLE_UNITS } from './made-of.ts'

const W = ANSWERS.compare

export type ComparedFigure = {
  readonly name: string
  readonly a: string
  readonly now: string
  /** In words and sign; the words for "the same" where both read alike. */
  readonly difference: string
  readonly hasMoved: boolean
}

type Compared = {
  readonly name: string
  readonly of: (plan: Plan) => number | null
  readonly text: (value: number | null) => string
  /** As fine as it is shown, so that a reader who takes one from the other finds the same. */
  readonly asShown?: (value: number) => number
  /** What it moved by, without a sign. */
  readonly by: (difference: number) => string
  readonly more: string
  readonly less: string
}

const quantity = (kind: Kind, differenceKind = kind) => ({
  text: (value: number | null) => shown(value, kind),
  by: (difference: number) => shown(difference, differenceKind),
})
const SHORT_S = 7200
const MINUTE_S = 60
const FIVE_MINUTES_S = 300
/** Below this a time is shown in seconds; a whole minute between two longer ones is not. */
const SECONDS_TO_S = 120
/** Spelt alike in both languages. */
const ONE_MINUTE = '1 min'
/** Times are shown to the minute under two hours, else to five. */
const time = {
  ...quantity('duration'),
  by: (differenceS: number) => (differenceS === MINUTE_S ? ONE_MINUTE : shown(differenceS, 'duration')),
  asShown: (timeS: number) => {
    const stepS = timeS < SECONDS_TO_S ? 1 : timeS < SHORT_S ? MINUTE_S : FIVE_MINUTES_S
    return Math.round(timeS / stepS) * stepS
  },
}
const HIGHER = () => ({ more: W.higher, less: W.lower })
const LONGER = () => ({ more: W.longer, less: W.shorter })
const MORE = () => ({ more: W.more, less: W.less })

function leastGap({ clearances }: Plan): number | null {
  const gaps = clearances.map(({ gapM }) => gapM).filter((gapM) => gapM !== null)
  return gaps.length === 0 ? null : Math.min(...gaps)
}

const money = (currency: string) => ({
  text: (value: number | null) => (value === null ? NO_NUMBER : formatMoney(value, currency, WHOLE_UNITS)),
  by: (difference: number) => formatMoney(difference, currency, WHOLE_UNITS),
})
const chance = {
  text: shownChance,
  by: (difference: number) => `${shownNumber(Math.round(difference * 100))} ${W.points}`,
}
const count = {
  text: (value: number | null) => (value === null ? NO_NUMBER : shownNumber(value)),
  by: (difference: number) => shownNumber(difference),
}

const comparedOf = (currency: string): readonly Compared[] => [
  { name: W.reasons, of: (plan) => plan.release.reasons.length, ...count, ...MORE() },
  { name: W.hammer, of: (plan) => plan.run.hammerTimeS?.p50 ?? null, ...time, ...LONGER() },
  {
    name: W.crossing,
    of: (plan) => plan.run.crossingTimeS?.p50 ?? null,
    ...time,
    ...LONGER(),
  },
  { name: W.badDay, of: (plan) => plan.run.crossingTimeS?.p90 ?? null, ...time, ...LONGER() },
  { name: W.arrives, of: (plan) => plan.run.arrivalProbability, ...chance, ...MORE() },
  {
    name: W.pressure,
    of: (plan) => plan.air.toolGaugePa,
    ...quantity('gaugePressure', 'pressureDifference'),
    ...HIGHER(),
  },
  { name: W.cover, of: (plan) => plan.bore.coverM, ...quantity('depth'), ...MORE() },
  { name: W.gap, of: leastGap, ...quantity('length'), ...MORE() },
  {
    name: W.price,
    of: (plan) => plan.price?.quotedMinorUnits ?? null,
    ...money(currency),
    more: W.dearer,
    less: W.cheaper,
  },
]

function differenceOf(figure: Compared, a: number | null, now: number | null): string {
  if (a === null || now === null) return W.changed
  const { by, more, less, asShown = (value) => value } = figure
  const difference = asShown(now) - asShown(a)
  return difference > 0 ? `+${by(difference)} ${more}` : `−${by(-difference)} ${less}`
}

function row(figure: Compared, a: Plan, now: Plan): ComparedFigure {
  const [aValue, nowValue] = [figure.of(a), figure.of(now)]
  const [aText, nowText] = [figure.text(aValue), figure.text(nowValue)]
  // What reads alike is the same: a difference below the last digit shown is none to a reader.
  const hasMoved = aText !== nowText
  const difference = hasMoved ? differenceOf(figure, aValue, nowValue) : W.same
  return { name: figure.name, a: aText, now: nowText, difference, hasMoved }
}

/** The figures a choice between two ways is made by, A beside what stands now. */
export function comparedFigures(a: Plan, now: Plan): readonly ComparedFigure[] {
  const [aStatus, nowStatus] = [a, now].map(({ release }) => statusWord(release.status, say.value.lang))
  const hasMoved = aStatus !== nowStatus
  const status = { name: W.status, a: aStatus ?? '', now: nowStatus ?? '', hasMoved }
  const currency = now.price?.currency ?? a.price?.currency ?? ''
  return [
    { ...status, difference: hasMoved ? W.changed : W.same },
    ...comparedOf(currency).map((figure) => row(figure, a, now)),
  ]
}
