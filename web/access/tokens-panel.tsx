import { useState } from 'preact/hooks'
import { newTokenAnswer, type RoleName, tokenList } from '../../shared/contracts/access.ts'
import { DataTable } from '../crossings/answers/data-table.tsx'
import { whenWords } from '../saved/when.ts'
import { AccessForm, type Said, saidOf } from './access-form.tsx'
import { askAccess, DONE } from './access-requests.ts'
import { ACCESS } from './access-words.ts'
import { useFetchedList } from './fetched-list.ts'
import { RoleField } from './role-field.tsx'
import { LineField } from './secret-field.tsx'

/** Tokens by which scripts come in; each is seen once. */
export function TokensPanel() {
  const { items, again } = useFetchedList('/api/tokens', tokenList)
  const [name, setName] = useState('')
  const [role, setRole] = useState<RoleName>('viewer')
  const [made, setMade] = useState<string | null>(null)
  const submit = async (): Promise<Said> => {
    const answer = await askAccess('POST', '/api/tokens', newTokenAnswer, { body: { name, role } })
    if (answer.state === 'done') {
      setMade(answer.value.token)
      setName('')
      await again()
    }
    return saidOf(answer)
  }
  const revoke = async (id: string) => {
    await askAccess('DELETE', `/api/tokens/${id}`, DONE)
    await again()
  }
  const rows = items.map((token) => ({
    key: token.id,
    cells: [
      token.name,
      ACCESS.roles[token.role],
      whenWords(token.madeAt),
      token.usedAt === null ? ACCESS.never : whenWords(token.usedAt),
      token.revokedAt !== null ? (
        ACCESS.takenBack
      ) : (
        <button
          key="revoke"
          type="button"
          aria-label={ACCESS.ofWhom(ACCESS.takeBack, token.name)}
          onClick={() => void revoke(token.id)}
        >
          {ACCESS.takeBack}
        </button>
      ),
    ],
  }))
  return (
    <section class="panel">
      <h2>{ACCESS.tokens}</h2>
      <p class="hint">{ACCESS.tokensIntro}</p>
      {rows.length > 0 && <DataTable caption={ACCESS.tokens} columns={ACCESS.tokenColumns} rows={rows} />}
      <AccessForm label={ACCESS.tokens} action={ACCESS.add} submit={submit}>
        <div class="fields">
          <LineField id="token-name" label={ACCESS.name} value={name} onInput={setName} autocomplete="off" />
          <RoleField id="token-role" label={ACCESS.role} value={role} without="owner" onChange={setRole} />
        </div>
      </AccessForm>
      <div role="status">
        {made !== null && (
          <>
            <p>{ACCESS.tokenShown}</p>
            <p>
              <code class="shown-once">{made}</code>
            </p>
          </>
        )}
      </div>
    </section>
  )
}
