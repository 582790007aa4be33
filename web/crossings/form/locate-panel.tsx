import { ListField } from '../../fields/list-field.tsx'
import { NumberField } from '../../fields/number-field.tsx'
import { TextField } from '../../fields/text-field.tsx'
import type { CrossingModel } from '../../state/crossing-model.ts'
import { valueAt } from '../../state/document-path.ts'
import { isObject } from '../../state/json.ts'
import { FORM } from '../../words/form-words.ts'
import { ANSWERS_OF_OWNERS } from '../../words/option-words.ts'
import { ChoiceOfWay } from './choice-of-way.tsx'
import { Folded, FoldedPanel, Panel } from './panel.tsx'

const W = FORM.locate
const R = FORM.rates
type Props = { readonly model: CrossingModel }

export function LocatePanel({ model }: Props) {
  const isEntered = valueAt(model.document.value, 'locate') !== undefined
  return (
    <FoldedPanel id="locate" heading={W.heading} inBrief={isEntered ? W.entered : W.none}>
      <div class="fields">
        <TextField
          model={model}
          path="locate.jurisdiction"
          label={W.jurisdiction}
          hint={W.jurisdictionHint}
        />
        <TextField model={model} path="locate.called" label={W.called} type="datetime-local" />
        <TextField model={model} path="locate.ticket.starts" label={W.starts} type="datetime-local" />
        <TextField model={model} path="locate.ticket.expires" label={W.expires} type="datetime-local" />
      </div>
      <ListField
        model={model}
        path="locate.responses"
        noun={W.response}
        addWords={W.add}
        fresh={{}}
        row={(path) => (
          <>
            <TextField model={model} path={`${path}.owner`} label={W.owner} isRequired />
            <TextField
              model={model}
              path={`${path}.answer`}
              label={W.answer}
              suggestions={ANSWERS_OF_OWNERS}
              isRequired
            />
          </>
        )}
      />
    </FoldedPanel>
  )
}

export function RatesPanel({ model }: Props) {
  const rates = valueAt(model.document.value, 'rates')
  const isOwn = isObject(rates) || model.setAside.has('rates own')
  const chosen = isObject(rates) ? 'own' : rates === undefined ? 'none' : 'example'
  return (
    <Panel id="rates" heading={R.heading}>
      <ChoiceOfWay
        model={model}
        path="rates"
        legend={R.rates}
        chosen={chosen}
        ways={[
          { way: 'none', words: R.none, fresh: undefined },
          { way: 'example', words: R.example, fresh: 'example' },
          ...(isOwn ? [{ way: 'own', words: R.own, fresh: undefined }] : []),
        ]}
      />
      <Folded words={R.more}>
        <NumberField model={model} path="spread.seed" label={R.seed} />
        <NumberField model={model} path="spread.draws" label={R.draws} />
      </Folded>
    </Panel>
  )
}
