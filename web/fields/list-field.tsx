import type { ComponentChildren } from 'preact'
import type { CrossingModel } from '../state/crossing-model.ts'
import { listAt, type Path } from '../state/document-path.ts'
import type { Json } from '../state/json.ts'
import { FIELD_WORDS } from '../words/field-words.ts'
import { fieldId, issuesAt } from './field-place.ts'
import { IssueNotes } from './issue-notes.tsx'

type Props = {
  readonly model: CrossingModel
  readonly path: Path
  /** 'Hose', for 'Hose 2' and 'Add a hose'. */
  readonly noun: string
  readonly addWords: string
  readonly fresh: Json
  /** At least this many stay. */
  readonly least?: number
  readonly row: (path: Path, place: number) => ComponentChildren
}

export function ListField({ model, path, noun, addWords, fresh, least = 0, row }: Props) {
  const items = listAt(model.document.value, path)
  const opened = model.opened.value
  // One that always is there needs no number to be told from others.
  const isAlone = items.length === 1 && least === 1
  const remove = (place: number) => {
    const left = items.filter((_each, at) => at !== place)
    model.set(path, left.length === 0 ? undefined : left)
  }
  return (
    <div class="list">
      {items.map((item, place) => (
        // Rows have no name of their own. With the length in it, rows that move up forget half-typed text.
        <fieldset key={`${opened} ${items.length} ${place}`} class="row">
          <legend class={isAlone ? 'unseen' : undefined}>{`${noun} ${place + 1}`}</legend>
          <div class="fields">{row(`${path}.${place}`, place)}</div>
          <IssueNotes
            id={`${fieldId(path)}-${place}-issues`}
            issues={typeof item === 'object' ? issuesAt(model.issues.value, `${path}.${place}`) : []}
          />
          {items.length > least && (
            <button type="button" class="quiet" onClick={() => remove(place)}>
              {FIELD_WORDS.remove(`${noun.toLowerCase()} ${place + 1}`)}
            </button>
          )}
        </fieldset>
      ))}
      <button type="button" class="quiet" onClick={() => model.set(path, [...items, fresh])}>
        {addWords}
      </button>
    </div>
  )
}
