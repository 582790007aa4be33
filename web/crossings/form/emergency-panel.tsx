import { ListField } from '../../fields/list-field.tsx'
import { TextField } from '../../fields/text-field.tsx'
import type { CrossingModel } from '../../state/crossing-model.ts'
import { valueAt } from '../../state/document-path.ts'
import { FORM } from '../../words/form-words.ts'
import { FoldedPanel } from './panel.tsx'

const W = FORM.emergency

/** Filled in at the desk, read in the pit: what the cards behind the red button say of this place. */
export function EmergencyPanel({ model }: { readonly model: CrossingModel }) {
  const isEntered = valueAt(model.document.value, 'emergency') !== undefined
  return (
    <FoldedPanel id="emergency" heading={W.heading} inBrief={isEntered ? W.entered : W.none}>
      <div class="fields">
        <TextField model={model} path="emergency.address" label={W.address} hint={W.addressHint} />
        <TextField model={model} path="emergency.meeting" label={W.meeting} />
        <TextField model={model} path="emergency.caller" label={W.caller} />
        <TextField model={model} path="emergency.engines" label={W.engines} hint={W.enginesHint} />
      </div>
      <ListField
        model={model}
        path="emergency.numbers"
        noun={W.number}
        addWords={W.add}
        fresh={{}}
        row={(path) => (
          <>
            <TextField model={model} path={`${path}.who`} label={W.who} isRequired />
            <TextField model={model} path={`${path}.phone`} label={W.phone} isRequired />
          </>
        )}
      />
    </FoldedPanel>
  )
}
