import type { Kind } from '../../../shared/core/kinds.ts'
import type { Plan, Spread } from '../../../shared/core/plan/plan.ts'
import { shown, shownChance, shownNumber, shownSpread } from '../../fields/shown.ts'
import { ANSWERS } from '../../words/answer-words.ts'
import { Panel } from '../form/panel.tsx'
import { Figure } from './figure.tsx'
import { OpenFigure } from './open-figure.tsx'
import type { MadeOf } from './working-shown.ts'

const W = ANSWERS.time
const ADVANCE = [
  'advance-rate',
  'set-per-blow',
  'driving-resistance',
  'tip-resistance-clay',
  'tip-resistance-granular',
  'shaft-friction',
  'tool-at-pressure',
  'anchorage-length',
]

type RowProps = {
  readonly label: string
  readonly spread: Spread | null
  readonly kind: Kind
  readonly more: 'is-better' | 'is-worse'
}

/** The three days with the quantile each is: for what is better the larger it is, a good day is the high end. */
function daysOf(values: readonly string[], more: RowProps['more']): readonly MadeOf[] {
  const { p10, p50, p90 } = ANSWERS.time.quantiles
  const quantiles = more === 'is-worse' ? [p10, p50, p90] : [p90, p50, p10]
  return values.map((value, place) => ({
    name: `${W.columns[place + 1] ?? ''} · ${quantiles[place] ?? ''}`,
    value,
  }))
}

function SpreadRow({ label, spread, kind, more }: RowProps) {
  const values = shownSpread(spread, kind, more)
  return (
    <tr>
      <th scope="row">{label}</th>
      {values.map((value, place) => {
        const day = W.columns[place + 1] ?? ''
        return (
          <td key={day} class={place === 1 ? 'likely' : undefined} data-column={day}>
            <OpenFigure
              label={`${label}, ${day}`}
              value={value}
              relations={ADVANCE}
              isOfDraws
              days={daysOf(values, more)}
            />
          </td>
        )
      })}
    </tr>
  )
}

const madeOfCrew = ({ crew }: Plan): readonly MadeOf[] => [
  { name: ANSWERS.time.operators, value: shownNumber(crew.people - crew.watchers) },
  { name: W.watchers, value: shownNumber(crew.watchers) },
]

export function TimePanel({ plan }: { readonly plan: Plan }) {
  const { run, crew } = plan
  const draws = { relations: ADVANCE, isOfDraws: true } as const
  return (
    <Panel id="time" heading={W.heading}>
      {run.timeReason === 'too-few-arrive' && <p>{W.tooFew}</p>}
      <table class="days">
        <caption>{W.caption}</caption>
        <thead>
          <tr>
            {W.columns.map((column, place) =>
              place === 0 ? (
                <td key={column} />
              ) : (
                <th key={column} scope="col">
                  {column}
                </th>
              ),
            )}
          </tr>
        </thead>
        <tbody>
          <SpreadRow label={W.hammer} spread={run.hammerTimeS} kind="duration" more="is-worse" />
          <SpreadRow label={W.bore} spread={run.boreTimeS} kind="duration" more="is-worse" />
          <SpreadRow label={W.crossing} spread={run.crossingTimeS} kind="duration" more="is-worse" />
          <SpreadRow label={W.advance} spread={run.advanceMPerS} kind="speed" more="is-better" />
        </tbody>
      </table>
      <div class="figures">
        <Figure label={W.arrives} value={shownChance(run.arrivalProbability)} working={draws} />
        <Figure label={W.stalls} value={shownChance(run.refusalProbability)} working={draws} />
        <Figure label={W.giveUp} value={shown(run.giveUpTimeS, 'duration')} working={draws} />
        <Figure
          label={W.energy}
          value={shown(run.blowEnergyJ, 'energy')}
          working={{ relations: ['tool-at-pressure', 'tool-proportions'] }}
        />
        <Figure
          label={W.rate}
          value={shown(run.blowRateHz, 'frequency')}
          working={{ relations: ['tool-at-pressure', 'tool-proportions'] }}
        />
        <Figure
          label={W.set}
          value={shown(run.setPerBlowM, 'movement')}
          working={{ relations: ['set-per-blow', 'driving-resistance', 'impact-efficiency'] }}
        />
        <Figure
          label={W.people}
          value={shownNumber(crew.people)}
          {...(crew.watchers > 0 ? { note: `${W.watchers} ${shownNumber(crew.watchers)}` } : {})}
          working={{ relations: [], parts: madeOfCrew(plan), rule: ANSWERS.time.crew }}
        />
      </div>
    </Panel>
  )
}
