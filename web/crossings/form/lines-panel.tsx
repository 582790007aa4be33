import { ChoiceField } from '../../fields/choice-field.tsx'
import { ListField } from '../../fields/list-field.tsx'
import { QuantityField } from '../../fields/quantity-field.tsx'
import { TextField } from '../../fields/text-field.tsx'
import { YesNoField } from '../../fields/yes-no-field.tsx'
import type { CrossingModel } from '../../state/crossing-model.ts'
import { listAt, type Path, valueAt } from '../../state/document-path.ts'
import type { JsonObject } from '../../state/json.ts'
import { FORM } from '../../words/form-words.ts'
import { OPTIONS, utilityKinds } from '../../words/option-words.ts'
import { ChoiceOfWay } from './choice-of-way.tsx'
import { Folded, Panel } from './panel.tsx'

const W = FORM.lines

type Knowledge = 'not-asked' | 'listed' | 'none'

function knowledgeIn(document: JsonObject): Knowledge {
  if (listAt(document, 'utilities').length > 0) return 'listed'
  const isSaid = ['utilities', 'utilitiesAsked'].some((path) => valueAt(document, path) !== undefined)
  return isSaid ? 'none' : 'not-asked'
}

function LineCrossedFields({ model, path }: { readonly model: CrossingModel; readonly path: Path }) {
  return (
    <>
      <ChoiceField
        model={model}
        path={`${path}.kind`}
        label={W.kind}
        options={utilityKinds()}
        unsaid={FORM.unsaid}
      />
      <QuantityField
        model={model}
        path={`${path}.station`}
        label={W.station}
        hint={W.stationHint}
        kind="length"
      />
      <QuantityField model={model} path={`${path}.depth`} label={W.depth} kind="depth" />
      <ChoiceField
        model={model}
        path={`${path}.depthTo`}
        label={W.depthTo}
        options={OPTIONS.utilityDepthTo}
        unsaid={FORM.unsaid}
      />
      <QuantityField model={model} path={`${path}.diameter`} label={W.diameter} kind="diameter" />
      <ChoiceField
        model={model}
        path={`${path}.evidence`}
        label={W.evidence}
        options={OPTIONS.evidence}
        unsaid={FORM.unsaid}
      />
      <Folded words={W.more}>
        <QuantityField model={model} path={`${path}.offset`} label={W.offset} kind="length" />
        <QuantityField model={model} path={`${path}.crossingAngle`} label={W.angle} kind="angle" />
        <YesNoField model={model} path={`${path}.private`} label={W.private} />
        <TextField model={model} path={`${path}.owner`} label={W.owner} />
        <QuantityField model={model} path={`${path}.ownerClearance`} label={W.clearance} kind="length" />
        <TextField model={model} path={`${path}.ownerClearanceBy`} label={W.clearanceBy} />
      </Folded>
    </>
  )
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
          row={(path) => <LineCrossedFields model={model} path={path} />}
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
