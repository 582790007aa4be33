import type { Plan } from '../../../shared/core/plan/plan.ts'
import { planWord } from '../../../shared/text/plan-words.ts'
import { saidVolumePerLength } from '../../../shared/text/say-quantity.ts'
import { shown, shownNumber } from '../../fields/shown.ts'
import { say } from '../../state/unit-choice.ts'
import { FURTHER } from '../../words/further-words.ts'
import { RoomyPanel } from '../form/panel.tsx'
import { DataTable } from './data-table.tsx'
import { Figure } from './figure.tsx'
import { madeOfCover, placeOfCover } from './made-of.ts'
import { OpenFigure } from './open-figure.tsx'
import { StatusMark } from './status-mark.tsx'

const W = FURTHER.bore
const VERDICT_SHAPES = { ok: 'good', check: 'look', hold: 'stop' } as const

export function BorePanel({ plan }: { readonly plan: Plan }) {
  const { bore } = plan
  const cover = { relations: [], parts: madeOfCover(plan), rule: FURTHER.made.cover }
  const fit = { relations: ['oversize-ratio', 'bundle-diameter', 'annulus-volume'] }
  return (
    <RoomyPanel id="bore-answer" heading={W.heading} inBrief={`${W.cover} ${shown(bore.coverM, 'depth')}`}>
      <div class="figures">
        <Figure
          label={W.cover}
          value={shown(bore.coverM, 'depth')}
          note={placeOfCover(bore.coverAtM)}
          working={cover}
        />
        <Figure label={W.coverRatio} value={`${shownNumber(bore.coverRatio)} ×`} working={cover} />
        <Figure
          label={W.length}
          value={shown(bore.lengthM, 'length')}
          working={{ relations: ['geodesic-length'] }}
        />
        <Figure label={W.diameter} value={shown(bore.diameterM, 'diameter')} />
        <Figure label={W.bundle} value={shown(bore.bundleDiameterM, 'diameter')} working={fit} />
        <Figure label={W.gap} value={shown(bore.radialGapM, 'diameter')} working={fit} />
        <Figure
          label={W.ratio}
          value={shownNumber(bore.ratio)}
          note={planWord('fit', bore.fit, say.value)}
          working={fit}
        />
        <Figure label={W.annulus} value={saidVolumePerLength(bore.annulusM3PerM, say.value)} working={fit} />
      </div>
      {bore.coverByReach.length > 0 && (
        <DataTable
          caption={W.reaches}
          columns={W.columns}
          rows={bore.coverByReach.map((reach) => ({
            key: `${reach.kind} ${reach.fromM} ${reach.toM}`,
            cells: [
              planWord('surface', reach.kind, say.value),
              shown(reach.fromM, 'length'),
              shown(reach.toM, 'length'),
              <OpenFigure
                key="cover"
                label={`${W.working} ${planWord('surface', reach.kind, say.value)}`}
                value={`${shown(reach.coverM, 'depth')} (${shownNumber(reach.coverRatio)} ×)`}
                {...cover}
              />,
              shown(reach.wantedM, 'depth'),
              <span key="verdict" class={`verdict-word verdict-${reach.verdict}`}>
                <StatusMark shape={VERDICT_SHAPES[reach.verdict]} />
                {W.verdict[reach.verdict]}
              </span>,
            ],
          }))}
        />
      )}
    </RoomyPanel>
  )
}
