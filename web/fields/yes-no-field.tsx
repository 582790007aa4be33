import { textAt } from '../state/document-path.ts'
import { FIELD_WORDS } from '../words/field-words.ts'
import { describedBy, FieldFrame } from './field-frame.tsx'
import { type FieldPlace, fieldId, issuesAt } from './field-place.ts'

/** Yes, no, or nothing said: three answers, for silence is not a no. */
export function YesNoField({ model, path, label, hint }: FieldPlace) {
  const id = fieldId(path)
  const said = textAt(model.document.value, path)
  return (
    <FieldFrame id={id} label={label} hint={hint} issues={issuesAt(model.issues.value, path)}>
      <select
        id={id}
        value={said}
        aria-describedby={describedBy(id)}
        onChange={(event) => {
          const { value } = event.currentTarget
          model.set(path, value === '' ? undefined : value === 'true')
        }}
      >
        <option value="">{FIELD_WORDS.notSaid}</option>
        <option value="true">{FIELD_WORDS.yes}</option>
        <option value="false">{FIELD_WORDS.no}</option>
      </select>
    </FieldFrame>
  )
}
