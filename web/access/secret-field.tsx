import { useState } from 'preact/hooks'
import { ACCESS } from './access-words.ts'

type Props = {
  readonly id: string
  readonly label: string
  readonly value: string
  readonly onInput: (value: string) => void
  readonly autocomplete: string
  readonly hint?: string
  readonly inputMode?: 'text' | 'numeric'
}

/** A labelled line to type in; what it is for helps the browser fill it. */
export const LineField = ({ id, label, value, onInput, autocomplete, hint, inputMode = 'text' }: Props) => (
  <div class="field">
    <label for={id}>{label}</label>
    <input
      id={id}
      name={id}
      type="text"
      value={value}
      autocomplete={autocomplete}
      autocapitalize="none"
      spellcheck={false}
      inputMode={inputMode}
      required
      aria-describedby={hint === undefined ? undefined : `${id}-hint`}
      onInput={(event) => onInput(event.currentTarget.value)}
    />
    {hint !== undefined && (
      <p id={`${id}-hint`} class="hint">
        {hint}
      </p>
    )}
  </div>
)

/** A password: hidden, unless whoever types it, alone and with gloves, wants to see it. */
export function PasswordField({ id, label, value, onInput, autocomplete, hint }: Omit<Props, 'inputMode'>) {
  const [isShown, setShown] = useState(false)
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <input
        id={id}
        name={id}
        type={isShown ? 'text' : 'password'}
        value={value}
        autocomplete={autocomplete}
        autocapitalize="none"
        spellcheck={false}
        required
        maxLength={200}
        aria-describedby={hint === undefined ? undefined : `${id}-hint`}
        onInput={(event) => onInput(event.currentTarget.value)}
      />
      {hint !== undefined && (
        <p id={`${id}-hint`} class="hint">
          {hint}
        </p>
      )}
      <label class="show-password">
        <input type="checkbox" checked={isShown} onChange={() => setShown(!isShown)} />
        <span>{ACCESS.show}</span>
      </label>
    </div>
  )
}
