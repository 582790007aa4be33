import type { CrossingModel } from '../state/crossing-model.ts'
import { FORM } from '../words/form-words.ts'
import { letGo, nameIn, replaced, undoReplaced } from './draft-place.ts'

/** What gave way to the crossing in hand, with its way back; nothing when nothing of anybody's did. */
export function ReplacedNote({ draft }: { readonly draft: CrossingModel }) {
  const { formers, openedName } = replaced().value
  const former = formers.at(-1)
  if (former === undefined) return null
  const W = FORM.start
  return (
    <div class="undo-line">
      <p>{W.replaced(nameIn(former) || FORM.unnamed, openedName || W.emptyName)}</p>
      <button type="button" onClick={() => undoReplaced(draft)}>
        {W.undo}
      </button>
      <button type="button" class="quiet" onClick={letGo}>
        {W.letGo}
      </button>
    </div>
  )
}
