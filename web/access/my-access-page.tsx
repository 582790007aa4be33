import './access.css'
import { useEffect } from 'preact/hooks'
import { useLocation } from 'preact-iso'
import { SetAsidePanel } from '../site/set-aside-panel.tsx'
import { SHELL } from '../words/shell-words.ts'
import { askSession, changeSession } from './access-requests.ts'
import { ACCESS } from './access-words.ts'
import { DevicesPanel } from './devices-panel.tsx'
import { FactorPanel } from './factor-panel.tsx'
import { LinksPanel } from './links-panel.tsx'
import { PasswordPanel } from './password-panel.tsx'
import { PeoplePanel } from './people-panel.tsx'
import { noteLeft, session } from './session-state.ts'
import { TokensPanel } from './tokens-panel.tsx'

function SignedOut() {
  const isNeeded = session.value?.accounts !== false
  return (
    <main class="access-page">
      <h1>{SHELL.mine}</h1>
      {isNeeded ? (
        <p>
          <a href="/sign-in">{SHELL.signIn}</a>
        </p>
      ) : (
        <>
          <p>{ACCESS.needsNone}</p>
          <SetAsidePanel />
        </>
      )}
    </main>
  )
}

/** Who one is here, on which devices, and, for those who may, who else comes in. */
export function MyAccessPage() {
  const { route } = useLocation()
  useEffect(() => void askSession(), [])
  const me = session.value?.signedIn ?? null
  if (me === null) return <SignedOut />
  const signOut = async () => {
    const answer = await changeSession('DELETE', '/api/session')
    if (answer.state !== 'done') return
    noteLeft()
    route('/sign-in')
  }
  return (
    <main class="access-page">
      <h1>{SHELL.mine}</h1>
      <div class="access-actions">
        <p>
          <strong>{ACCESS.as(me.name, ACCESS.roles[me.role])}</strong>
        </p>
        <button type="button" onClick={() => void signOut()}>
          {ACCESS.signOut}
        </button>
      </div>
      {me.role !== me.mayDo && <p class="access-warning">{ACCESS.ownerNeedsFactor}</p>}
      <FactorPanel me={me} />
      <PasswordPanel />
      <DevicesPanel />
      {(me.mayDo === 'owner' || me.mayDo === 'estimator') && <LinksPanel />}
      {me.mayDo === 'owner' && (
        <>
          <PeoplePanel me={me} />
          <TokensPanel />
          <SetAsidePanel />
        </>
      )}
    </main>
  )
}
