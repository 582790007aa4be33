import type { ClearancePart, Plan } from '../../../shared/core/plan/plan.ts'
import { NO_NUMBER } from '../../../shared/quantities/format-quantity.ts'
import { planWord } from '../../../shared/text/plan-words.ts'
import { contactSentence, wayOutSentence } from '../../../shared/text/verdict-sentence.ts'
import { shown, shownChance } from '../../fields/shown.ts'
import { say } from '../../state/unit-choice.ts'
import { ANSWERS } from '../../words/answer-words.ts'
import { Panel } from '../form/panel.tsx'
import { DataTable } from './data-table.tsx'
import { showWorking } from './working-shown.ts'

const W = ANSWERS.lines
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

function Note({ clearance }: { readonly clearance: ClearancePart }) {
  const { displacementM, ppvMPerS } = clearance
  const moved = [
    displacementM === null ? null : `${W.push} ${shown(displacementM, 'movement')}`,
    ppvMPerS === null ? null : `${W.shake} ${shown(ppvMPerS, 'particleVelocity')}`,
  ].filter((part) => part !== null)
  return (
    <>
      {wayOutSentence(clearance, say.value)} {contactSentence(clearance, say.value)}
      {moved.length > 0 && <span class="moved"> {moved.join(' · ')}</span>}
    </>
  )
}

function rowOf(clearance: ClearancePart, place: number) {
  const label = `${clearance.utility + 1}, ${planWord('utility', clearance.kind, say.value)}`
  const value = shown(clearance.gapM, 'length')
  const open = (
    <button
      key="gap"
      type="button"
      class="cell-figure"
      aria-label={`${W.working} ${label}: ${value}`}
      onClick={() =>
        showWorking({
          label: `${W.working} ${label}`,
          value,
          relations: RELATIONS,
          about: `line ${clearance.utility + 1}`,
        })
      }
    >
      {value}
    </button>
  )
  return {
    key: `${clearance.utility} ${place}`,
    cells: [
      planWord('utility', clearance.kind, say.value),
      shown(clearance.stationM, 'length'),
      open,
      shown(clearance.requiredM, 'length'),
      shortText(clearance),
      shownChance(clearance.contactProbability),
    ],
    note: <Note clearance={clearance} />,
  }
}

export function ClearancesPanel({ plan }: { readonly plan: Plan }) {
  return (
    <Panel id="clearances" heading={W.heading}>
      {plan.clearances.length === 0 ? (
        <p>{W.none}</p>
      ) : (
        <>
          <DataTable caption={W.caption} columns={W.columns} rows={plan.clearances.map(rowOf)} />
          <p class="fine">{W.nothingOthers}</p>
        </>
      )}
    </Panel>
  )
}
