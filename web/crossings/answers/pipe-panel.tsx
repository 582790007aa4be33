import type { PipePart, Plan } from '../../../shared/core/plan/plan.ts'
import { pipeName } from '../../../shared/text/pipe-name.ts'
import { planWord } from '../../../shared/text/plan-words.ts'
import { shown, shownDug, shownRoughly } from '../../fields/shown.ts'
import { say } from '../../state/unit-choice.ts'
import { FURTHER } from '../../words/further-words.ts'
import { FoldedPanel, RoomyPanel } from '../form/panel.tsx'
import { DataTable } from './data-table.tsx'
import { Figure } from './figure.tsx'
import { OpenFigure } from './open-figure.tsx'

const W = FURTHER.pipe
const P = FURTHER.pits

function PipeFigures({ pipe }: { readonly pipe: PipePart }) {
  const limitNote =
    pipe.pullLimitReason === null ? {} : { note: planWord('limitWhy', pipe.pullLimitReason, say.value) }
  return (
    <div class="figures">
      <Figure
        label={W.outside}
        value={shown(pipe.outsideDiameterM, 'diameter')}
        note={pipeName(pipe.pipe, say.value)}
      />
      <Figure
        label={W.limit}
        value={shown(pipe.pullLimitN, 'force')}
        {...limitNote}
        working={{ relations: ['pull-in-limit'] }}
      />
      <Figure
        label={W.estimate}
        value={shown(pipe.pullEstimateN, 'force')}
        working={{ relations: ['dry-drag', 'pipe-mass'] }}
      />
      <Figure label={W.coil} value={shown(pipe.coilNeededM, 'length')} />
    </div>
  )
}

export function PipeAnswer({ plan: { pipes, pull } }: { readonly plan: Plan }) {
  const method = pull.method === null ? W.noMethod : planWord('pull', pull.method, say.value)
  return (
    <RoomyPanel id="pipe-answer" heading={W.heading} inBrief={method}>
      <p>
        {W.method}: {method}.
      </p>
      {pipes.map((pipe, place) => (
        <PipeFigures key={`${pipe.pipe} ${place}`} pipe={pipe} />
      ))}
      {pull.others.length > 0 && (
        <details class="folded">
          <summary>{W.others}</summary>
          <ul>
            {pull.others.map(({ method, why }) => (
              <li key={method}>
                {planWord('pull', method, say.value)}: {planWord('pullWhy', why, say.value)}
              </li>
            ))}
          </ul>
        </details>
      )}
    </RoomyPanel>
  )
}

export function PitsPanel({ plan: { pits } }: { readonly plan: Plan }) {
  return (
    <FoldedPanel id="pits" heading={P.heading} inBrief={String(pits.length)}>
      <DataTable
        caption={P.caption}
        columns={P.columns}
        rows={pits.map((pit) => {
          const mind = [
            pit.needsLadder ? P.ladder : null,
            pit.needsProtection ? P.protection : null,
            pit.shored ? P.shored : null,
          ].filter((each) => each !== null)
          const serves = planWord('pitServes', pit.serves, say.value)
          return {
            key: `${pit.serves} ${pit.atM}`,
            cells: [
              pit.kind === 'pit' ? serves : `${serves}: ${planWord('end', pit.kind, say.value)}`,
              shown(pit.atM, 'length'),
              shown(pit.floorDepthM, 'depth'),
              `${shownRoughly(pit.lengthM)} × ${shownRoughly(pit.widthM)}`,
              <OpenFigure
                key="volume"
                label={`${serves}, ${P.columns[4] ?? ''}`}
                value={shownDug(pit.volumeM3)}
                relations={['pit-volume', 'pit-slope']}
                about={`pit at ${pit.serves}`}
              />,
              mind.join(', '),
            ],
          }
        })}
      />
    </FoldedPanel>
  )
}
