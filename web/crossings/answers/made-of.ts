import type { ClearancePart, Plan, PricePart } from '../../../shared/core/plan/plan.ts'
import { formatMoney } from '../../../shared/quantities/format-money.ts'
import { assumedValue, assumptionName } from '../../../shared/text/assumption-words.ts'
import { planWord } from '../../../shared/text/plan-words.ts'
import { shown, shownNumber } from '../../fields/shown.ts'
import { say } from '../../state/unit-choice.ts'
import { ANSWERS } from '../../words/answer-words.ts'
import { FURTHER } from '../../words/further-words.ts'
import type { MadeOf } from './working-shown.ts'

const W = FURTHER.made
export const WHOLE_UNITS = 100

const assumed = (plan: Plan, names: readonly string[]): readonly MadeOf[] =>
  plan.assumptions
    .filter(({ name }) => names.includes(name))
    .map((each) => ({
      name: assumptionName(each.name, say.value),
      value: assumedValue(each, say.value),
      standing: each.standing,
    }))

/** Nearer than this to the launch, a station is the launch. */
const AT_LAUNCH_M = 0.01

export const placeOfCover = (stationM: number): string =>
  stationM < AT_LAUNCH_M ? FURTHER.bore.atLaunch : `${FURTHER.bore.coverAt} ${shown(stationM, 'length')}`

/** Cover and what each surface asks for it. */
export const madeOfCover = ({ bore }: Plan): readonly MadeOf[] => [
  {
    name: FURTHER.bore.cover,
    value: `${shown(bore.coverM, 'depth')}, ${placeOfCover(bore.coverAtM)}`,
  },
  { name: FURTHER.bore.diameter, value: shown(bore.diameterM, 'diameter') },
  { name: FURTHER.bore.coverRatio, value: `${shownNumber(bore.coverRatio)} ×` },
  ...bore.coverByReach.map(
    (reach): MadeOf => ({
      name: W.wanted(planWord('surface', reach.kind, say.value)),
      value: `${shown(reach.wantedM, 'depth')} (${FURTHER.bore.verdict[reach.verdict]})`,
      standing: 'common practice',
    }),
  ),
]

/** The lines of the likely case and their sum. */
export function madeOfPrice(price: PricePart): readonly MadeOf[] {
  const money = (minorUnits: number) => formatMoney(minorUnits, price.currency, WHOLE_UNITS)
  const sum = price.lines.reduce((all, { minorUnits }) => all + minorUnits, 0)
  return [
    ...price.lines.map(({ code, minorUnits }) => ({
      name: planWord('priceLine', code, say.value),
      value: money(minorUnits),
    })),
    { name: W.sum, value: money(sum) },
    { name: FURTHER.price.likely, value: money(price.p50MinorUnits) },
    { name: FURTHER.price.high, value: money(price.p80MinorUnits) },
    { name: ANSWERS.quoted, value: money(price.quotedMinorUnits) },
  ]
}

const LIFE_OF: Readonly<Record<string, string>> = {
  'body-and-nose': 'wear.bodyLifeMediumSoil',
  rings: 'wear.ringLife',
  valve: 'wear.valveLife',
  hose: 'wear.hoseLife',
  'strip-down': 'service.stripInterval',
}

/** What drives the wear of one part, and the life it is held against. */
export function madeOfWear(plan: Plan, part: string): readonly MadeOf[] {
  const found = plan.wear.find((each) => each.part === part)
  const names = [LIFE_OF[part] ?? '', 'wear.spread', 'wear.startsFresh', 'air.lubricator']
  return [
    ...(found === undefined
      ? []
      : [{ name: W.usedUp, value: `${shownNumber(Math.round(found.usedFraction * 100))} %` }]),
    { name: W.hammer, value: shown(plan.run.hammerTimeS?.p50 ?? null, 'duration') },
    { name: FURTHER.bore.length, value: shown(plan.bore.lengthM, 'length') },
    { name: ANSWERS.air.tool, value: shown(plan.air.toolGaugePa, 'gaugePressure') },
    ...assumed(plan, names),
  ]
}

/** The gap a line needs: what its owner or we ask, and what may be wrong with each measure. */
export const madeOfClearance = ({ parts }: ClearancePart): readonly MadeOf[] => [
  { name: W.standard, value: shown(parts.standardM, 'length') },
  { name: W.drift, value: shown(parts.driftM, 'length') },
  { name: W.exposure, value: shown(parts.exposureM, 'length') },
  { name: W.layout, value: shown(parts.layoutM, 'length') },
  {
    name: W.required,
    value: shown(parts.standardM + parts.driftM + parts.exposureM + parts.layoutM, 'length'),
  },
]
