import { NumberField } from '../../fields/number-field.tsx'
import type { CrossingModel } from '../../state/crossing-model.ts'
import { valueAt } from '../../state/document-path.ts'
import { isObject } from '../../state/json.ts'
import { FORM } from '../../words/form-words.ts'
import { ChoiceOfWay } from './choice-of-way.tsx'
import { Folded, Panel } from './panel.tsx'

const R = FORM.rates

export function RatesPanel({ model }: { readonly model: CrossingModel }) {
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
