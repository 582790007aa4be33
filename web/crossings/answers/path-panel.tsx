import type { Plan } from '../../../shared/core/plan/plan.ts'
import { shown, shownChance } from '../../fields/shown.ts'
import { ANSWERS } from '../../words/answer-words.ts'
import { RoomyPanel } from '../form/panel.tsx'
import { Figure } from './figure.tsx'

const W = ANSWERS.path

export function PathPanel({ plan: { deviation, ground } }: { readonly plan: Plan }) {
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
          label={`${W.hit} ${shown(deviation.windowM, 'length')}`}
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
    </RoomyPanel>
  )
}
