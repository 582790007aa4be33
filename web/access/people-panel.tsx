import { useState } from 'preact/hooks'
import { z } from 'zod'
import {
  type AccountAnswer,
  accountAnswer,
  accountList,
  newCodeAnswer,
  type RoleName,
  type SignedIn,
} from '../../shared/contracts/access.ts'
import { DataTable } from '../crossings/answers/data-table.tsx'
import { whenWords } from '../saved/when.ts'
import { AccessForm, type Said, SaidLine, saidOf } from './access-form.tsx'
import { askAccess } from './access-requests.ts'
import { ACCESS } from './access-words.ts'
import { useFetchedList } from './fetched-list.ts'
import { RoleField, RoleSelect } from './role-field.tsx'
import { LineField } from './secret-field.tsx'

/** Those the store knows as people, with or without an account. */
const personList = z.object({ items: z.array(z.object({ id: z.guid(), name: z.string() })) })
type Person = z.infer<typeof personList>['items'][number]

type Given = { readonly name: string; readonly code: string; readonly until: string }

function GivenCode({ given }: { readonly given: Given | null }) {
  return (
    <div role="status">
      {given !== null && (
        <>
          <p>{ACCESS.giveCode(given.name, whenWords(given.until))}</p>
          <p>
            <code class="shown-once">{given.code}</code>
          </p>
        </>
      )}
    </div>
  )
}

function AddForm({ onCode }: { readonly onCode: (given: Given) => void }) {
  const [name, setName] = useState('')
  const [login, setLogin] = useState('')
  const [role, setRole] = useState<RoleName>('crew-lead')
  const submit = async (): Promise<Said> => {
    const answer = await askAccess('POST', '/api/accounts', newCodeAnswer, { body: { name, login, role } })
    if (answer.state === 'done') {
      const { account, code, expiresAt } = answer.value
      onCode({ name: account.name, code, until: expiresAt })
      setName('')
      setLogin('')
    }
    return saidOf(answer)
  }
  return (
    <AccessForm label={ACCESS.addPerson} action={ACCESS.add} submit={submit}>
      <h3>{ACCESS.addPerson}</h3>
      <div class="fields">
        <LineField id="person-name" label={ACCESS.name} value={name} onInput={setName} autocomplete="off" />
        <LineField
          id="person-login"
          label={ACCESS.login}
          value={login}
          onInput={setLogin}
          autocomplete="off"
        />
        <RoleField id="person-role" label={ACCESS.role} value={role} onChange={setRole} />
      </div>
    </AccessForm>
  )
}

function stateOf({ isActive, hasPassword, hasSecondFactor }: AccountAnswer): string {
  if (!isActive) return ACCESS.keptOut
  if (!hasPassword) return ACCESS.invited
  return hasSecondFactor ? `${ACCESS.active}, ${ACCESS.withFactor}` : ACCESS.active
}

type Doors = {
  readonly persons: readonly Person[]
  readonly change: (account: AccountAnswer, to: Partial<AccountAnswer>) => void
  readonly renew: (account: AccountAnswer) => void
}

/** Which of the people on the crews an account is: what its crew has to do is its own. */
const PersonSelect = ({ account, doors }: { readonly account: AccountAnswer; readonly doors: Doors }) => (
  <select
    aria-label={ACCESS.ofWhom(ACCESS.person, account.name)}
    value={account.person ?? ''}
    onChange={(event) => doors.change(account, { person: event.currentTarget.value || null })}
  >
    <option value="">{ACCESS.nobody}</option>
    {doors.persons.map(({ id, name }) => (
      <option key={id} value={id}>
        {name}
      </option>
    ))}
  </select>
)

const PersonActions = ({ account, doors }: { readonly account: AccountAnswer; readonly doors: Doors }) => (
  <div class="access-actions">
    {account.isActive && (
      <button
        type="button"
        aria-label={ACCESS.ofWhom(ACCESS.newCode, account.name)}
        onClick={() => doors.renew(account)}
      >
        {ACCESS.newCode}
      </button>
    )}
    <button
      type="button"
      aria-label={ACCESS.ofWhom(account.isActive ? ACCESS.keepOut : ACCESS.letIn, account.name)}
      onClick={() => doors.change(account, { isActive: !account.isActive })}
    >
      {account.isActive ? ACCESS.keepOut : ACCESS.letIn}
    </button>
  </div>
)

const rowOf = (account: AccountAnswer, isMe: boolean, doors: Doors) => ({
  key: account.id,
  cells: [
    account.name,
    account.login,
    isMe ? (
      ACCESS.roles[account.role]
    ) : (
      <RoleSelect
        key="role"
        id={`role-${account.id}`}
        label={ACCESS.ofWhom(ACCESS.role, account.name)}
        value={account.role}
        onChange={(role) => doors.change(account, { role })}
      />
    ),
    <PersonSelect key="person" account={account} doors={doors} />,
    stateOf(account),
    isMe ? '' : <PersonActions key="actions" account={account} doors={doors} />,
  ],
})

/** Everybody who may come in: added, given another role, kept out, given a new code. */
export function PeoplePanel({ me }: { readonly me: SignedIn }) {
  const { items, again } = useFetchedList('/api/accounts', accountList)
  const persons = useFetchedList('/api/people?limit=500', personList)
  const [given, setGiven] = useState<Given | null>(null)
  const [said, setSaid] = useState<Said>(null)
  const doors: Doors = {
    persons: persons.items,
    async change(account, to) {
      const { name, role, person, isActive } = { ...account, ...to }
      const ask = { body: { name, role, person, isActive }, version: account.version }
      setSaid(saidOf(await askAccess('PUT', `/api/accounts/${account.id}`, accountAnswer, ask), ACCESS.done))
      await again()
    },
    async renew(account) {
      const answer = await askAccess('POST', `/api/accounts/${account.id}/code`, newCodeAnswer)
      if (answer.state === 'done') {
        setGiven({ name: account.name, code: answer.value.code, until: answer.value.expiresAt })
      }
      setSaid(saidOf(answer))
    },
  }
  return (
    <section class="panel">
      <h2>{ACCESS.people}</h2>
      <p class="hint">{ACCESS.peopleIntro}</p>
      <GivenCode given={given} />
      <SaidLine said={said} />
      <DataTable
        caption={ACCESS.people}
        columns={ACCESS.peopleColumns}
        rows={items.map((account) => rowOf(account, account.id === me.id, doors))}
      />
      <AddForm
        onCode={(code) => {
          setGiven(code)
          void again()
        }}
      />
    </section>
  )
}
