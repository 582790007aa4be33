import './saved.css'
import { useEffect, useMemo, useState } from 'preact/hooks'
import { useLocation } from 'preact-iso'
import { newKey } from '../offline/kept-crossings.ts'
import { recallHere, rememberHere } from '../state/browser-memory.ts'
import type { CrossingModel } from '../state/crossing-model.ts'
import { beginEmpty, openInDraft } from './draft-place.ts'
import { FilesBroughtIn } from './files-brought-in.tsx'
import { rememberJustSaved } from './load-crossing.ts'
import { MergePanel } from './merge-panel.tsx'
import { newId } from './new-id.ts'
import { SaveBar } from './save-bar.tsx'
import { createSaver, type Saver } from './saver.ts'
import { SAVER_DOORS } from './saver-doors.ts'
import { sendOrQueue } from './send-or-queue.ts'
import { workKeeper } from './unsaved-work.ts'

/** The id under which this tab saves its draft: kept over a reload, so that a save whose answer was lost is not made twice. */
const ID_KEY = 'underlane.draft-id'

function draftId(): string {
  const id = recallHere(ID_KEY) ?? newId()
  rememberHere(ID_KEY, id)
  return id
}

/** The draft is saved, or waits to be: it goes on as a saved crossing, and the draft begins anew. */
function handOver(draft: CrossingModel, saver: Saver): boolean {
  const state = saver.state.value
  const isWaiting = state.state === 'waiting' && state.isKept
  const isThere = saver.kept.value !== null && (state.state === 'saved' || state.state === 'unsaved')
  if (!isWaiting && !isThere) return false
  if (saver.kept.value !== null) rememberJustSaved(saver.kept.value)
  if (state.state !== 'saved') {
    const keeper = workKeeper(saver.id, newKey(), () => new Date())
    keeper.keep({ base: saver.base.value, document: draft.document.value })
  }
  rememberHere(ID_KEY, null)
  beginEmpty(draft)
  return true
}

/** The bar above the draft: not saved yet, and how it is. */
export function DraftBar({ model: draft }: { readonly model: CrossingModel }) {
  const { route } = useLocation()
  const [round, setRound] = useState(0)
  // Another round is another crossing, with an id of its own.
  const saver = useMemo(
    () => createSaver(draft, { id: draftId(), base: null, kept: null, waitingKey: null }, SAVER_DOORS),
    [draft, round],
  )
  const beginAnew = () => {
    rememberHere(ID_KEY, null)
    setRound(round + 1)
  }
  useEffect(() => () => saver.stop(), [saver])
  const goOn = () => {
    const { id } = saver
    if (handOver(draft, saver)) route(`/crossings/${id}`)
  }
  return (
    <>
      <SaveBar saver={saver} onSaved={goOn} />
      <MergePanel saver={saver} model={draft} onSaveAsNew={beginAnew} onSaved={goOn} />
      <FilesBroughtIn
        doors={{
          open: (document) => openInDraft(draft, document),
          save: (change) => sendOrQueue(change, false),
          whenSaved: () => {},
        }}
      />
    </>
  )
}
