import { describedBy, FieldFrame } from './field-frame.tsx'
import { type FieldPlace, fieldId, issuesAt } from './field-place.ts'
import { useTypedText } from './typed-text.ts'

type Props = FieldPlace & {
  readonly isRequired?: boolean
  readonly type?: 'text' | 'datetime-local'
  /** Words to choose from while typing; others are taken too. */
  readonly suggestions?: readonly string[]
}

export function TextField({ model, path, label, hint, isRequired, type = 'text', suggestions }: Props) {
  const id = fieldId(path)
  const field = useTypedText(model, path, {
    isComplete: (text) => text.trim() !== '' || isRequired !== true,
    commit: (text) => model.set(path, text === '' ? undefined : text),
  })
  const issues = field.isHalfTyped ? [] : issuesAt(model.issues.value, path)
  return (
    <FieldFrame id={id} label={label} hint={hint} issues={issues} onTake={field.take}>
      <input
        id={id}
        type={type}
        autocomplete="off"
        placeholder=" "
        class={field.text === '' ? 'empty' : undefined}
        value={field.text}
        list={suggestions ? `${id}-list` : undefined}
        aria-describedby={describedBy(id)}
        aria-invalid={issues.length > 0}
        aria-required={isRequired === true}
        onInput={(event) => field.onInput(event.currentTarget.value)}
        onBlur={field.onLeave}
      />
      {suggestions && (
        <datalist id={`${id}-list`}>
          {suggestions.map((each) => (
            <option key={each} value={each} />
          ))}
        </datalist>
      )}
    </FieldFrame>
  )
}
