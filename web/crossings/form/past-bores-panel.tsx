import { GROUND_FAMILIES } from '../../../shared/core/plan/learned-input.ts'
import { familyName } from '../../../shared/text/ground-sentences.ts'
import { ChoiceField } from '../../fields/choice-field.tsx'
import { ListField } from '../../fields/list-field.tsx'
import { QuantityField } from '../../fields/quantity-field.tsx'
import { TextField } from '../../fields/text-field.tsx'
import { YesNoField } from '../../fields/yes-no-field.tsx'
import type { CrossingModel } from '../../state/crossing-model.ts'
import { listAt, type Path, valueAt } from '../../state/document-path.ts'
import { say } from '../../state/unit-choice.ts'
import { FORM } from '../../words/form-words.ts'
import { GROUND_PANEL as W } from '../../words/ground-words.ts'
import { FoldedPanel } from './panel.tsx'

type Props = { readonly model: CrossingModel }

const families = () => GROUND_FAMILIES.map((value) => [value, familyName(value, say.value)] as const)

function BoreFields({ model, path }: Props & { readonly path: Path }) {
  const hasStalled = valueAt(model.document.value, `${path}.stalled`) === true
  return (
    <>
      <ChoiceField
        model={model}
        path={`${path}.family`}
        label={W.family}
        options={families()}
        unsaid={FORM.unsaid}
      />
      <QuantityField
        model={model}
        path={`${path}.length`}
        label={W.length}
        kind="length"
        isRequired={!hasStalled}
      />
      <QuantityField
        model={model}
        path={`${path}.hammerTime`}
        label={W.time}
        kind="duration"
        isRequired={!hasStalled}
      />
      <QuantityField
        model={model}
        path={`${path}.pressure`}
        label={W.pressure}
        hint={W.pressureHint}
        kind="gaugePressure"
      />
      <YesNoField model={model} path={`${path}.stalled`} label={W.stalled} />
      <YesNoField model={model} path={`${path}.excluded`} label={W.excluded} />
      <TextField model={model} path={`${path}.note`} label={W.note} />
    </>
  )
}

/** Bores already made, which correct the rate of this one. */
export function PastBoresPanel({ model }: Props) {
  const count = listAt(model.document.value, 'pastBores').length
  return (
    <FoldedPanel
      id="past-bores"
      heading={W.past}
      inBrief={count === 0 ? W.pastNone : W.pastSome(count)}
      isOpen={count > 0}
    >
      <p class="fine">{W.pastHint}</p>
      <ListField
        model={model}
        path="pastBores"
        noun={W.bore}
        addWords={W.addBore}
        fresh={{}}
        row={(path) => <BoreFields model={model} path={path} />}
      />
    </FoldedPanel>
  )
}
