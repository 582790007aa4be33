import { PRIVATE_KINDS } from '../../../shared/core/plan/asked-input.ts'
import { asSentence } from '../../../shared/text/by-system.ts'
import { planWord } from '../../../shared/text/plan-words.ts'
import { ChoiceField } from '../../fields/choice-field.tsx'
import { ListField } from '../../fields/list-field.tsx'
import { NumberField } from '../../fields/number-field.tsx'
import { QuantityField } from '../../fields/quantity-field.tsx'
import { TextField } from '../../fields/text-field.tsx'
import type { CrossingModel } from '../../state/crossing-model.ts'
import { textAt } from '../../state/document-path.ts'
import { say } from '../../state/unit-choice.ts'
import { FORM } from '../../words/form-words.ts'
import { privateAnswers } from '../../words/line-option-words.ts'
import { SITE_FORM } from '../../words/site-form-words.ts'
import { FoldedPanel } from './panel.tsx'

const W = SITE_FORM.private
const P = FORM.places

/** Each asked by its name, for nobody thinks of all of them when asked for "private lines". */
export function PrivatePanel({ model }: { readonly model: CrossingModel }) {
  const open = PRIVATE_KINDS.filter((kind) => {
    const said = textAt(model.document.value, `privateLines.answers.${kind}`)
    return said === '' || said === 'unknown'
  })
  return (
    <FoldedPanel id="private" heading={P.privateLines} inBrief={W.inBrief(open.length)}>
      <p class="fine">{W.why}</p>
      <div class="fields">
        {PRIVATE_KINDS.map((kind) => (
          <ChoiceField
            key={kind}
            model={model}
            path={`privateLines.answers.${kind}`}
            label={asSentence(planWord('privateLine', kind, say.value))}
            options={privateAnswers()}
            unsaid={FORM.unsaid}
          />
        ))}
        <TextField model={model} path="privateLines.by" label={W.by} />
        <TextField model={model} path="privateLines.on" label={W.on} type="datetime-local" />
      </div>
      <ListField
        model={model}
        path="overhead"
        noun={P.overhead}
        addWords={W.addOverhead}
        fresh={{}}
        row={(path) => (
          <>
            <QuantityField model={model} path={`${path}.station`} label={W.station} kind="length" />
            <QuantityField model={model} path={`${path}.height`} label={W.height} kind="length" />
            <NumberField model={model} path={`${path}.kilovolts`} label={W.kilovolts} />
            <TextField model={model} path={`${path}.owner`} label={W.owner} />
          </>
        )}
      />
    </FoldedPanel>
  )
}
