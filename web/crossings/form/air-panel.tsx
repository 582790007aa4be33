import { ChoiceField } from '../../fields/choice-field.tsx'
import { ListField } from '../../fields/list-field.tsx'
import { NumberField } from '../../fields/number-field.tsx'
import { QuantityField } from '../../fields/quantity-field.tsx'
import { YesNoField } from '../../fields/yes-no-field.tsx'
import type { CrossingModel } from '../../state/crossing-model.ts'
import { FORM } from '../../words/form-words.ts'
import { aimMethods, heads } from '../../words/option-words.ts'
import { LateAirMore } from './late-air-more.tsx'
import { Folded, Panel } from './panel.tsx'

const T = FORM.tool
const W = FORM.air
type Props = { readonly model: CrossingModel }

export function ToolPanel({ model }: Props) {
  return (
    <Panel id="tool" heading={T.heading}>
      <div class="fields">
        <QuantityField model={model} path="tool.diameter" label={T.diameter} kind="diameter" isRequired />
      </div>
      <Folded words={T.more}>
        <QuantityField model={model} path="tool.length" label={T.length} kind="length" />
        <QuantityField model={model} path="tool.mass" label={T.mass} kind="mass" />
        <QuantityField model={model} path="tool.blowEnergy" label={T.blowEnergy} kind="energy" />
        <QuantityField model={model} path="tool.blowRate" label={T.blowRate} kind="frequency" />
        <QuantityField
          model={model}
          path="tool.airDemand"
          label={T.airDemand}
          kind="volumeFlow"
          impliedUnit="cfm"
        />
        <QuantityField model={model} path="tool.ratedPressure" label={T.ratedPressure} kind="gaugePressure" />
        <ChoiceField model={model} path="tool.head" label={T.head} options={heads()} unsaid={FORM.unsaid} />
        <YesNoField model={model} path="tool.reversible" label={T.reversible} />
        <ChoiceField
          model={model}
          path="aim.method"
          label={T.aim}
          options={aimMethods()}
          unsaid={FORM.unsaid}
        />
        <QuantityField model={model} path="aim.error" label={T.aimError} kind="length" />
        <QuantityField model={model} path="aim.layout" label={T.layout} kind="length" />
      </Folded>
    </Panel>
  )
}

export function AirPanel({ model }: Props) {
  return (
    <Panel id="air" heading={W.heading}>
      <div class="fields">
        <QuantityField
          model={model}
          path="air.compressor.freeAirDelivery"
          label={W.delivery}
          hint={W.deliveryHint}
          kind="volumeFlow"
          impliedUnit="cfm"
          isRequired
        />
        <QuantityField
          model={model}
          path="air.compressor.pressure"
          label={W.pressure}
          kind="gaugePressure"
          isRequired
        />
      </div>
      <ListField
        model={model}
        path="air.hoses"
        noun={W.hose}
        addWords={W.addHose}
        fresh={{}}
        least={1}
        row={(path) => (
          <>
            <QuantityField model={model} path={`${path}.bore`} label={W.bore} kind="diameter" isRequired />
            <QuantityField model={model} path={`${path}.length`} label={W.length} kind="length" isRequired />
          </>
        )}
      />
      <div class="fields">
        <YesNoField model={model} path="air.lubricator" label={W.oiler} />
      </div>
      <Folded words={W.more}>
        <QuantityField model={model} path="air.altitude" label={W.altitude} kind="altitude" />
        <QuantityField model={model} path="air.temperature" label={W.temperature} kind="temperature" />
        <NumberField model={model} path="air.tools" label={W.tools} />
      </Folded>
      <LateAirMore model={model} />
    </Panel>
  )
}
