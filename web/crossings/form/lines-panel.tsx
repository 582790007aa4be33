import { ListField } from '../../fields/list-field.tsx'
import { TextField } from '../../fields/text-field.tsx'
import type { CrossingModel } from '../../state/crossing-model.ts'
import { listAt, valueAt } from '../../state/document-path.ts'
import type { JsonObject } from '../../state/json.ts'
import { FORM } from '../../words/form-words.ts'
import { ChoiceOfWay } from './choice-of-way.tsx'
import { LineCrossedFields } from './line-crossed-fields.tsx'
import { Panel } from './panel.tsx'

const W = FORM.lines

type Knowledge = 'not-asked' | 'listed' | 'none'

function knowledgeIn(document: JsonObject): Knowledge {
  if (listAt(document, 'utilities').length > 0) return 'listed'
  const isSaid = ['utilities', 'utilitiesAsked'].some((path) => valueAt(document, path) !== undefined)
  return isSaid ? 'none' : 'not-asked'
}

export function LinesPanel({ model }: { readonly model: CrossingModel }) {
  const knowledge = knowledgeIn(model.document.value)
  return (
    <Panel id="lines" heading={W.heading}>
      <ChoiceOfWay
        model={model}
        path="utilities"
        alsoAt="utilitiesAsked"
        alsoFresh={{ none: {} }}
        legend={W.asked}
        chosen={knowledge}
        ways={[
          { way: 'not-asked', words: W.notAsked, fresh: undefined },
          { way: 'listed', words: W.listed, fresh: [{}] },
          { way: 'none', words: W.none, fresh: [] },
        ]}
      />
      {knowledge === 'listed' && (
        <ListField
          model={model}
          path="utilities"
          noun={W.line}
          addWords={W.add}
          fresh={{}}
          row={(path, place) => <LineCrossedFields model={model} path={path} place={place} />}
        />
      )}
      {knowledge === 'none' && (
        <div class="fields">
          <TextField model={model} path="utilitiesAsked.by" label={W.by} isRequired />
          <TextField model={model} path="utilitiesAsked.on" label={W.on} type="datetime-local" isRequired />
        </div>
      )}
    </Panel>
  )
}
