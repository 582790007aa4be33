import type { Issue } from '../../shared/core/outcome.ts'
import { textAt } from '../state/document-path.ts'
import { describedBy, FieldFrame } from './field-frame.tsx'
import { type FieldPlace, fieldId, issuesAt } from './field-place.ts'

export type Option = readonly [value: string, words: string]

type Props = FieldPlace & {
  readonly options: readonly Option[]
  /** What stands first and means that nothing was said. */
  readonly unsaid: string
}

/** Readings that are all of the choices already stand in the list. */
function withoutOwn(issue: Issue, options: readonly Option[]): Issue {
  const { candidates = [], ...rest } = issue
  const areAll = options.every(([value]) => candidates.some((each) => each.value === value))
  return areAll ? rest : issue
}

export function ChoiceField({ model, path, label, hint, options, unsaid }: Props) {
  const id = fieldId(path)
  const chosen = textAt(model.document.value, path)
  const issues = issuesAt(model.issues.value, path).map((issue) => withoutOwn(issue, options))
  const isKnown = chosen === '' || options.some(([value]) => value === chosen)
  const choose = (value: string) => model.set(path, value === '' ? undefined : value)
  return (
    <FieldFrame id={id} label={label} hint={hint} issues={issues} onTake={choose}>
      <select
        id={id}
        value={chosen}
        aria-describedby={describedBy(id)}
        aria-invalid={issues.length > 0}
        onChange={(event) => choose(event.currentTarget.value)}
      >
        <option value="">{unsaid}</option>
        {!isKnown && <option value={chosen}>{chosen}</option>}
        {options.map(([value, words]) => (
          <option key={value} value={value}>
            {words}
          </option>
        ))}
      </select>
    </FieldFrame>
  )
}
