import type { Spread } from '../../shared/core/plan/plan.ts'
import { formatMoney } from '../../shared/quantities/format-money.ts'
import { formatQuantity, NO_NUMBER, type UnitSystem } from '../../shared/quantities/format-quantity.ts'
import { assumedValue, assumptionName } from '../../shared/text/assumption-words.ts'
import type { Say } from '../../shared/text/language.ts'
import { proposalSentence, toExposeSentence } from '../../shared/text/path-sentences.ts'
import { pipeName } from '../../shared/text/pipe-name.ts'
import type { PlanTableWords } from '../../shared/text/plan-table-words.ts'
import { planWord } from '../../shared/text/plan-words.ts'
import { priceQuantity } from '../../shared/text/price-quantity.ts'
import { saidChance, saidTapeSafely } from '../../shared/text/say-quantity.ts'
import type { PlanDocument } from '../plan-document.ts'

type Row = readonly string[]
export type Part = (plan: PlanDocument, words: PlanTableWords, units: UnitSystem, say: Say) => readonly Row[]

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

/** From the worst hose to the best, where that shows. */
function bandCells({ band }: PlanDocument['air'], units: UnitSystem): Row {
  if (band === undefined) return []
  const low = band.lowGaugePa === null ? NO_NUMBER : formatQuantity(band.lowGaugePa, 'gaugePressure', units)
  const high = formatQuantity(band.highGaugePa, 'gaugePressure', units)
  return low === high ? [] : [`${low} – ${high}`]
}

const airRows: Part = ({ air }, words, units, say) => [
  [words.atCompressor, formatQuantity(air.compressorGaugePa, 'gaugePressure', units)],
  [words.hoseLoss, formatQuantity(air.hoseLossPa, 'pressureDifference', units)],
  [words.atTool, formatQuantity(air.toolGaugePa, 'gaugePressure', units), ...bandCells(air, units)],
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

const lineRows: Part = (plan, words, units, say) =>
  plan.clearances.length === 0
    ? []
    : [
        ['', words.station, words.separation, words.required, words.contact],
        ...plan.clearances.map((each) => [
          planWord('utility', each.kind, say),
          lengthOrNothing(each.stationM, units),
          each.gapM === null ? NO_NUMBER : saidTapeSafely(each.gapM, 'down', say),
          saidTapeSafely(Math.max(0, each.requiredM - plan.bore.diameterM / 2), 'up', say),
          chance(each.contactProbability, say),
        ]),
      ]

const priceRows: Part = ({ price }, words, _units, say) => {
  if (price === undefined) return []
  const money = (minorUnits: number) => formatMoney(minorUnits, price.currency, price.stepMinorUnits)
  return [
    ['P50', money(price.p50MinorUnits)],
    ['P80', money(price.p80MinorUnits)],
    [words.quoted, money(price.quotedMinorUnits)],
    ...(price.invented ? [[words.invented]] : []),
    ...price.lines.map((line) => [
      planWord('priceLine', line.code, say),
      priceQuantity(line, say),
      money(line.minorUnits),
    ]),
  ]
}

const pipeRows: Part = ({ pipes, pull, bore }, words, units, say) => [
  [words.pull, pull.method === null ? words.noPull : planWord('pull', pull.method, say)],
  [words.bundle, formatQuantity(bore.bundleDiameterM, 'diameter', units), planWord('fit', bore.fit, say)],
  ...pipes.map((pipe) => [
    `${pipe.count} × ${pipeName(pipe.pipe, say)}`,
    `${words.coilNeeded} ${formatQuantity(pipe.coilNeededM, 'length', units)}`,
    pipe.pullLimitN === null ? '' : `${words.pullLimit} ${formatQuantity(pipe.pullLimitN, 'force', units)}`,
  ]),
  ...pull.others.map((other) => [
    `  ${planWord('pull', other.method, say)}`,
    planWord('pullWhy', other.why, say),
  ]),
]

const shotRows: Part = ({ shots }, words, units, say) =>
  shots.length < 2
    ? []
    : [
        ['', words.hammerTime, words.arrives, words.hits],
        ...shots.map((shot) => [
          `${formatQuantity(shot.fromM, 'length', units)} – ${formatQuantity(shot.toM, 'length', units)}`,
          shot.run.hammerTimeS === null
            ? NO_NUMBER
            : formatQuantity(shot.run.hammerTimeS.p50, 'duration', units),
          chance(shot.run.arrivalProbability, say),
          chance(shot.deviation.hitProbability, say),
        ]),
      ]

const pitRows: Part = ({ pits, crew }, words, units) => [
  ...pits.map((pit) => [
    `${words[pit.serves]} ${words.station} ${formatQuantity(pit.atM, 'length', units)}`,
    `${words.floor} ${formatQuantity(pit.floorDepthM, 'depth', units)}`,
    pit.shored ? words.shored : '',
  ]),
  [words.people, String(crew.people), crew.watchers === 0 ? '' : `${words.watchers} ${crew.watchers}`],
]

const assumedRows: Part = ({ assumptions }, _words, _units, say) =>
  assumptions.map((each) => [
    assumptionName(each.name, say),
    assumedValue(each, say),
    planWord('standing', each.standing, say),
  ])

const roomRows: Part = (plan, _words, _units, say) =>
  plan.proposals.map((each) => [`- ${proposalSentence(each, say)}`])

const exposeRows: Part = (plan, _words, _units, say) =>
  plan.toExpose.map((each, place) => [`${place + 1}. ${toExposeSentence(each, say)}`])

const seenRows: Part = ({ shots }, words, units, say) => {
  const seen = shots.flatMap((shot) => shot.path.observations)
  if (seen.length === 0) return []
  return [
    ['', words.station, words.right, words.low, words.readingError],
    ...seen.map((each) => [
      planWord('lookedBy', each.method, say),
      formatQuantity(each.stationM, 'length', units),
      lengthOrNothing(each.rightM, units),
      lengthOrNothing(each.lowM, units),
      formatQuantity(each.errorM, 'length', units),
    ]),
  ]
}

/** Headings and their rows, in the order a reader needs them. */
export const PARTS: readonly (readonly [keyof PlanTableWords, Part])[] = [
  ['bore', boreRows],
  ['air', airRows],
  ['run', runRows],
  ['shots', shotRows],
  ['path', pathRows],
  ['ground', groundRows],
  ['seen', seenRows],
  ['lines', lineRows],
  ['expose', exposeRows],
  ['room', roomRows],
  ['pipe', pipeRows],
  ['pits', pitRows],
  ['price', priceRows],
  ['assumed', assumedRows],
]
