import { ChoiceField } from '../../fields/choice-field.tsx'
import { issuesAt } from '../../fields/field-place.ts'
import { IssueNotes } from '../../fields/issue-notes.tsx'
import { ListField } from '../../fields/list-field.tsx'
import { NumberField } from '../../fields/number-field.tsx'
import { QuantityField } from '../../fields/quantity-field.tsx'
import type { CrossingModel } from '../../state/crossing-model.ts'
import { listAt, textAt, valueAt } from '../../state/document-path.ts'
import { FORM } from '../../words/form-words.ts'
import { ends, OPTIONS } from '../../words/option-words.ts'
import { ChoiceOfWay } from './choice-of-way.tsx'
import { FoldedList, Panel } from './panel.tsx'

const W = FORM.line

/** What is wrong with a position as a whole, or with the line. */
const positionIssues = (model: CrossingModel) =>
  ['line', 'line.launch', 'line.reception'].flatMap((path) => issuesAt(model.issues.value, path))

function LineFields({ model }: { readonly model: CrossingModel }) {
  const isByLength = valueAt(model.document.value, 'line.launch') === undefined
  return (
    <>
      <ChoiceOfWay
        model={model}
        path="line"
        legend={W.by}
        chosen={isByLength ? 'length' : 'positions'}
        ways={[
          { way: 'length', words: W.byLength, fresh: {} },
          { way: 'positions', words: W.byPositions, fresh: { launch: [], reception: [] } },
        ]}
      />
      {isByLength ? (
        <QuantityField
          model={model}
          path="line.length"
          label={W.length}
          hint={W.lengthHint}
          kind="length"
          isRequired
        />
      ) : (
        <div class="fields">
          <NumberField model={model} path="line.launch.0" label={W.launchLongitude} />
          <NumberField model={model} path="line.launch.1" label={W.launchLatitude} />
          <NumberField model={model} path="line.reception.0" label={W.receptionLongitude} />
          <NumberField model={model} path="line.reception.1" label={W.receptionLatitude} />
          <IssueNotes id="line-positions-issues" issues={positionIssues(model)} />
        </div>
      )}
    </>
  )
}

function EndFields({ model, end }: { readonly model: CrossingModel; readonly end: 'launch' | 'reception' }) {
  const path = `ends.${end}`
  const label = end === 'launch' ? W.launchEnd : W.receptionEnd
  const isWall = textAt(model.document.value, `${path}.kind`) === 'wall'
  return (
    <>
      <ChoiceField model={model} path={`${path}.kind`} label={label} options={ends()} unsaid={W.endUnsaid} />
      {isWall && (
        <>
          <QuantityField model={model} path={`${path}.thickness`} label={W.thickness} kind="diameter" />
          <QuantityField model={model} path={`${path}.footingDepth`} label={W.footing} kind="depth" />
        </>
      )}
    </>
  )
}

export function LinePanel({ model }: { readonly model: CrossingModel }) {
  const hasShots = listAt(model.document.value, 'shots').length > 0
  return (
    <Panel id="line" heading={W.heading}>
      <LineFields model={model} />
      <div class="fields">
        <QuantityField
          model={model}
          path="depth.launch"
          label={W.depthLaunch}
          hint={W.depthHint}
          kind="depth"
          isRequired
        />
        <QuantityField
          model={model}
          path="depth.reception"
          label={W.depthReception}
          hint={W.depthHint}
          kind="depth"
          isRequired
        />
        <ChoiceField
          model={model}
          path="depth.to"
          label={W.to}
          options={OPTIONS.depthTo}
          unsaid={FORM.unsaid}
        />
        <QuantityField model={model} path="grade" label={W.grade} hint={W.gradeHint} kind="ratio" />
        <EndFields model={model} end="launch" />
        <EndFields model={model} end="reception" />
      </div>
      <FoldedList words={W.shots} isOpen={hasShots}>
        <ListField
          model={model}
          path="shots"
          noun={W.shot}
          addWords={W.addShot}
          fresh={{}}
          row={(path) => (
            <>
              <QuantityField model={model} path={`${path}.to`} label={W.shotTo} kind="length" isRequired />
              <QuantityField model={model} path={`${path}.depth`} label={W.shotDepth} kind="depth" />
            </>
          )}
        />
      </FoldedList>
    </Panel>
  )
}
