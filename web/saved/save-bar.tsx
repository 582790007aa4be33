import type { ComponentChildren } from 'preact'
import { useRef, useState } from 'preact/hooks'
import { StatusMark } from '../crossings/answers/status-mark.tsx'
import { focusField } from '../fields/focus-field.ts'
import { placeWords } from '../words/place-words.ts'
import type { AnsweredIssue } from './crossing-requests.ts'
import { useSaveShortcut } from './save-shortcut.ts'
import { SAVE_BAR } from './saved-words.ts'
import type { Saver, SaveState } from './saver.ts'

function sentenceOf(state: SaveState): string {
  switch (state.state) {
    case 'unsaved':
      return state.from === null ? SAVE_BAR.neverSaved : SAVE_BAR.changed(state.from)
    case 'saved':
      return SAVE_BAR.saved(state.version)
    case 'elsewhere':
      return state.theirs.deletedAt === null ? SAVE_BAR.elsewhere : SAVE_BAR.deleted
    case 'waiting':
      return state.isKept ? SAVE_BAR.waiting : SAVE_BAR.waitingUnkept
    default:
      return SAVE_BAR[state.state]
  }
}

const SHAPES = {
  unsaved: 'note',
  saving: 'note',
  saved: 'good',
  waiting: 'look',
  refused: 'stop',
  trouble: 'stop',
  elsewhere: 'stop',
  gone: 'stop',
} as const

/** So many problems are named here; the form has all of them. */
const MOST_NAMED = 5

const Refusals = ({ issues }: { readonly issues: readonly AnsweredIssue[] }) => (
  <ul class="problems">
    {issues.slice(0, MOST_NAMED).map(({ path, code, text }) => (
      <li key={`${path} ${code}`}>
        {path !== '' && (
          <button type="button" class="link" onClick={() => focusField(path)}>
            {placeWords(path)}
          </button>
        )}{' '}
        {text}
      </li>
    ))}
  </ul>
)

type Props = {
  readonly saver: Saver
  /** After a save that came through, or waits. */
  readonly onSaved?: () => void
  readonly children?: ComponentChildren
}

const ECHO_MS = 4000

/** Shows for a while what came of a save, where the bar itself is out of sight. */
function useEcho() {
  const bar = useRef<HTMLElement>(null)
  const [isEchoed, setEchoed] = useState(false)
  const echo = (isGood: boolean) => {
    const box = bar.current?.getBoundingClientRect()
    if (box === undefined || (box.bottom > 0 && box.top < innerHeight)) return
    // What went wrong needs reading: there the bar comes to the reader.
    if (!isGood) return bar.current?.scrollIntoView({ block: 'center' })
    setEchoed(true)
    setTimeout(() => setEchoed(false), ECHO_MS)
  }
  return { bar, isEchoed, echo }
}

/** Says whether what is typed is kept, and keeps it. */
export function SaveBar({ saver, onSaved, children }: Props) {
  const state = saver.state.value
  const { bar, isEchoed, echo } = useEcho()
  const save = async () => {
    const now = saver.state.peek().state
    if (now === 'saving' || now === 'elsewhere' || now === 'gone') return
    if (now !== 'saved') await saver.save()
    const after = saver.state.peek().state
    echo(after === 'saved' || after === 'unsaved' || after === 'waiting')
    onSaved?.()
  }
  useSaveShortcut(() => void save())
  return (
    <section ref={bar} class="save-bar" aria-label={SAVE_BAR.region}>
      <div class="save-line">
        <p role="status" class={`save-state save-${state.state}`}>
          <StatusMark shape={SHAPES[state.state]} />
          <span>{sentenceOf(state)}</span>
        </p>
        <div class="actions">
          {state.state !== 'elsewhere' && state.state !== 'gone' && (
            <button
              type="button"
              class={state.state === 'saved' ? 'rest' : 'save'}
              aria-keyshortcuts="Control+S"
              onClick={() => void save()}
            >
              {SAVE_BAR.save}
            </button>
          )}
          {children}
        </div>
      </div>
      {isEchoed && (
        <p aria-hidden="true" class={`save-echo save-${state.state}`}>
          <StatusMark shape={SHAPES[state.state]} />
          <span>{sentenceOf(state)}</span>
        </p>
      )}
      {state.state === 'refused' && <Refusals issues={state.issues} />}
    </section>
  )
}
