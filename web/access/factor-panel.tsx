import { useState } from 'preact/hooks'
import { factorAnswer, factorStartAnswer, type SignedIn } from '../../shared/contracts/access.ts'
import { CodeDrawing } from '../fields/code-drawing.tsx'
import { AccessForm, type Said, saidOf } from './access-form.tsx'
import { askAccess, askSession, DONE } from './access-requests.ts'
import { ACCESS } from './access-words.ts'
import { LineField, PasswordField } from './secret-field.tsx'

type Key = { readonly secret: string; readonly address: string; readonly password: string }

const inGroups = (secret: string): string => secret.replace(/(.{4})(?=.)/g, '$1 ')

function ConfirmForm({
  given,
  onCodes,
}: {
  readonly given: Key
  readonly onCodes: (codes: readonly string[]) => void
}) {
  const [code, setCode] = useState('')
  const submit = async (): Promise<Said> => {
    const { secret, password } = given
    const body = { secret, code, password }
    const answer = await askAccess('PUT', '/api/session/second-factor', factorAnswer, { body })
    if (answer.state === 'done') {
      onCodes(answer.value.recoveryCodes)
      await askSession()
    }
    return saidOf(answer)
  }
  return (
    <AccessForm label={ACCESS.factorConfirm} action={ACCESS.factorConfirm} submit={submit}>
      <p>{ACCESS.factorKey}</p>
      <CodeDrawing text={given.address} label={ACCESS.factorScan} />
      <p>
        <code class="shown-once">{inGroups(given.secret)}</code>
      </p>
      <p>
        <a href={given.address}>{ACCESS.factorOpen}</a>
      </p>
      <LineField
        id="first-code"
        label={ACCESS.code}
        value={code}
        onInput={setCode}
        autocomplete="one-time-code"
        inputMode="numeric"
      />
    </AccessForm>
  )
}

function RecoveryCodes({ codes }: { readonly codes: readonly string[] }) {
  return (
    <div role="status">
      <p>{ACCESS.recovery}</p>
      <ul class="recovery-codes">
        {codes.map((code) => (
          <li key={code}>
            <code>{code}</code>
          </li>
        ))}
      </ul>
    </div>
  )
}

function StartForms({ me, onKey }: { readonly me: SignedIn; readonly onKey: (key: Key) => void }) {
  const [password, setPassword] = useState('')
  const start = async (): Promise<Said> => {
    const answer = await askAccess('POST', '/api/session/second-factor', factorStartAnswer, {
      body: { password },
    })
    if (answer.state === 'done') onKey({ ...answer.value, password })
    return saidOf(answer)
  }
  const takeAway = async () => {
    const answer = await askAccess('POST', '/api/session/second-factor/off', DONE, { body: { password } })
    if (answer.state === 'done') setPassword('')
    await askSession()
  }
  return (
    <AccessForm
      label={ACCESS.factorHeading}
      action={me.hasSecondFactor ? ACCESS.factorAnew : ACCESS.factorStart}
      submit={start}
    >
      <PasswordField
        id="factor-password"
        label={ACCESS.currentPassword}
        value={password}
        onInput={setPassword}
        autocomplete="current-password"
      />
      {me.hasSecondFactor && (
        <button type="button" class="quiet" onClick={() => void takeAway()}>
          {ACCESS.factorOff}
        </button>
      )}
    </AccessForm>
  )
}

/** The second factor: set, set anew, taken away. The key and the recovery codes are seen once. */
export function FactorPanel({ me }: { readonly me: SignedIn }) {
  const [key, setKey] = useState<Key | null>(null)
  const [codes, setCodes] = useState<readonly string[]>([])
  return (
    <section class="panel">
      <h2>{ACCESS.factorHeading}</h2>
      <p class="hint">{me.hasSecondFactor ? ACCESS.factorOn(me.recoveryCodesLeft) : ACCESS.factorIntro}</p>
      {codes.length > 0 && <RecoveryCodes codes={codes} />}
      {key === null ? (
        <StartForms me={me} onKey={setKey} />
      ) : (
        <ConfirmForm
          given={key}
          onCodes={(given) => {
            setCodes(given)
            setKey(null)
          }}
        />
      )}
    </section>
  )
}
