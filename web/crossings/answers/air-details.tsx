import { useState } from 'preact/hooks'
import type { AirPart } from '../../../shared/core/plan/air-part.ts'
import type { CrossingInput } from '../../../shared/core/plan/crossing-input.ts'
import type { Plan } from '../../../shared/core/plan/plan.ts'
import { planWord } from '../../../shared/text/plan-words.ts'
import { shown, shownNumber } from '../../fields/shown.ts'
import { LateAirPictures } from '../../profile/late-air-pictures.tsx'
import { say } from '../../state/unit-choice.ts'
import { AIR } from '../../words/air-words.ts'
import { FoldedList } from '../form/panel.tsx'
import { AirFixesPanel } from './air-fixes-panel.tsx'
import { DataTable } from './data-table.tsx'
import { Figure } from './figure.tsx'
import { StatusMark } from './status-mark.tsx'

const W = AIR.answer
type Props = { readonly air: AirPart }
type DetailsProps = { readonly plan: Plan; readonly input: CrossingInput }
const STATE_SHAPES = { starved: 'stop', choked: 'stop', weak: 'look', good: 'good', high: 'look' } as const
const percent = (share: number): string => `${Math.round(share * 100)} %`

function Tools({ tools }: { readonly tools: NonNullable<AirPart['tools']> }) {
  if (tools.length < 2) return null
  return (
    <DataTable
      isShort
      caption={W.tools}
      columns={W.columns}
      rows={tools.map(({ branch, isOurs, gaugePa, flowM3PerS, state }) => ({
        key: branch,
        cells: [
          isOurs ? `${branch} (${W.ours})` : branch,
          shown(gaugePa, 'gaugePressure'),
          shown(flowM3PerS, 'volumeFlow'),
          <span key="state" class={`flag flag-${state}`}>
            <StatusMark shape={STATE_SHAPES[state]} /> {planWord('toolState', state, say.value)}
          </span>,
        ],
      }))}
    />
  )
}

/** How sure the pressure is, and what it may do. */
function Pressures({ air }: Props) {
  const { band, sagPa = 0, mostAtToolGaugePa } = air
  return (
    <>
      {band !== undefined && (
        <Figure
          label={W.band}
          value={`${band.lowGaugePa === null ? W.none : shown(band.lowGaugePa, 'gaugePressure')} – ${shown(band.highGaugePa, 'gaugePressure')}`}
          note={W.bandWhy[band.why]}
        />
      )}
      {sagPa > 0 && <Figure label={W.sag} value={shown(sagPa, 'pressureDifference')} />}
      {mostAtToolGaugePa !== undefined && (
        <Figure label={W.most} value={shown(mostAtToolGaugePa, 'gaugePressure')} />
      )}
    </>
  )
}

/** Air so near that of sea level at 20 °C is not worth a figure. */
const THIN_OR_THICK = 0.02

function SiteFigures({ air: { site, fuel, receiver } }: Props) {
  return (
    <>
      {site !== undefined && Math.abs(site.densityRatio - 1) > THIN_OR_THICK && (
        <>
          <Figure label={W.site} value={shown(site.barometerPa, 'absolutePressure')} />
          <Figure label={W.density} value={percent(site.densityRatio)} />
          <Figure label={W.demandFactor} value={`${shownNumber(site.demandFactor)} ×`} />
        </>
      )}
      {fuel !== undefined && (
        <>
          <Figure
            label={W.fuel}
            value={shown(fuel.nowM3PerS, 'liquidFlow')}
            working={{ relations: ['compressor-fuel'] }}
          />
          <Figure label={W.fullFuel} value={shown(fuel.fullM3PerS, 'liquidFlow')} />
          <Figure label={W.load} value={percent(fuel.loadFraction)} />
        </>
      )}
      {receiver !== undefined && (
        <Figure
          label={W.bridges[receiver.bridges]}
          value={shown(receiver.timeS, 'duration')}
          working={{ relations: ['receiver-time'] }}
        />
      )}
    </>
  )
}

function WaterAndOil({ air: { water, oil, exhaustK } }: Props) {
  const working = { relations: ['condensate-rate'] }
  return (
    <>
      {water && (
        <>
          <Figure label={W.water} value={shown(water.atMachineKgPerS, 'massFlow')} working={working} />
          <Figure label={W.waterDown} value={shown(water.downLineKgPerS, 'massFlow')} working={working} />
          <Figure label={W.vapour} value={shown(water.vapourKgPerS, 'massFlow')} working={working} />
        </>
      )}
      {exhaustK !== undefined && (
        <Figure
          label={W.exhaust}
          value={shown(exhaustK, 'temperature')}
          note={W.exhaustNote}
          working={{ relations: ['exhaust-temperature'] }}
        />
      )}
      {oil && (
        <Figure
          label={W.oil}
          value={`${shown(oil.lowM3PerS, 'volumeFlow')} – ${shown(oil.highM3PerS, 'volumeFlow')}`}
          note={planWord('standing', 'common practice', say.value)}
        />
      )}
    </>
  )
}

function Hoses({ hazard }: { readonly hazard: NonNullable<AirPart['hazard']> }) {
  const working = { relations: ['hose-parting'] }
  return (
    <>
      <Figure label={W.thrust} value={shown(hazard.thrustN, 'force')} working={working} />
      <Figure label={W.energy} value={shown(hazard.energyJ, 'energy')} working={working} />
      <Figure label={W.lineMost} value={shown(hazard.mostGaugePa, 'gaugePressure')} />
      {hazard.ratedGaugePa !== null && (
        <Figure label={W.rating} value={shown(hazard.ratedGaugePa, 'gaugePressure')} />
      )}
    </>
  )
}

/** What is worth knowing of the air beside the pressure: folded, for most days it is not asked. */
/** Open where there is something to mend. */
const needsHelp = ({ flag, limitedBy }: AirPart): boolean => flag !== 'good' || limitedBy !== 'tool'

export function AirDetails({ plan, input }: DetailsProps) {
  const { air } = plan
  const { tools, hazard, water } = air
  const [isAsked, ask] = useState(needsHelp(air))
  const [isSeen, look] = useState(false)
  return (
    <>
      {tools !== undefined && <Tools tools={tools} />}
      <FoldedList words={W.more} isOpen={false}>
        <div class="figures">
          <Pressures air={air} />
          <SiteFigures air={air} />
          <WaterAndOil air={air} />
          {hazard !== undefined && <Hoses hazard={hazard} />}
        </div>
        {water === null && <p class="fine">{W.noWater}</p>}
        {hazard !== undefined && <p class="fine">{hazard.needsCutOff ? W.cutOff : W.restraint}</p>}
      </FoldedList>
      <details class="folded" open={isAsked} onToggle={(event) => ask(event.currentTarget.open)}>
        <summary>{AIR.fixes.heading}</summary>
        {isAsked && <AirFixesPanel plan={plan} input={input} />}
      </details>
      <details class="folded" onToggle={(event) => look(event.currentTarget.open)}>
        <summary>{AIR.pictures.heading}</summary>
        {isSeen && <LateAirPictures input={input} />}
      </details>
    </>
  )
}
