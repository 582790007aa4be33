import type { Kind } from '../../shared/core/kinds.ts'
import { formatQuantity, type UnitSystem } from '../../shared/quantities/format-quantity.ts'
import { type ParsedQuantity, parseQuantity } from '../../shared/quantities/parse-quantity.ts'
import { valueAt } from '../state/document-path.ts'
import { units } from '../state/unit-choice.ts'
import { FIELD_WORDS } from '../words/field-words.ts'
import { describedBy, FieldFrame } from './field-frame.tsx'
import { type FieldPlace, fieldId, issuesAt } from './field-place.ts'
import { useTypedText } from './typed-text.ts'

type Props = FieldPlace & {
  readonly kind: Kind
  readonly isRequired?: boolean
  /** The unit the label implies: 185 in a compressor field is cfm. */
  readonly impliedUnit?: string
}

/** What was understood, when the text alone does not tell it in the units of the reader. */
function readingOf(parsed: ParsedQuantity, text: string, kind: Kind, system: UnitSystem): string | null {
  if (!parsed.ok) return null
  if (parsed.echo) return FIELD_WORDS.reads(parsed.echo.reads, parsed.echo.not)
  const plain = (each: string) => each.replace(/\s+/g, '').toLowerCase()
  const us = formatQuantity(parsed.valueSi, kind, 'us')
  const si = formatQuantity(parsed.valueSi, kind, 'si')
  const wanted = system === 'us' ? us : si
  const sameNumberInOtherUnits = plain(wanted) === plain(text)
  return sameNumberInOtherUnits || endsInUnitOf(text, wanted) ? null : `= ${wanted}`
}

/** '42.5 psi' beside '43 psi' needs no echo: the reader sees the same unit. */
function endsInUnitOf(text: string, shown: string): boolean {
  const unit = /[^\d\s/.-]+$/.exec(shown)?.[0] ?? ''
  return unit !== '' && text.trimEnd().endsWith(unit)
}

export function QuantityField({ model, path, label, hint, kind, isRequired, impliedUnit }: Props) {
  const id = fieldId(path)
  const fileUnits = valueAt(model.document.value, 'units')
  const bare = fileUnits === 'si' || fileUnits === 'us' ? fileUnits : 'refuse'
  const parse = (text: string) =>
    parseQuantity(text, kind, impliedUnit === undefined ? { bare } : { bare, impliedUnit })
  const field = useTypedText(model, path, {
    isComplete: (text) => (text.trim() === '' ? isRequired !== true : parse(text).ok),
    commit: (text) => {
      const trimmed = text.trim()
      // The file holds the unit, for its other readers do not see the label.
      const isBare = impliedUnit !== undefined && trimmed !== '' && parse(trimmed).ok
      const needsUnit = isBare && !parseQuantity(trimmed, kind, { bare }).ok
      const kept = needsUnit ? `${trimmed} ${impliedUnit}` : trimmed
      model.set(path, trimmed === '' ? undefined : kept)
    },
  })
  const issues = field.isHalfTyped ? [] : issuesAt(model.issues.value, path)
  const reading =
    field.text.trim() === '' ? null : readingOf(parse(field.text), field.text, kind, units.value)
  return (
    <FieldFrame id={id} label={label} hint={hint} reading={reading} issues={issues} onTake={field.take}>
      <input
        id={id}
        type="text"
        inputMode="text"
        autocomplete="off"
        placeholder=" "
        autocapitalize="off"
        spellcheck={false}
        value={field.text}
        aria-describedby={describedBy(id)}
        aria-invalid={issues.length > 0}
        aria-required={isRequired === true}
        onInput={(event) => field.onInput(event.currentTarget.value)}
        onBlur={field.onLeave}
      />
    </FieldFrame>
  )
}
