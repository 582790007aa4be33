import { useState } from 'preact/hooks'
import { type CodeLookAnswer, codeLookAnswer } from '../../shared/contracts/access.ts'
import { AccessForm, type Said, saidOf } from './access-form.tsx'
import { askAccess, changeSession } from './access-requests.ts'
import { ACCESS } from './access-words.ts'
import { LineField, PasswordField } from './secret-field.tsx'

type Props = {
  readonly code: string
  readonly about: CodeLookAnswer
  readonly onIn: () => void
}

function ChooseForm({ code, about, onIn }: Props) {
  const [login, setLogin] = useState('')
  const [name, setName] = useState('')
  const [password, setPassword] = useState('')
  const isFirst = about.purpose === 'first-owner'
  const submit = async (): Promise<Said> => {
    const whose = isFirst ? { login, name } : {}
    const answer = await changeSession('POST', '/api/session/code', { code, password, ...whose })
    if (answer.state === 'done') onIn()
    return saidOf(answer)
  }
  return (
    <AccessForm label={ACCESS.newPassword} action={ACCESS.choose} submit={submit}>
      {isFirst ? (
        <>
          <LineField id="name" label={ACCESS.name} value={name} onInput={setName} autocomplete="name" />
          <LineField
            id="login"
            label={ACCESS.login}
            value={login}
            onInput={setLogin}
            autocomplete="username"
          />
        </>
      ) : (
        <p>{ACCESS.chooseFor(`${about.name ?? ''} (${about.login ?? ''})`)}</p>
      )}
      <PasswordField
        id="new-password"
        label={ACCESS.newPassword}
        value={password}
        onInput={setPassword}
        autocomplete="new-password"
        hint={ACCESS.passwordHint}
      />
    </AccessForm>
  )
}

/** A one-time code first; once it is known what it is for, the password. */
export function CodeForm({ onIn }: { readonly onIn: () => void }) {
  const [code, setCode] = useState('')
  const [about, setAbout] = useState<CodeLookAnswer | null>(null)
  if (about !== null) return <ChooseForm code={code} about={about} onIn={onIn} />
  const submit = async (): Promise<Said> => {
    const answer = await askAccess('POST', '/api/session/code/look', codeLookAnswer, { body: { code } })
    if (answer.state === 'done') setAbout(answer.value)
    return saidOf(answer)
  }
  return (
    <AccessForm label={ACCESS.code} action={ACCESS.goOn} submit={submit}>
      <LineField
        id="code"
        label={ACCESS.code}
        value={code}
        onInput={setCode}
        autocomplete="one-time-code"
        hint={ACCESS.codeHint}
      />
    </AccessForm>
  )
}
