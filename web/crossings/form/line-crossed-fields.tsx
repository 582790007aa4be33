import { positionTolerance } from '../../../shared/core/digsafe/position-tolerance.ts'
import { clearanceSentence } from '../../../shared/text/verdict-sentence.ts'
import { ChoiceField } from '../../fields/choice-field.tsx'
import { QuantityField } from '../../fields/quantity-field.tsx'
import { shown } from '../../fields/shown.ts'
import { TextField } from '../../fields/text-field.tsx'
import { YesNoField } from '../../fields/yes-no-field.tsx'
import type { CrossingModel } from '../../state/crossing-model.ts'
import { type Path, textAt } from '../../state/document-path.ts'
import { say } from '../../state/unit-choice.ts'
import { FORM } from '../../words/form-words.ts'
import {
  MATERIALS_OF_LINES,
  qualityLevels,
  qualitySchemes,
  utilityKinds,
} from '../../words/line-option-words.ts'
import { OPTIONS } from '../../words/option-words.ts'
import { Folded } from './panel.tsx'

const W = FORM.lines
type Props = { readonly model: CrossingModel; readonly path: Path }

/** Who opened it, when, and the photo that shows the tape. */
const ExposedFields = ({ model, path }: Props) => (
  <>
    <TextField model={model} path={`${path}.exposed.by`} label={W.exposedBy} />
    <TextField model={model} path={`${path}.exposed.on`} label={W.exposedOn} type="datetime-local" />
    <TextField model={model} path={`${path}.exposed.photo`} label={W.photo} hint={W.photoHint} />
  </>
)

function FurtherFields({ model, path }: Props) {
  const scheme = textAt(model.document.value, `${path}.quality.scheme`)
  return (
    <>
      <TextField model={model} path={`${path}.owner`} label={W.owner} />
      <TextField
        model={model}
        path={`${path}.material`}
        label={W.material}
        suggestions={MATERIALS_OF_LINES}
      />
      <QuantityField model={model} path={`${path}.ownerClearance`} label={W.clearance} kind="length" />
      <TextField model={model} path={`${path}.ownerClearanceBy`} label={W.clearanceBy} />
      <YesNoField model={model} path={`${path}.private`} label={W.private} />
      <QuantityField model={model} path={`${path}.crossingAngle`} label={W.angle} kind="angle" />
      <QuantityField model={model} path={`${path}.offset`} label={W.offset} kind="length" />
      <QuantityField model={model} path={`${path}.from`} label={W.from} kind="length" />
      <QuantityField model={model} path={`${path}.to`} label={W.to} kind="length" />
      <ChoiceField
        model={model}
        path={`${path}.quality.scheme`}
        label={W.qualityScheme}
        options={qualitySchemes()}
        unsaid={FORM.unsaid}
      />
      <ChoiceField
        model={model}
        path={`${path}.quality.level`}
        label={W.qualityLevel}
        options={qualityLevels(scheme)}
        unsaid={FORM.unsaid}
      />
    </>
  )
}

/** What a class of evidence promises, in the reader's units; the line is exposed whatever it promises. */
function QualityNote({ model, place }: { readonly model: CrossingModel; readonly place: number }) {
  const answers = model.answers.value
  const utility = answers.state === 'none' ? undefined : answers.input.utilities?.[place]
  if (!utility?.quality) return null
  const { planM, depthErrorM } = positionTolerance.fn({
    ...utility.quality,
    depthM: utility.depth?.valueM ?? 0,
  })
  const text =
    planM === null
      ? W.qualityNothing
      : utility.depth === null || depthErrorM === null
        ? W.qualityPlan(shown(planM, 'length'))
        : W.qualityBoth(shown(planM, 'length'), shown(depthErrorM, 'length'))
  return <p class="hint whole-row">{text}</p>
}

/** Both depths in one sentence, each with what it is measured to: read back before anybody trusts them. */
function Echo({ model, place }: { readonly model: CrossingModel; readonly place: number }) {
  const answers = model.answers.value
  if (answers.state !== 'current') return null
  const utility = answers.input.utilities?.[place]
  const found = answers.plan.clearances.find((each) => each.utility === place)
  if (!utility || !found) return null
  const bore = { axisDepthM: found.axisDepthM, boreDiameterM: answers.plan.bore.diameterM }
  return <p class="hint whole-row">{clearanceSentence(utility, bore, say.value)}</p>
}

export function LineCrossedFields({ model, path, place }: Props & { readonly place: number }) {
  const isExposed = textAt(model.document.value, `${path}.evidence`) === 'exposed'
  return (
    <>
      <ChoiceField
        model={model}
        path={`${path}.kind`}
        label={W.kind}
        options={utilityKinds()}
        unsaid={FORM.unsaid}
      />
      <ChoiceField
        model={model}
        path={`${path}.evidence`}
        label={W.evidence}
        options={OPTIONS.evidence}
        unsaid={FORM.unsaid}
      />
      <QuantityField
        model={model}
        path={`${path}.station`}
        label={W.station}
        hint={W.stationHint}
        kind="length"
      />
      <QuantityField model={model} path={`${path}.diameter`} label={W.diameter} kind="diameter" />
      <QuantityField
        model={model}
        path={`${path}.depth`}
        label={isExposed ? W.measured : W.depth}
        kind="depth"
      />
      <ChoiceField
        model={model}
        path={`${path}.depthTo`}
        label={W.depthTo}
        options={OPTIONS.utilityDepthTo}
        unsaid={FORM.unsaid}
      />
      <Echo model={model} place={place} />
      {isExposed && <ExposedFields model={model} path={path} />}
      <Folded words={W.more}>
        <FurtherFields model={model} path={path} />
        <QualityNote model={model} place={place} />
      </Folded>
    </>
  )
}
