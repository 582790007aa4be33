import { useRef } from 'preact/hooks'
import { isExample, openInDraft } from '../saved/draft-place.ts'
import type { CrossingModel } from '../state/crossing-model.ts'
import { FORM } from '../words/form-words.ts'
import { EMPTY_CROSSING } from './presets.ts'

/**
 * Says that the job in hand is invented, as long as nobody has made it their own; and then, in the same place, that
 * the rest of it still is: nothing moves under the hand that types first.
 */
export function ExampleNote({ model }: { readonly model: CrossingModel }) {
  const begunIn = useRef<number | null>(null)
  const opened = model.opened.value
  const isWhole = isExample(model.document.value)
  if (isWhole) begunIn.current = opened
  if (begunIn.current !== opened) return null
  return (
    <div class="former-note example-note">
      <p>{isWhole ? FORM.start.example : FORM.start.begun}</p>
      {isWhole && (
        <button type="button" onClick={() => openInDraft(model, EMPTY_CROSSING)}>
          {FORM.start.startEmpty}
        </button>
      )}
    </div>
  )
}
