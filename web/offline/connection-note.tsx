import { ACCESS } from '../access/access-words.ts'
import { goesNow, isSignedOut, session } from '../access/session-state.ts'
import { SHELL } from '../words/shell-words.ts'
import { connection } from './connection.ts'
import { keepingTrouble, outboxCount, stuckChanges, waitingFor } from './kept-crossings.ts'
import { OFFLINE } from './offline-words.ts'
import { isGoingOver, isPageKept, newVersion, useNewVersion } from './page-version.ts'

/** A line that is broken, and one that points up: told apart without colour. */
function Shape({ kind }: { readonly kind: 'broken' | 'up' }) {
  return (
    <svg class="note-shape" viewBox="0 0 24 16" aria-hidden="true" focusable="false">
      {kind === 'broken' ? <path d="M1 8h7M16 8h7M9 13l6-10" /> : <path d="M12 15V3M6 8l6-6 6 6" />}
    </svg>
  )
}

/** Those whose changes wait here for them to sign in again. */
const othersWaiting = (): readonly string[] =>
  session.value === null ? [] : waitingFor.value.filter((login) => !goesNow(login))

/** What is not sent or not kept, each as a sentence; nothing when all is well. */
function sentences(): readonly string[] {
  const isOffline = connection.value === 'offline'
  const stuck = stuckChanges.value.length
  const unsent = outboxCount.value - stuck
  const trouble = keepingTrouble.value
  return [
    ...(isOffline ? [OFFLINE.offline] : []),
    ...(isOffline && !isPageKept.value ? [OFFLINE.notKept] : []),
    ...(isSignedOut.value && unsent > 0 ? [ACCESS.signedOut] : []),
    ...(unsent > 0 ? [OFFLINE.outbox(unsent)] : []),
    ...othersWaiting().map((login) => ACCESS.waitsFor(login)),
    ...(stuck > 0 ? [OFFLINE.stuck(stuck)] : []),
    ...(trouble === null ? [] : [OFFLINE.trouble[trouble]]),
  ]
}

function VersionNote() {
  const found = newVersion.value
  if (isGoingOver.value) {
    return (
      <p>
        <Shape kind="up" />
        <span>{OFFLINE.goingOver}</span>
      </p>
    )
  }
  if (found === 'none') return null
  return (
    <p>
      <Shape kind="up" />
      <span>{found === 'waiting' ? OFFLINE.newVersion : OFFLINE.newVersionTaken}</span>
      <button type="button" onClick={useNewVersion}>
        {OFFLINE.useNow}
      </button>
    </p>
  )
}

/** Stays at the foot of the screen while there is something to say, and says it once to those who listen. */
export function ConnectionNote() {
  const said = sentences()
  return (
    <aside class="connection-note" aria-label={OFFLINE.label} aria-live="polite">
      {said.length > 0 && (
        <p>
          <Shape kind="broken" />
          <span>{said.join(' ')}</span>
          {isSignedOut.value && <a href="/sign-in">{SHELL.signIn}</a>}
        </p>
      )}
      <VersionNote />
    </aside>
  )
}
