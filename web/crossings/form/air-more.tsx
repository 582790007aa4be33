import { ChoiceField, type Option } from '../../fields/choice-field.tsx'
import { ListField } from '../../fields/list-field.tsx'
import { NumberField } from '../../fields/number-field.tsx'
import { QuantityField } from '../../fields/quantity-field.tsx'
import { TextField } from '../../fields/text-field.tsx'
import { ShopPanel } from '../../shop-air/shop-panel.tsx'
import type { CrossingModel } from '../../state/crossing-model.ts'
import { listAt } from '../../state/document-path.ts'
import { AIR } from '../../words/air-words.ts'
import { FORM } from '../../words/form-words.ts'
import { Folded, FoldedList } from './panel.tsx'

const W = AIR.form
type Props = { readonly model: CrossingModel }

const optionsOf = (words: Readonly<Record<string, string>>): readonly Option[] => Object.entries(words)

function MachineFields({ model }: Props) {
  return (
    <Folded words={W.machine}>
      <QuantityField
        model={model}
        path="air.compressor.unloadPressure"
        label={W.unload}
        hint={W.unloadHint}
        kind="gaugePressure"
      />
      <ChoiceField
        model={model}
        path="air.compressor.reference"
        label={W.reference}
        options={optionsOf(W.references)}
        unsaid={FORM.unsaid}
      />
      <ChoiceField
        model={model}
        path="air.compressor.engine"
        label={W.engine}
        options={optionsOf(W.engines)}
        unsaid={FORM.unsaid}
      />
      <QuantityField model={model} path="air.receiver" label={W.receiver} kind="volume" />
      <QuantityField
        model={model}
        path="air.humidity"
        label={W.humidity}
        hint={W.humidityHint}
        kind="ratio"
      />
      <QuantityField model={model} path="air.regulator" label={W.regulator} kind="gaugePressure" />
      <QuantityField
        model={model}
        path="air.separator.loss"
        label={W.separatorLoss}
        kind="pressureDifference"
      />
      <QuantityField
        model={model}
        path="air.separator.at"
        label={W.separatorAt}
        kind="volumeFlow"
        impliedUnit="cfm"
      />
    </Folded>
  )
}

function LineFields({ model }: Props) {
  return (
    <FoldedList words={W.line} isOpen={false}>
      <div class="fields">
        <QuantityField model={model} path="air.oiler.loss" label={W.oilerLoss} kind="pressureDifference" />
        <QuantityField
          model={model}
          path="air.oiler.at"
          label={W.oilerAt}
          kind="volumeFlow"
          impliedUnit="cfm"
        />
        <QuantityField model={model} path="air.oiler.conductance" label={W.conductance} kind="conductance" />
        <NumberField model={model} path="air.oiler.criticalRatio" label={W.criticalRatio} />
        <QuantityField model={model} path="air.whip.bore" label={W.whipBore} kind="diameter" />
        <QuantityField model={model} path="air.whip.length" label={W.whipLength} kind="length" />
      </div>
      <ListField
        model={model}
        path="air.valves"
        noun={W.valve}
        addWords={W.addValve}
        fresh={{ kind: 'ball' }}
        row={(path) => (
          <>
            <ChoiceField
              model={model}
              path={`${path}.kind`}
              label={W.valveKind}
              options={optionsOf(W.valves)}
              unsaid={FORM.unsaid}
            />
            <QuantityField model={model} path={`${path}.bore`} label={W.valveBore} kind="diameter" />
          </>
        )}
      />
      {listAt(model.document.value, 'air.hoses').map((_hose, place) => (
        // Hoses have no name of their own: their place is it.
        <fieldset key={`hose ${place + 1}`} class="row">
          <legend>{`${W.hose} ${place + 1}`}</legend>
          <HoseFields model={model} path={`air.hoses.${place}`} />
        </fieldset>
      ))}
    </FoldedList>
  )
}

function HoseFields({ model, path }: Props & { readonly path: string }) {
  return (
    <div class="fields">
      <NumberField model={model} path={`${path}.couplings`} label={W.couplings} />
      <QuantityField model={model} path={`${path}.couplingBore`} label={W.couplingBore} kind="diameter" />
      <QuantityField model={model} path={`${path}.ratedPressure`} label={W.hoseRating} kind="gaugePressure" />
      <NumberField model={model} path={`${path}.parallel`} label={W.parallel} />
      <NumberField model={model} path={`${path}.lossFactor`} label={W.lossFactor} />
      <TextField model={model} path={`${path}.measuredOn`} label={W.measuredOn} />
    </div>
  )
}

function BranchFields({ model }: Props) {
  return (
    <FoldedList words={W.branches} isOpen={listAt(model.document.value, 'air.branches').length > 0}>
      <p class="fine">{W.branchesHint}</p>
      <ListField
        model={model}
        path="air.branches"
        noun={W.branch}
        addWords={W.addBranch}
        fresh={{ hoses: [{}] }}
        row={(path) => (
          <>
            <TextField model={model} path={`${path}.name`} label={W.branchName} isRequired />
            <TextField model={model} path={`${path}.from`} label={W.branchFrom} hint={W.branchFromHint} />
            <QuantityField
              model={model}
              path={`${path}.tool.airDemand`}
              label={W.otherTool}
              kind="volumeFlow"
              impliedUnit="cfm"
            />
            <QuantityField
              model={model}
              path={`${path}.tool.ratedPressure`}
              label={W.otherRating}
              kind="gaugePressure"
            />
            <ListField
              model={model}
              path={`${path}.hoses`}
              noun={W.hose}
              addWords={W.addHose}
              fresh={{}}
              row={(hose) => (
                <>
                  <QuantityField
                    model={model}
                    path={`${hose}.bore`}
                    label={W.bore}
                    kind="diameter"
                    isRequired
                  />
                  <QuantityField
                    model={model}
                    path={`${hose}.length`}
                    label={W.length}
                    kind="length"
                    isRequired
                  />
                </>
              )}
            />
          </>
        )}
      />
    </FoldedList>
  )
}

/** The rest of the air line: what most jobs never say. */
export function AirMore({ model }: Props) {
  return (
    <>
      <MachineFields model={model} />
      <LineFields model={model} />
      <BranchFields model={model} />
      <ShopPanel model={model} />
    </>
  )
}
