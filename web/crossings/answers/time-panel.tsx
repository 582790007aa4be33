import type { Kind } from '../../../shared/core/kinds.ts'
import type { Plan, Spread } from '../../../shared/core/plan/plan.ts'
import { shown, shownChance, shownNumber, shownSpread } from '../../fields/shown.ts'
import { ANSWERS } from '../../words/answer-words.ts'
import { Panel } from '../form/panel.tsx'
import { Figure } from './figure.tsx'
import { showWorking } from './working-shown.ts'

const W = ANSWERS.time
const ADVANCE = ['advance-rate', 'set-per-blow', 'driving-resistance', 'tool-at-pressure', 'shaft-friction']

type RowProps = {
  readonly label: string
  readonly spread: Spread | null
  readonly kind: Kind
  readonly more: 'is-better' | 'is-worse'
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
            <button
              type="button"
              class="cell-figure"
              aria-label={`${label}, ${day}: ${value}`}
              onClick={() =>
                showWorking({ label: `${label}, ${day}`, value, relations: ADVANCE, isOfDraws: true })
              }
            >
              {value}
            </button>
          </td>
        )
      })}
    </tr>
  )
}

export function TimePanel({ plan: { run, crew } }: { readonly plan: Plan }) {
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
          note={`${W.watchers} ${shownNumber(crew.watchers)}`}
        />
      </div>
    </Panel>
  )
}
