import { ChoiceField } from '../../fields/choice-field.tsx'
import { ListField } from '../../fields/list-field.tsx'
import { NumberField } from '../../fields/number-field.tsx'
import { QuantityField } from '../../fields/quantity-field.tsx'
import { TextField } from '../../fields/text-field.tsx'
import { YesNoField } from '../../fields/yes-no-field.tsx'
import type { CrossingModel } from '../../state/crossing-model.ts'
import { listAt, type Path } from '../../state/document-path.ts'
import { FORM } from '../../words/form-words.ts'
import { consistencies, dug, OPTIONS, stones, surfaces } from '../../words/option-words.ts'
import { LateFieldGuide } from './late-field-guide.tsx'
import { Folded, Panel } from './panel.tsx'

const W = FORM.ground
type Row = { readonly model: CrossingModel; readonly path: Path }

export function OverPanel({ model }: { readonly model: CrossingModel }) {
  return (
    <Panel id="over" heading={FORM.over.heading}>
      <ListField
        model={model}
        path="over"
        noun={FORM.over.reach}
        addWords={FORM.over.add}
        fresh={{}}
        row={(path) => (
          <>
            <ChoiceField
              model={model}
              path={`${path}.kind`}
              label={FORM.over.kind}
              options={surfaces()}
              unsaid={FORM.unsaid}
            />
            <QuantityField
              model={model}
              path={`${path}.from`}
              label={FORM.over.from}
              kind="length"
              isRequired
            />
            <QuantityField model={model} path={`${path}.to`} label={FORM.over.to} kind="length" isRequired />
          </>
        )}
      />
    </Panel>
  )
}

function MeasuredFields({ model, path }: Row) {
  return (
    <Folded words={W.more}>
      <ChoiceField
        model={model}
        path={`${path}.consistency`}
        label={W.consistency}
        options={consistencies()}
        unsaid={FORM.unsaid}
      />
      <QuantityField
        model={model}
        path={`${path}.undrainedStrength`}
        label={W.undrainedStrength}
        kind="stress"
      />
      <QuantityField model={model} path={`${path}.relativeDensity`} label={W.relativeDensity} kind="ratio" />
      <QuantityField model={model} path={`${path}.frictionAngle`} label={W.frictionAngle} kind="angle" />
      <QuantityField model={model} path={`${path}.dcp`} label={W.dcp} kind="resistancePerBlow" />
      <QuantityField
        model={model}
        path={`${path}.pocketPenetrometer`}
        label={W.pocketPenetrometer}
        kind="stress"
      />
      <QuantityField model={model} path={`${path}.vane`} label={W.vane} kind="stress" />
      <QuantityField model={model} path={`${path}.waterTable`} label={W.waterTable} kind="depth" />
      <YesNoField model={model} path={`${path}.fill`} label={W.fill} />
      <YesNoField model={model} path={`${path}.frozen`} label={W.frozen} />
    </Folded>
  )
}

function StretchFields({ model, path }: Row) {
  const isOneOfSeveral = listAt(model.document.value, 'ground').length > 1
  return (
    <>
      {isOneOfSeveral && (
        <>
          <QuantityField model={model} path={`${path}.from`} label={W.from} kind="length" />
          <QuantityField model={model} path={`${path}.to`} label={W.to} kind="length" />
        </>
      )}
      <TextField
        model={model}
        path={`${path}.word`}
        label={W.word}
        hint={W.wordHint}
        suggestions={OPTIONS.groundWords}
      />
      <ChoiceField
        model={model}
        path={`${path}.uscs`}
        label={W.uscs}
        options={OPTIONS.uscs}
        unsaid={FORM.unsaid}
      />
      <NumberField model={model} path={`${path}.sptN`} label={W.sptN} hint={W.sptHint} />
      <ChoiceField model={model} path={`${path}.dug`} label={W.dug} options={dug()} unsaid={FORM.unsaid} />
      <ChoiceField
        model={model}
        path={`${path}.stones`}
        label={W.stones}
        options={stones()}
        unsaid={FORM.unsaid}
      />
      <MeasuredFields model={model} path={path} />
      <LateFieldGuide model={model} path={path} />
    </>
  )
}

export function GroundPanel({ model }: { readonly model: CrossingModel }) {
  return (
    <Panel id="ground" heading={W.heading}>
      <ListField
        model={model}
        path="ground"
        noun={W.stretch}
        addWords={W.add}
        fresh={{}}
        least={1}
        row={(path) => <StretchFields model={model} path={path} />}
      />
    </Panel>
  )
}
