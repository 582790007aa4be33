import type { Plan } from '../../../shared/core/plan/plan.ts'
import { NO_NUMBER } from '../../../shared/quantities/format-quantity.ts'
import { planWord } from '../../../shared/text/plan-words.ts'
import { shown, shownChance, shownRoughly } from '../../fields/shown.ts'
import { say } from '../../state/unit-choice.ts'
import { FURTHER } from '../../words/further-words.ts'
import { RoomyPanel } from '../form/panel.tsx'
import { DataTable } from './data-table.tsx'
import { Figure } from './figure.tsx'

const W = FURTHER.path

type Look = Plan['shots'][number]['path']['observations'][number]

const off = (valueM: number | null, plus: string, minus: string): string => {
  if (valueM === null) return NO_NUMBER
  return valueM === 0 ? W.onLine : `${shown(Math.abs(valueM), 'length')} ${valueM > 0 ? plus : minus}`
}

const lookRow = (look: Look) => ({
  key: String(look.observation),
  cells: [
    planWord('lookedBy', look.method, say.value),
    shown(look.stationM, 'length'),
    off(look.rightM, W.right, W.left),
    off(look.lowM, W.low, W.high),
    shown(look.errorM, 'length'),
  ],
  note: look.isOverruled ? W.overruled : undefined,
})

/** What was seen of the tool so far. */
function Looks({ plan }: { readonly plan: Plan }) {
  const looks = plan.shots.flatMap((shot) => shot.path.observations)
  if (looks.length === 0) return null
  return <DataTable caption={W.seen} columns={W.seenColumns} rows={looks.map(lookRow)} />
}

export function PathPanel({ plan }: { readonly plan: Plan }) {
  const { deviation, ground } = plan
  const path = { relations: ['deviation', 'hit-chance', 'observed-deviation'] }
  const heave = { relations: ['surface-heave', 'heave-progress'] }
  return (
    <RoomyPanel
      id="path"
      heading={W.heading}
      inBrief={`${W.lateral} ${shown(deviation.lateralM.p90, 'length')}`}
    >
      <div class="figures">
        <Figure label={W.lateral} value={shown(deviation.lateralM.p90, 'length')} working={path} />
        <Figure label={W.vertical} value={shown(deviation.verticalM.p90, 'length')} working={path} />
        <Figure
          label={`${W.hit} ${shownRoughly(deviation.windowM)}`}
          value={shownChance(deviation.hitProbability)}
          working={path}
        />
        {deviation.gradeProbability !== null && (
          <Figure label={W.grade} value={shownChance(deviation.gradeProbability)} working={path} />
        )}
        <Figure label={W.heave} value={shown(ground.heaveM.p50, 'movement')} working={heave} />
        <Figure label={W.heaveBad} value={shown(ground.heaveM.p90, 'movement')} working={heave} />
        <Figure label={W.breakout} value={ground.breakout ? W.yes : W.no} />
      </div>
      <Looks plan={plan} />
    </RoomyPanel>
  )
}
