import type { Spread } from '../../shared/core/plan/plan.ts'
import { formatMoney } from '../../shared/quantities/format-money.ts'
import { formatQuantity, NO_NUMBER, type UnitSystem } from '../../shared/quantities/format-quantity.ts'
import { assumedValue, assumptionName } from '../../shared/text/assumption-words.ts'
import { cautionSentence } from '../../shared/text/caution-sentences.ts'
import { checklistSentence } from '../../shared/text/checklist-sentences.ts'
import type { Language, Say } from '../../shared/text/language.ts'
import { PLAN_TABLE_WORDS, type PlanTableWords } from '../../shared/text/plan-table-words.ts'
import { planWord } from '../../shared/text/plan-words.ts'
import { releaseSentence, statusMeaning, statusWord } from '../../shared/text/release-sentences.ts'
import { saidChance } from '../../shared/text/say-quantity.ts'
import { verdictSentence } from '../../shared/text/verdict-sentence.ts'
import type { PlanDocument } from '../plan-document.ts'
import { columns } from './answer.ts'
import { workingsText } from './workings-text.ts'

type Row = readonly string[]
type Part = (plan: PlanDocument, words: PlanTableWords, units: UnitSystem, say: Say) => readonly Row[]

const chance = (probability: number | null, say: Say): string =>
  probability === null ? NO_NUMBER : saidChance(probability, say.lang)

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

const airRows: Part = ({ air }, words, units, say) => [
  [words.atCompressor, formatQuantity(air.compressorGaugePa, 'gaugePressure', units)],
  [words.hoseLoss, formatQuantity(air.hoseLossPa, 'pressureDifference', units)],
  [words.atTool, formatQuantity(air.toolGaugePa, 'gaugePressure', units)],
  [words.demand, formatQuantity(air.demandM3PerS, 'volumeFlow', units)],
  [words.capacity, formatQuantity(air.capacityM3PerS, 'volumeFlow', units)],
  [words.limitedBy, planWord('limitedBy', air.limitedBy, say)],
]

function timeRow(label: string, time: Spread | null, units: UnitSystem): readonly Row[] {
  if (time === null) return []
  return [[label, ...[time.p10, time.p50, time.p90].map((value) => formatQuantity(value, 'duration', units))]]
}

const runRows: Part = ({ run }, words, units, say) => {
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
    [words.arrives, chance(run.arrivalProbability, say)],
    [words.stalls, chance(run.refusalProbability, say)],
  ]
}

const pathRows: Part = ({ deviation }, words, units, say) => {
  const pair = ({ p50, p90 }: { readonly p50: number; readonly p90: number }) =>
    [p50, p90].map((value) => formatQuantity(value, 'length', units))
  return [
    [words.leftRight, ...pair(deviation.lateralM)],
    [words.highLow, ...pair(deviation.verticalM)],
    [words.hits, chance(deviation.hitProbability, say)],
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

const lineRows: Part = ({ clearances }, words, units, say) =>
  clearances.length === 0
    ? []
    : [
        ['', words.station, words.separation, words.required, words.contact],
        ...clearances.map((each) => [
          planWord('utility', each.kind, say),
          lengthOrNothing(each.stationM, units),
          lengthOrNothing(each.gapM, units),
          formatQuantity(each.requiredM, 'length', units),
          chance(each.contactProbability, say),
        ]),
      ]

const priceRows: Part = ({ price }, words) => {
  if (price === undefined) return []
  const money = (minorUnits: number) => formatMoney(minorUnits, price.currency, price.stepMinorUnits)
  return [
    ['P50', money(price.p50MinorUnits)],
    ['P80', money(price.p80MinorUnits)],
    [words.quoted, money(price.quotedMinorUnits)],
    ...(price.invented ? [[words.invented]] : []),
  ]
}

const assumedRows: Part = ({ assumptions }, _words, _units, say) =>
  assumptions.map((each) => [
    assumptionName(each.name, say),
    assumedValue(each, say),
    planWord('standing', each.standing, say),
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
  const say: Say = { lang: options.language, system: options.units }
  const { status, reasons } = plan.release
  const why = reasons.map((reason) => `  - ${releaseSentence(reason, say)}\n`).join('')
  const head = `${plan.name}\n${statusWord(status, options.language).toUpperCase()}: ${statusMeaning(status, options.language)}\n${why}\n${verdictSentence(plan, say)}\n`
  const parts = PARTS.map(([heading, part]) => {
    const rows = part(plan, words, options.units, say).map(([label = '', ...cells]) => [
      `  ${label}`,
      ...cells,
    ])
    return rows.length === 0 ? '' : `\n${words[heading]}\n${columns(rows)}`
  })
  const checks = plan.checklist.map((item) => `  [ ] ${checklistSentence(item, say)}\n`).join('')
  const cautions = plan.cautions.map((caution) => `  - ${cautionSentence(caution, say)}\n`).join('')
  const working = options.working ? `\n${words.working}\n${workingsText(plan.workings)}` : ''
  return `${head}\n${words.cautions}\n${cautions}${parts.join('')}\n${words.checklist}\n${checks}${working}\n${words.neverReady}\n`
}
