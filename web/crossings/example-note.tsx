import { isExample, openInDraft } from '../saved/draft-place.ts'
import type { CrossingModel } from '../state/crossing-model.ts'
import { FORM } from '../words/form-words.ts'
import { EMPTY_CROSSING } from './presets.ts'

/** Says that the job in hand is invented, as long as nobody has made it their own. */
export function ExampleNote({ model }: { readonly model: CrossingModel }) {
  if (!isExample(model.document.value)) return null
  return (
    <div class="former-note">
      <p>{FORM.start.example}</p>
      <button type="button" onClick={() => openInDraft(model, EMPTY_CROSSING)}>
        {FORM.start.startEmpty}
      </button>
    </div>
  )
}
