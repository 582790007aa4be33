import type { AirBand } from '../../../shared/core/plan/air-part.ts'
import type { CrossingInput } from '../../../shared/core/plan/crossing-input.ts'
import type { Plan } from '../../../shared/core/plan/plan.ts'
import { airElementWord, planWord } from '../../../shared/text/plan-words.ts'
import { shown, shownNumber } from '../../fields/shown.ts'
import { LadderPlace } from '../../profile/ladder-place.tsx'
import { say } from '../../state/unit-choice.ts'
import { ANSWERS } from '../../words/answer-words.ts'
import { Panel } from '../form/panel.tsx'
import { DataTable } from './data-table.tsx'
import { Figure } from './figure.tsx'
import { LateAir } from './late-air.tsx'
import { StatusMark } from './status-mark.tsx'

const W = ANSWERS.air
const POINT = { relations: ['air-operating-point', 'hose-friction-loss', 'compressor-delivery'] }
const FLAG_SHAPES = { low: 'stop', weak: 'look', good: 'good', high: 'look' } as const

/** From the worst hose to the best, where that shows. */
function bandNote(band: AirBand | undefined): { readonly note?: string } {
  if (band === undefined) return {}
  const low = shown(band.lowGaugePa, 'gaugePressure')
  const high = shown(band.highGaugePa, 'gaugePressure')
  return low === high ? {} : { note: `${low} – ${high}` }
}

export function AirAnswer({ plan, input }: { readonly plan: Plan; readonly input: CrossingInput }) {
  const { air } = plan
  return (
    <Panel id="air-answer" heading={W.heading}>
      <p class={`flag flag-${air.flag}`}>
        <StatusMark shape={FLAG_SHAPES[air.flag]} />
        {W.flag}: {planWord('airFlag', air.flag, say.value)}.{' '}
        {air.limitedBy === 'tool'
          ? W.unlimited
          : `${W.limited} ${planWord('limitedBy', air.limitedBy, say.value)}.`}
      </p>
      <div class="figures">
        <Figure
          label={W.tool}
          value={shown(air.toolGaugePa, 'gaugePressure')}
          working={POINT}
          {...bandNote(air.band)}
        />
        <Figure label={W.compressor} value={shown(air.compressorGaugePa, 'gaugePressure')} working={POINT} />
        <Figure label={W.loss} value={shown(air.hoseLossPa, 'pressureDifference')} working={POINT} />
        <Figure label={W.demand} value={shown(air.demandM3PerS, 'volumeFlow')} working={POINT} />
        <Figure label={W.capacity} value={shown(air.capacityM3PerS, 'volumeFlow')} working={POINT} />
        <Figure label={W.unloaded} value={shown(air.unloadedGaugePa, 'gaugePressure')} />
        <Figure
          label={W.margin}
          value={`${shownNumber(Math.round((1 + air.marginFraction) * 10) / 10)} ×`}
          working={POINT}
        />
      </div>
      <LadderPlace air={air} />
      <DataTable
        isShort
        caption={W.ladder}
        columns={[W.element, W.into, W.out, W.lost]}
        rows={air.ladder.map(({ element, inletGaugePa, outletGaugePa }) => ({
          key: element,
          cells: [
            airElementWord(element, say.value),
            shown(inletGaugePa, 'gaugePressure'),
            shown(outletGaugePa, 'gaugePressure'),
            shown(inletGaugePa - outletGaugePa, 'pressureDifference'),
          ],
        }))}
      />
      <LateAir plan={plan} input={input} />
    </Panel>
  )
}
