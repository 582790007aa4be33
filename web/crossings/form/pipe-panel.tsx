import { PIPE_SYSTEMS } from '../../../shared/tables/pipes.ts'
import { pipeNameOf } from '../../../shared/text/pipe-name.ts'
import { ChoiceField, type Option } from '../../fields/choice-field.tsx'
import { ListField } from '../../fields/list-field.tsx'
import { NumberField } from '../../fields/number-field.tsx'
import { PipeNoteField } from '../../fields/pipe-note-field.tsx'
import { QuantityField } from '../../fields/quantity-field.tsx'
import { TextField } from '../../fields/text-field.tsx'
import type { CrossingModel } from '../../state/crossing-model.ts'
import { say } from '../../state/unit-choice.ts'
import { FORM } from '../../words/form-words.ts'
import { MATERIALS, pulls } from '../../words/option-words.ts'
import { Folded, Panel } from './panel.tsx'

const W = FORM.pipe
/** The table's own names say most; in another language a pipe goes by what it is called there. */
const systems = (): readonly Option[] =>
  PIPE_SYSTEMS.map(({ id, name, unit }) => [
    id,
    say.value.lang === 'en'
      ? name
      : `${pipeNameOf({ system: id, size: '', wall: '' }, say.value) ?? name}, ${unit}`,
  ])

export function PipePanel({ model }: { readonly model: CrossingModel }) {
  return (
    <Panel id="pipe" heading={W.heading}>
      <ListField
        model={model}
        path="pipes"
        noun={W.pipe}
        addWords={W.add}
        fresh={{}}
        least={1}
        row={(path) => (
          <>
            <PipeNoteField model={model} path={path} label={W.note} hint={W.noteHint} />
            <Folded words={W.more}>
              <ChoiceField
                model={model}
                path={`${path}.system`}
                label={W.system}
                options={systems()}
                unsaid={FORM.unsaid}
              />
              <TextField model={model} path={`${path}.size`} label={W.size} />
              <NumberField model={model} path={`${path}.sdr`} label={W.sdr} />
              <TextField model={model} path={`${path}.wall`} label={W.wall} />
              <QuantityField
                model={model}
                path={`${path}.outsideDiameter`}
                label={W.outside}
                hint={W.outsideHint}
                kind="diameter"
              />
              <QuantityField
                model={model}
                path={`${path}.largestDiameter`}
                label={W.largest}
                hint={W.largestHint}
                kind="diameter"
              />
              <NumberField model={model} path={`${path}.count`} label={W.count} />
              <ChoiceField
                model={model}
                path={`${path}.material`}
                label={W.material}
                options={MATERIALS}
                unsaid={FORM.unsaid}
              />
              <QuantityField model={model} path={`${path}.coilLength`} label={W.coil} kind="length" />
            </Folded>
          </>
        )}
      />
      <div class="fields">
        <ChoiceField model={model} path="pull" label={W.pull} options={pulls()} unsaid={W.pullUnsaid} />
      </div>
    </Panel>
  )
}
