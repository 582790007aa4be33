import type { CrossingInput } from '../../../shared/core/plan/crossing-input.ts'
import type { ClearancePart, Plan } from '../../../shared/core/plan/plan.ts'
import { NO_NUMBER } from '../../../shared/quantities/format-quantity.ts'
import { driftFromSentence, proposalSentence, toExposeSentence } from '../../../shared/text/path-sentences.ts'
import { planWord } from '../../../shared/text/plan-words.ts'
import { clearanceSentence, contactSentence, wayOutSentence } from '../../../shared/text/verdict-sentence.ts'
import { shown, shownChance } from '../../fields/shown.ts'
import { say } from '../../state/unit-choice.ts'
import { FURTHER } from '../../words/further-words.ts'
import { Panel } from '../form/panel.tsx'
import { DataTable } from './data-table.tsx'
import { madeOfClearance } from './made-of.ts'
import { OpenFigure } from './open-figure.tsx'

const W = FURTHER.lines
const RELATIONS = [
  'required-clearance',
  'drift-allowance',
  'deviation',
  'observed-deviation',
  'contact-chance',
  'ground-displacement',
  'vibration-ppv',
]

function shortText({ shortM }: ClearancePart): string {
  if (shortM === null) return NO_NUMBER
  return shortM > 0 ? shown(shortM, 'length') : NO_NUMBER
}

type Props = { readonly plan: Plan; readonly input: CrossingInput }

function Note({ clearance, plan, input }: Props & { readonly clearance: ClearancePart }) {
  const utility = input.utilities?.[clearance.utility]
  const bore = { axisDepthM: clearance.axisDepthM, boreDiameterM: plan.bore.diameterM }
  const { displacementM, ppvMPerS } = clearance
  const moved = [
    displacementM === null ? null : `${W.push} ${shown(displacementM, 'movement')}`,
    ppvMPerS === null ? null : `${W.shake} ${shown(ppvMPerS, 'particleVelocity')}`,
  ].filter((part) => part !== null)
  return (
    <>
      {utility && <span class="echo">{clearanceSentence(utility, bore, say.value)} </span>}
      {wayOutSentence(clearance, say.value)} {contactSentence(clearance, say.value)}{' '}
      {driftFromSentence(clearance.driftFrom, say.value)}
      {moved.length > 0 && <span class="moved"> {moved.join(' · ')}</span>}
    </>
  )
}

function rowOf(clearance: ClearancePart, place: number, { plan, input }: Props) {
  const label = `${clearance.utility + 1}, ${planWord('utility', clearance.kind, say.value)}`
  const of = {
    relations: RELATIONS,
    about: `line ${clearance.utility + 1}`,
    parts: madeOfClearance(clearance),
  }
  return {
    key: `${clearance.utility} ${place}`,
    cells: [
      planWord('utility', clearance.kind, say.value),
      shown(clearance.stationM, 'length'),
      <OpenFigure
        key="gap"
        label={`${W.working} ${label}`}
        value={shown(clearance.gapM, 'length')}
        {...of}
      />,
      // Side to side, as the gap is: what is required from the axis less half the bore.
      <OpenFigure
        key="needed"
        label={`${W.columns[3] ?? ''}, ${label}`}
        value={shown(clearance.requiredM - clearance.parts.toolRadiusM, 'length')}
        {...of}
      />,
      shortText(clearance),
      shownChance(clearance.contactProbability),
    ],
    note: <Note clearance={clearance} plan={plan} input={input} />,
  }
}

export function ClearancesPanel({ plan, input }: Props) {
  return (
    <Panel id="clearances" heading={W.heading}>
      {plan.clearances.length === 0 ? (
        <p>{W.none}</p>
      ) : (
        <>
          <DataTable
            caption={W.caption}
            columns={W.columns}
            rows={plan.clearances.map((each, place) => rowOf(each, place, { plan, input }))}
          />
          <p class="fine">{W.nothingOthers}</p>
          {plan.toExpose.length > 0 && (
            <>
              <h3>{W.expose}</h3>
              <ol class="in-order">
                {plan.toExpose.map((each) => (
                  <li key={each.utility}>{toExposeSentence(each, say.value)}</li>
                ))}
              </ol>
            </>
          )}
          {plan.proposals.length > 0 && (
            <>
              <h3>{W.room}</h3>
              <ol class="in-order">
                {plan.proposals.map((each) => (
                  <li key={`${each.shot} ${each.code}`}>{proposalSentence(each, say.value)}</li>
                ))}
              </ol>
            </>
          )}
        </>
      )}
    </Panel>
  )
}
