import { describedBy, FieldFrame } from './field-frame.tsx'
import { type FieldPlace, fieldId, issuesAt } from './field-place.ts'
import { useTypedText } from './typed-text.ts'

const NUMBER = /^-?\d+(?:\.\d+)?$/

/** A plain number, kept as a number in the file; any other text is kept as typed, and refused with its sentence. */
export function NumberField({ model, path, label, hint }: FieldPlace) {
  const id = fieldId(path)
  const field = useTypedText(model, path, {
    isComplete: (text) => text.trim() === '' || NUMBER.test(text.trim()),
    commit: (text) => {
      const trimmed = text.trim()
      if (trimmed === '') model.set(path, undefined)
      else model.set(path, NUMBER.test(trimmed) ? Number(trimmed) : trimmed)
    },
  })
  const issues = field.isHalfTyped ? [] : issuesAt(model.issues.value, path)
  return (
    <FieldFrame id={id} label={label} hint={hint} issues={issues} onTake={field.take}>
      <input
        id={id}
        type="text"
        inputMode="decimal"
        autocomplete="off"
        placeholder=" "
        value={field.text}
        aria-describedby={describedBy(id)}
        aria-invalid={issues.length > 0}
        onInput={(event) => field.onInput(event.currentTarget.value)}
        onBlur={field.onLeave}
      />
    </FieldFrame>
  )
}
