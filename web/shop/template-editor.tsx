import { useState } from 'preact/hooks'
import {
  isSized,
  MEASURES,
  type Measure,
  PART_GROUPS,
  type PartGroup,
  WEAR_DRIVERS,
  type WearDriver,
} from '../../shared/core/shop/template.ts'
import { newId } from '../saved/new-id.ts'
import type { ShopTool } from './shop-facts.ts'
import { partName } from './shop-said.ts'
import { keepDocument } from './shop-store.ts'
import { SHOP } from './shop-words.ts'
import {
  type EditedMeasure,
  type EditedPart,
  type EditedTemplate,
  editedOf,
  freeKey,
  templateDocument,
} from './template-draft.ts'

const W = SHOP.template

type TextProps = {
  readonly id: string
  readonly label: string
  readonly value: string
  readonly onInput: (value: string) => void
}
const Text = ({ id, label, value, onInput }: TextProps) => (
  <div class="field">
    <label for={id}>{label}</label>
    <input
      id={id}
      type="text"
      autocomplete="off"
      maxLength={80}
      value={value}
      onInput={(event) => onInput(event.currentTarget.value)}
    />
  </div>
)

type ChoiceProps<Word extends string> = {
  readonly id: string
  readonly label: string
  readonly value: Word
  readonly words: readonly (readonly [Word, string])[]
  readonly onChoose: (word: Word) => void
}
function Choice<Word extends string>({ id, label, value, words, onChoose }: ChoiceProps<Word>) {
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <select
        id={id}
        value={value}
        onChange={(event) => {
          const chosen = words.find(([word]) => word === event.currentTarget.value)
          if (chosen !== undefined) onChoose(chosen[0])
        }}
      >
        {words.map(([word, said]) => (
          <option key={word} value={word}>
            {said}
          </option>
        ))}
      </select>
    </div>
  )
}

type MeasureProps = {
  readonly id: string
  readonly measure: EditedMeasure
  readonly onChange: (to: Partial<EditedMeasure>) => void
  readonly onRemove: () => void
}
function MeasureRow({ id, measure, onChange, onRemove }: MeasureProps) {
  return (
    <div class="fields template-measure">
      <Choice<Measure>
        id={`${id}-what`}
        label={W.measure}
        value={measure.measure}
        words={MEASURES.map((each) => [each, SHOP.measures[each]])}
        onChoose={(chosen) => onChange({ measure: chosen })}
      />
      {isSized(measure.measure) && (
        <>
          <Text
            id={`${id}-new`}
            label={W.nominal}
            value={measure.nominal}
            onInput={(nominal) => onChange({ nominal })}
          />
          <Text
            id={`${id}-limit`}
            label={measure.measure === 'length' ? W.tolerance : W.limit}
            value={measure.limit}
            onInput={(limit) => onChange({ limit })}
          />
          <Text
            id={`${id}-error`}
            label={W.error}
            value={measure.error}
            onInput={(error) => onChange({ error })}
          />
        </>
      )}
      <button type="button" class="quiet" onClick={onRemove}>
        {W.remove}: {SHOP.measures[measure.measure]}
      </button>
    </div>
  )
}

type PartProps = {
  readonly part: EditedPart
  readonly onChange: (to: Partial<EditedPart>) => void
  readonly onRemove: () => void
}
function PartEditor({ part, onChange, onRemove }: PartProps) {
  const id = `template-${part.key}`
  const name = part.name === '' ? partName({ key: part.key, name: null }) : part.name
  const changeMeasure = (key: string, to: Partial<EditedMeasure>) =>
    onChange({ measures: part.measures.map((each) => (each.key === key ? { ...each, ...to } : each)) })
  const addMeasure = () => {
    const key = freeKey(
      'size',
      part.measures.map((each) => each.key),
    )
    onChange({
      measures: [...part.measures, { key, measure: 'side-play', nominal: '', limit: '', error: '' }],
    })
  }
  return (
    <details class="panel template-part">
      <summary>{name}</summary>
      <div class="fields">
        <Text id={`${id}-name`} label={W.part} value={name} onInput={(to) => onChange({ name: to })} />
        <Choice<PartGroup>
          id={`${id}-group`}
          label={W.group}
          value={part.group}
          words={PART_GROUPS.map((each) => [each, SHOP.groups[each]])}
          onChoose={(group) => onChange({ group })}
        />
        <Choice<WearDriver>
          id={`${id}-driver`}
          label={W.driver}
          value={part.driver}
          words={WEAR_DRIVERS.map((each) => [each, SHOP.drivers[each]])}
          onChoose={(driver) => onChange({ driver })}
        />
        <Text
          id={`${id}-torque`}
          label={W.torque}
          value={part.torque}
          onInput={(torque) => onChange({ torque })}
        />
        <Text
          id={`${id}-lead`}
          label={W.lead}
          value={part.leadDays}
          onInput={(leadDays) => onChange({ leadDays })}
        />
      </div>
      {part.measures.map((measure) => (
        <MeasureRow
          key={measure.key}
          id={`${id}-${measure.key}`}
          measure={measure}
          onChange={(to) => changeMeasure(measure.key, to)}
          onRemove={() => onChange({ measures: part.measures.filter((each) => each.key !== measure.key) })}
        />
      ))}
      <div class="big-choices">
        <button type="button" onClick={addMeasure}>
          {W.addMeasure}
        </button>
        <button type="button" class="quiet" onClick={onRemove}>
          {W.remove}: {name}
        </button>
      </div>
    </details>
  )
}

/** The owner's own list of parts and measures, for a tool of any design. */
export function TemplateEditor({ tool }: { readonly tool: ShopTool }) {
  const [edited, setEdited] = useState<EditedTemplate>(() => editedOf(tool))
  const [outcome, setOutcome] = useState<'saved' | 'failed' | null>(null)
  const change = (parts: readonly EditedPart[]) => {
    setEdited({ ...edited, parts })
    setOutcome(null)
  }
  const add = () => {
    const key = freeKey(
      'part',
      edited.parts.map((each) => each.key),
    )
    const fresh = { key, name: `${W.newPart} ${key.slice(5)}`, torque: '', leadDays: '', measures: [] }
    change([...edited.parts, { ...fresh, group: 'outside', driver: 'ground' }])
  }
  const save = async () => {
    const { templateEntry, entry } = tool
    const id = templateEntry?.id ?? newId()
    const isKept =
      (await keepDocument('tool-templates', id, templateEntry?.version ?? null, templateDocument(edited))) &&
      (templateEntry !== null ||
        (await keepDocument('tools', entry.id, entry.version, { ...entry.document, template: id })))
    setOutcome(isKept ? 'saved' : 'failed')
  }
  return (
    <div class="template-editor">
      <h1>{W.heading}</h1>
      <p>{W.intro}</p>
      <Text
        id="template-name"
        label={W.name}
        value={edited.name}
        onInput={(name) => setEdited({ ...edited, name })}
      />
      <Text
        id="template-strip"
        label={W.strip}
        value={edited.stripEvery}
        onInput={(stripEvery) => setEdited({ ...edited, stripEvery })}
      />
      {edited.parts.map((part) => (
        <PartEditor
          key={part.key}
          part={part}
          onChange={(to) =>
            change(edited.parts.map((each) => (each.key === part.key ? { ...each, ...to } : each)))
          }
          onRemove={() => change(edited.parts.filter((each) => each.key !== part.key))}
        />
      ))}
      <div class="big-choices">
        <button type="button" onClick={add}>
          {W.addPart}
        </button>
        <button type="button" class="save" onClick={() => void save()}>
          {W.save}
        </button>
      </div>
      <p role="status">{outcome === null ? '' : W[outcome]}</p>
    </div>
  )
}
