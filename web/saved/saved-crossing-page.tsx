import './saved.css'
import { effect } from '@preact/signals'
import { useEffect, useMemo, useState } from 'preact/hooks'
import { useLocation } from 'preact-iso'
import { isSignedOut } from '../access/session-state.ts'
import { SignInNote } from '../access/sign-in-note.tsx'
import { CrossingPage } from '../crossings/crossing-page.tsx'
import { forgetUnread } from '../fields/unread-note.ts'
import { SitePanel } from '../site/site-panel.tsx'
import { saveCrossingFile } from '../state/crossing-file.ts'
import { type CrossingModel, createCrossingModel } from '../state/crossing-model.ts'
import type { Start } from './crossing-start.ts'
import { openInDraft } from './draft-place.ts'
import { FilesBroughtIn } from './files-brought-in.tsx'
import { type Loaded, loadCrossing, rememberJustSaved } from './load-crossing.ts'
import { MergePanel } from './merge-panel.tsx'
import { newId } from './new-id.ts'
import { SaveBar } from './save-bar.tsx'
import { SAVE_BAR } from './saved-words.ts'
import { createSaver, type Saver } from './saver.ts'
import { SAVER_DOORS } from './saver-doors.ts'
import { sendOrQueue } from './send-or-queue.ts'
import { StoredResultNote } from './stored-result-note.tsx'
import { type LeftWork, type WorkKeeper, workKeeper } from './unsaved-work.ts'
import { whenWords } from './when.ts'

/** Tells this loading of the tab from every other. */
const TAB = newId()

type OpenProps = {
  readonly draft: CrossingModel
  readonly start: Start
  readonly isCopy: boolean
  readonly keeper: WorkKeeper
}

/** Keeps what is typed until it is saved. */
const keepTyped = (model: CrossingModel, saver: Saver, keeper: WorkKeeper): (() => void) =>
  effect(() => {
    const document = model.document.value
    if (model.opened.value > 0) forgetUnread(location.pathname)
    if (saver.state.value.state === 'saved') keeper.forget()
    else keeper.keep({ base: saver.base.value, document })
  })

type LeftProps = { readonly keeper: WorkKeeper; readonly onTake: (left: LeftWork) => void }

/** Work of other tabs, or of before the browser was closed: offered, never mixed in unasked. */
function LeftNotes({ keeper, onTake }: LeftProps) {
  const [left, setLeft] = useState(() => keeper.left())
  const gone = (key: string) => setLeft(left.filter((each) => each.key !== key))
  return (
    <>
      {left.map((each) => (
        <div key={each.key} class="former-note left-note">
          <p>{SAVE_BAR.left(whenWords(each.work.at))}</p>
          <div class="actions">
            <button
              type="button"
              onClick={() => {
                onTake(each)
                gone(each.key)
              }}
            >
              {SAVE_BAR.takeLeft}
            </button>
            <button
              type="button"
              class="quiet"
              onClick={() => {
                keeper.throwAway(each.key)
                gone(each.key)
              }}
            >
              {SAVE_BAR.throwLeft}
            </button>
          </div>
        </div>
      ))}
    </>
  )
}

function useSaver({ start, keeper }: OpenProps) {
  const { model, saver } = useMemo(() => {
    const made = createCrossingModel(start.document)
    return { model: made, saver: createSaver(made, start, SAVER_DOORS) }
  }, [start])
  useEffect(() => {
    const stopKeeping = keepTyped(model, saver, keeper)
    return () => {
      stopKeeping()
      saver.stop()
    }
  }, [model, saver, keeper])
  return { model, saver }
}

function OpenCrossing(props: OpenProps) {
  const { draft, keeper, isCopy } = props
  const { route } = useLocation()
  const { model, saver } = useSaver(props)
  const [isFailed, setFailed] = useState(false)
  const saveAsNew = async () => {
    const id = newId()
    const sent = await sendOrQueue(
      { id, document: model.document.value, from: null, requestKey: newId() },
      false,
    )
    setFailed(sent.state !== 'done' && sent.state !== 'waiting')
    if (sent.state !== 'done' && sent.state !== 'waiting') return
    if (sent.state === 'done') rememberJustSaved(sent.kept)
    keeper.forget()
    route(`/crossings/${id}`)
  }
  const state = saver.state.value
  const kept = saver.kept.value
  const canGoBack = kept !== null && (state.state === 'unsaved' || state.state === 'refused')
  const isGone = state.state === 'gone'
  const bar = (
    <>
      <SaveBar saver={saver}>
        {canGoBack && (
          <button type="button" class="quiet" onClick={() => saver.takeKept(kept)}>
            {SAVE_BAR.back}
          </button>
        )}
        {isGone && (
          <button type="button" class="save" onClick={() => void saveAsNew()}>
            {SAVE_BAR.saveAsNew}
          </button>
        )}
        <button type="button" class="quiet" onClick={() => saveCrossingFile(model.document.value)}>
          {SAVE_BAR.fileOf}
        </button>
      </SaveBar>
      {isFailed && <p class="issue">{SAVE_BAR.trouble}</p>}
      {isCopy && kept === null && state.state !== 'waiting' && (
        <p class="former-note">{SAVE_BAR.offlineCopy}</p>
      )}
      <LeftNotes
        keeper={keeper}
        onTake={({ key, work }) => {
          keeper.throwAway(key)
          model.open(work.document)
        }}
      />
      <MergePanel saver={saver} model={model} onSaveAsNew={() => void saveAsNew()} />
      <StoredResultNote saver={saver} />
      <FilesBroughtIn
        doors={{
          open: (document) => {
            openInDraft(draft, document)
            route('/')
          },
          save: (change) => sendOrQueue(change, false),
          whenSaved: () => {},
        }}
      />
    </>
  )
  const site = <SitePanel crossing={props.start.id} model={model} />
  return <CrossingPage model={model} saving={bar} isDraft={false} site={site} />
}

type Props = { readonly id: string; readonly draft: CrossingModel }

function Loading({ id, draft }: Props) {
  const keeper = useMemo(() => workKeeper(id, TAB, () => new Date()), [id])
  const [loaded, setLoaded] = useState<Loaded | null>(null)
  const [attempt, setAttempt] = useState(0)
  // Another attempt asks again.
  useEffect(() => {
    let isHere = true
    loadCrossing(id, keeper).then((found) => {
      if (isHere) setLoaded(found)
    })
    return () => {
      isHere = false
    }
  }, [id, keeper, attempt])
  if (loaded?.state === 'ready') {
    return <OpenCrossing draft={draft} start={loaded.start} isCopy={loaded.isCopy} keeper={keeper} />
  }
  const sentence =
    loaded === null
      ? SAVE_BAR.loading
      : { absent: SAVE_BAR.absent, unreachable: SAVE_BAR.unreachable, trouble: SAVE_BAR.loadTrouble }[
          loaded.state
        ]
  return (
    <main class="saved-page">
      <h1>{SAVE_BAR.oneHeading}</h1>
      {isSignedOut.value && loaded?.state === 'unreachable' ? (
        <SignInNote />
      ) : (
        <p role="status">{sentence}</p>
      )}
      <div class="actions">
        {loaded !== null && loaded.state !== 'absent' && (
          <button
            type="button"
            onClick={() => {
              setLoaded(null)
              setAttempt(attempt + 1)
            }}
          >
            {SAVE_BAR.again}
          </button>
        )}
        {loaded !== null && <a href="/crossings">{SAVE_BAR.all}</a>}
      </div>
    </main>
  )
}

/** One saved crossing, from the server or from what this browser keeps. */
export const SavedCrossingPage = ({ id, draft }: Props) => <Loading key={id} id={id} draft={draft} />
