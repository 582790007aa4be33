import { allHoses } from '../../shared/core/plan/air-input.ts'
import type { CrossingInput } from '../../shared/core/plan/crossing-input.ts'
import type { Plan, Spread } from '../../shared/core/plan/plan.ts'
import { asSentence } from '../../shared/text/by-system.ts'
import { pipeName } from '../../shared/text/pipe-name.ts'
import { planWord } from '../../shared/text/plan-words.ts'
import { groundWords } from '../../shared/text/soil-words.ts'
import { placeOfCover } from '../crossings/answers/made-of.ts'
import { shown, shownChance, shownNumber, shownSpread } from '../fields/shown.ts'
import { say } from '../state/unit-choice.ts'
import { ANSWERS } from '../words/answer-words.ts'
import { FURTHER } from '../words/further-words.ts'
import { sheetWord } from './sheet-words.ts'

type Props = { readonly plan: Plan; readonly input: CrossingInput }
type Entry = readonly [label: string, value: string]

const DOT = ' · '
const NO_BREAK = '\u00a0'
/** Broken between the days, never inside one. */
const days = (spread: Spread | null): string =>
  shownSpread(spread, 'duration', 'is-worse')
    .map((day) => day.replaceAll(' ', NO_BREAK))
    .join(DOT)

function materialOf({ plan, input }: Props): readonly Entry[] {
  const { bore, pipes, pull } = plan
  const words = say.value
  const hoses = allHoses(input.air).map(
    ({ boreM, lengthM }) => `${shown(boreM, 'diameter')} × ${shown(lengthM, 'length')}`,
  )
  const { freeAirDeliveryM3PerS, gaugePa } = input.air.compressor
  const method = pull.method === null ? FURTHER.pipe.noMethod : planWord('pull', pull.method, words)
  return [
    [FURTHER.bore.length, shown(bore.lengthM, 'length')],
    [FURTHER.bore.diameter, shown(bore.diameterM, 'diameter')],
    [FURTHER.bore.cover, `${shown(bore.coverM, 'depth')}, ${placeOfCover(bore.coverAtM)}`],
    [sheetWord('ground', words), asSentence(groundWords(plan.shots, words))],
    ...pipes.map(
      ({ pipe, count }): Entry => [
        sheetWord('pipe', words),
        `${count > 1 ? `${shownNumber(count)} × ` : ''}${pipeName(pipe, words)}`,
      ],
    ),
    [FURTHER.pipe.method, asSentence(method)],
    ...pipes.map(
      ({ pullEstimateN, pullLimitN }): Entry => [
        `${FURTHER.pipe.estimate}${DOT}${FURTHER.pipe.limit.toLowerCase()}`,
        `${shown(pullEstimateN, 'force')}${DOT}${shown(pullLimitN, 'force')}`,
      ],
    ),
    [sheetWord('tool', words), shown(input.tool.diameterM, 'diameter')],
    [
      sheetWord('compressor', words),
      `${shown(freeAirDeliveryM3PerS, 'volumeFlow')}, ${shown(gaugePa, 'gaugePressure')}`,
    ],
    [sheetWord('hose', words), hoses.join(', ')],
  ]
}

function courseOf({ plan: { run, air, deviation, ground, crew } }: Props): readonly Entry[] {
  const words = say.value
  return [
    [
      sheetWord('pressures', words),
      `${shown(air.compressorGaugePa, 'gaugePressure')} → ${shown(air.toolGaugePa, 'gaugePressure')} (${planWord('airFlag', air.flag, words)})`,
    ],
    [
      sheetWord('air', words),
      `${shown(air.demandM3PerS, 'volumeFlow')} / ${shown(air.capacityM3PerS, 'volumeFlow')}`,
    ],
    [
      sheetWord('chances', words),
      `${shownChance(run.arrivalProbability)}${DOT}${shownChance(run.refusalProbability)}`,
    ],
    [
      sheetWord('wander', words),
      `${shown(deviation.lateralM.p90, 'length')}${DOT}${shown(deviation.verticalM.p90, 'length')}`,
    ],
    [FURTHER.path.heave, shown(ground.heaveM.p50, 'movement')],
    [
      ANSWERS.time.people,
      crew.watchers > 0
        ? `${shownNumber(crew.people)}, ${ANSWERS.time.watchers} ${shownNumber(crew.watchers)}`
        : shownNumber(crew.people),
    ],
  ]
}

function Entries({ entries }: { readonly entries: readonly Entry[] }) {
  return (
    <dl class="sheet-figures">
      {entries.map(([label, value], place) => (
        <div key={`${place} ${label}`}>
          <dt>{label}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  )
}

function timesOf({ plan: { run } }: Props): readonly Entry[] {
  const W = ANSWERS.time
  const times = [
    [W.hammer, run.hammerTimeS],
    [W.bore, run.boreTimeS],
    [W.crossing, run.crossingTimeS],
  ] as const
  return [
    ...times.map(([label, spread]): Entry => [`${label}, ${sheetWord('days', say.value)}`, days(spread)]),
    [W.giveUp, shown(run.giveUpTimeS, 'duration')],
  ]
}

/** What goes in, with what, and how it is likely to go. */
export function SheetFigures(props: Props) {
  const isTimed = props.plan.run.hammerTimeS !== null
  return (
    <section>
      <h2>{sheetWord('keyFigures', say.value)}</h2>
      <Entries entries={materialOf(props)} />
      {!isTimed && <p>{ANSWERS.time.tooFew}</p>}
      <Entries entries={timesOf(props)} />
      <Entries entries={courseOf(props)} />
    </section>
  )
}
