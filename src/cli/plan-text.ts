import type { Spread } from '../../shared/core/plan/plan.ts'
import { formatMoney } from '../../shared/quantities/format-money.ts'
import { formatProbability } from '../../shared/quantities/format-probability.ts'
import { formatQuantity, NO_NUMBER, type UnitSystem } from '../../shared/quantities/format-quantity.ts'
import type { Language } from '../../shared/text/language.ts'
import { PLAN_TABLE_WORDS, type PlanTableWords } from '../../shared/text/plan-table-words.ts'
import type { PlanDocument } from '../plan-document.ts'
import { columns } from './answer.ts'
import { valuesText, workingsText } from './workings-text.ts'

type Row = readonly string[]
type Part = (plan: PlanDocument, words: PlanTableWords, units: UnitSystem) => readonly Row[]

const chance = (probability: number | null): string =>
  probability === null ? NO_NUMBER : (formatProbability(probability) ?? NO_NUMBER)

const lengthOrNothing = (valueM: number | null, units: UnitSystem): string =>
  valueM === null ? NO_NUMBER : formatQuantity(valueM, 'length', units)

const boreRows: Part = ({ bore }, words, units) => [
  [words.length, formatQuantity(bore.lengthM, 'length', units)],
  [words.boreDiameter, formatQuantity(bore.diameterM, 'diameter', units)],
  [
    words.leastCover,
    `${formatQuantity(bore.coverM, 'depth', units)} (${formatQuantity(bore.coverRatio, 'ratio', units)} ×), ${words.station} ${formatQuantity(bore.coverAtM, 'length', units)}`,
  ],
]

const airRows: Part = ({ air }, words, units) => [
  [words.atCompressor, formatQuantity(air.compressorGaugePa, 'gaugePressure', units)],
  [words.hoseLoss, formatQuantity(air.hoseLossPa, 'pressureDifference', units)],
  [words.atTool, formatQuantity(air.toolGaugePa, 'gaugePressure', units)],
  [words.demand, formatQuantity(air.demandM3PerS, 'volumeFlow', units)],
  [words.capacity, formatQuantity(air.capacityM3PerS, 'volumeFlow', units)],
  [words.limitedBy, air.limitedBy],
]

function timeRow(label: string, time: Spread | null, units: UnitSystem): readonly Row[] {
  if (time === null) return []
  return [[label, ...[time.p10, time.p50, time.p90].map((value) => formatQuantity(value, 'duration', units))]]
}

const runRows: Part = ({ run }, words, units) => {
  // A good day is a fast one: the high end of the rate, the low end of the times.
  const rate = [run.advanceMPerS.p90, run.advanceMPerS.p50, run.advanceMPerS.p10]
  return [
    ['', words.goodDay, words.likely, words.badDay],
    [words.advance, ...rate.map((value) => formatQuantity(value, 'speed', units))],
    ...timeRow(words.hammerTime, run.hammerTimeS, units),
    ...timeRow(words.boreTime, run.boreTimeS, units),
    ...timeRow(words.crossingTime, run.crossingTimeS, units),
    ...(run.timeReason === null ? [] : [[words.tooFewArrive]]),
    [words.giveUp, formatQuantity(run.giveUpTimeS, 'duration', units)],
    [words.arrives, chance(run.arrivalProbability)],
    [words.stalls, chance(run.refusalProbability)],
  ]
}

const pathRows: Part = ({ deviation }, words, units) => {
  const pair = ({ p50, p90 }: { readonly p50: number; readonly p90: number }) =>
    [p50, p90].map((value) => formatQuantity(value, 'length', units))
  return [
    [words.leftRight, ...pair(deviation.lateralM)],
    [words.highLow, ...pair(deviation.verticalM)],
    [words.hits, chance(deviation.hitProbability)],
  ]
}

const groundRows: Part = ({ ground }, words, units) => [
  [
    words.heave,
    ...[ground.heaveM.p10, ground.heaveM.p50, ground.heaveM.p90].map((value) =>
      formatQuantity(value, 'movement', units),
    ),
  ],
]

const lineRows: Part = ({ clearances }, words, units) =>
  clearances.length === 0
    ? []
    : [
        ['', words.station, words.separation, words.required, words.contact],
        ...clearances.map((each) => [
          each.kind,
          lengthOrNothing(each.stationM, units),
          lengthOrNothing(each.separationM, units),
          formatQuantity(each.requiredM, 'length', units),
          chance(each.contactProbability),
        ]),
      ]

const priceRows: Part = ({ price }, words) => {
  if (price === undefined) return []
  const money = (minorUnits: number) => formatMoney(minorUnits, price.currency)
  return [
    ['P50', money(price.p50MinorUnits)],
    ['P80', money(price.p80MinorUnits)],
    [words.quoted, money(price.quotedMinorUnits)],
    ...(price.invented ? [[words.invented]] : []),
  ]
}

const assumedRows: Part = ({ assumptions }) =>
  assumptions.map(({ name, value, unit, standing }) => [
    name,
    `${value}${unit === '' || unit === '1' ? '' : ` ${unit}`}`,
    standing,
  ])

const PARTS: readonly (readonly [keyof PlanTableWords, Part])[] = [
  ['bore', boreRows],
  ['air', airRows],
  ['run', runRows],
  ['path', pathRows],
  ['ground', groundRows],
  ['lines', lineRows],
  ['price', priceRows],
  ['assumed', assumedRows],
]

/** A plan as a page of text: first whether it is held and why, last what was assumed. */
export function planText(
  plan: PlanDocument,
  options: { readonly units: UnitSystem; readonly language: Language; readonly working: boolean },
): string {
  const words = PLAN_TABLE_WORDS[options.language]
  const reasons = plan.release.reasons.map(({ kind, code, values }) => [
    `  ${kind}`,
    code,
    valuesText(values),
  ])
  const head = `${plan.name}\n${words[plan.release.status]}\n${columns(reasons)}${words.neverReady}\n`
  const parts = PARTS.map(([heading, part]) => {
    const rows = part(plan, words, options.units)
    return rows.length === 0
      ? ''
      : `\n${words[heading]}\n${columns(rows.map((row) => [`  ${row[0] ?? ''}`, ...row.slice(1)]))}`
  })
  const working = options.working ? `\n${words.working}\n${workingsText(plan.workings)}` : ''
  return `${head}${parts.join('')}${working}`
}
