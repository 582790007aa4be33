import { useState } from 'preact/hooks'
import { AccessForm, type Said, saidOf } from './access-form.tsx'
import { askAccess, DONE } from './access-requests.ts'
import { ACCESS } from './access-words.ts'
import { PasswordField } from './secret-field.tsx'

export function PasswordPanel() {
  const [current, setCurrent] = useState('')
  const [password, setPassword] = useState('')
  const submit = async (): Promise<Said> => {
    const answer = await askAccess('POST', '/api/session/password', DONE, { body: { current, password } })
    if (answer.state === 'done') {
      setCurrent('')
      setPassword('')
    }
    return saidOf(answer, ACCESS.passwordChanged)
  }
  return (
    <section class="panel">
      <h2>{ACCESS.passwordHeading}</h2>
      <AccessForm label={ACCESS.passwordChange} action={ACCESS.passwordChange} submit={submit}>
        <PasswordField
          id="current-password"
          label={ACCESS.currentPassword}
          value={current}
          onInput={setCurrent}
          autocomplete="current-password"
        />
        <PasswordField
          id="new-password"
          label={ACCESS.newPassword}
          value={password}
          onInput={setPassword}
          autocomplete="new-password"
          hint={ACCESS.passwordHint}
        />
      </AccessForm>
    </section>
  )
}
