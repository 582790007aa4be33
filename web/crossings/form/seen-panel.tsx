import { ChoiceField } from '../../fields/choice-field.tsx'
import { ListField } from '../../fields/list-field.tsx'
import { QuantityField } from '../../fields/quantity-field.tsx'
import { TextField } from '../../fields/text-field.tsx'
import type { CrossingModel } from '../../state/crossing-model.ts'
import { listAt, type Path } from '../../state/document-path.ts'
import { FORM } from '../../words/form-words.ts'
import { lookMethods } from '../../words/line-option-words.ts'
import { SITE_FORM } from '../../words/site-form-words.ts'
import { FoldedPanel } from './panel.tsx'

const W = SITE_FORM.seen
type Props = { readonly model: CrossingModel }

const LookFields = ({ model, path }: Props & { readonly path: Path }) => (
  <>
    <QuantityField model={model} path={`${path}.station`} label={W.station} kind="length" isRequired />
    <ChoiceField
      model={model}
      path={`${path}.method`}
      label={W.method}
      options={lookMethods()}
      unsaid={FORM.unsaid}
    />
    <QuantityField model={model} path={`${path}.right`} label={W.right} hint={W.rightHint} kind="length" />
    <QuantityField model={model} path={`${path}.low`} label={W.low} hint={W.lowHint} kind="length" />
    <QuantityField model={model} path={`${path}.error`} label={W.error} hint={W.errorHint} kind="length" />
    <TextField model={model} path={`${path}.by`} label={W.by} />
  </>
)

/** Once the bore runs: where the tool was found, look by look. */
export function SeenPanel({ model }: Props) {
  const count = listAt(model.document.value, 'observations').length
  return (
    <FoldedPanel
      id="seen"
      heading={W.heading}
      inBrief={count === 0 ? W.none : W.some(count)}
      isOpen={count > 0}
    >
      <p class="fine">{W.hint}</p>
      <ListField
        model={model}
        path="observations"
        noun={W.look}
        addWords={W.add}
        fresh={{}}
        row={(path) => <LookFields model={model} path={path} />}
      />
    </FoldedPanel>
  )
}
