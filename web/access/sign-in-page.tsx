import './access.css'
import { useEffect, useState } from 'preact/hooks'
import { useLocation } from 'preact-iso'
import { flush } from '../saved/send-or-queue.ts'
import { SHELL } from '../words/shell-words.ts'
import { AccessForm, type Said, saidOf } from './access-form.tsx'
import { askSession, changeSession } from './access-requests.ts'
import { ACCESS } from './access-words.ts'
import { CodeForm } from './code-form.tsx'
import { LineField, PasswordField } from './secret-field.tsx'
import { session, signedIn } from './session-state.ts'

function PasswordForm({ onIn }: { readonly onIn: () => void }) {
  const [login, setLogin] = useState('')
  const [password, setPassword] = useState('')
  const [code, setCode] = useState('')
  const [isFactorWanted, setFactorWanted] = useState(false)
  const submit = async (): Promise<Said> => {
    const factor = isFactorWanted ? { code } : {}
    const answer = await changeSession('POST', '/api/session', { login, password, ...factor })
    if (answer.state === 'done') {
      onIn()
      return null
    }
    if (answer.state === 'refused' && answer.code === 'code-wanted') {
      setFactorWanted(true)
      return { tone: 'good', text: ACCESS.factorWanted }
    }
    return saidOf(answer)
  }
  // The code is the next thing typed.
  useEffect(() => {
    if (isFactorWanted) document.getElementById('factor-code')?.focus()
  }, [isFactorWanted])
  return (
    <AccessForm label={SHELL.signIn} action={SHELL.signIn} submit={submit}>
      <LineField id="login" label={ACCESS.login} value={login} onInput={setLogin} autocomplete="username" />
      <PasswordField
        id="password"
        label={ACCESS.password}
        value={password}
        onInput={setPassword}
        autocomplete="current-password"
      />
      {isFactorWanted && (
        <LineField
          id="factor-code"
          label={ACCESS.factorCode}
          value={code}
          onInput={setCode}
          autocomplete="one-time-code"
        />
      )}
    </AccessForm>
  )
}

/** What waits to be sent goes now; then to what is saved, or to what an owner has to do first. */
function useArrival(): () => void {
  const { route } = useLocation()
  return () => {
    void flush()
    const me = signedIn()
    route(me !== null && me.role === me.mayDo ? '/crossings' : '/access')
  }
}

/** Signing in: with a password, or with a code by which one chooses it. */
export function SignInPage() {
  const now = session.value
  const [hasCode, setHasCode] = useState<boolean | null>(null)
  const arrive = useArrival()
  useEffect(() => void askSession(), [])
  if (now !== null && !now.accounts) {
    return (
      <main class="access-page">
        <h1>{SHELL.signIn}</h1>
        <p>{ACCESS.needsNone}</p>
      </main>
    )
  }
  const isFirst = now?.needsFirstOwner === true
  const withCode = hasCode ?? isFirst
  return (
    <main class="access-page">
      <h1>{isFirst && withCode ? ACCESS.firstOwner : SHELL.signIn}</h1>
      {isFirst && withCode ? <p>{ACCESS.firstOwnerIntro}</p> : <p class="hint">{ACCESS.offlineWorks}</p>}
      <section class="panel">
        {withCode ? <CodeForm onIn={arrive} /> : <PasswordForm onIn={arrive} />}
        <button type="button" class="link" onClick={() => setHasCode(!withCode)}>
          {withCode ? ACCESS.backToPassword : ACCESS.haveCode}
        </button>
      </section>
    </main>
  )
}
