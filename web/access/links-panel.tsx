import { useEffect, useState } from 'preact/hooks'
import { newShareAnswer, shareAccessList, shareList } from '../../shared/contracts/access.ts'
import { DataTable } from '../crossings/answers/data-table.tsx'
import { fetchList } from '../saved/crossing-requests.ts'
import { whenWords } from '../saved/when.ts'
import { AccessForm, type Said, saidOf } from './access-form.tsx'
import { askAccess, DONE } from './access-requests.ts'
import { ACCESS } from './access-words.ts'
import { useFetchedList } from './fetched-list.ts'
import { LineField } from './secret-field.tsx'

const USUAL_DAYS = '30'

type Choice = { readonly id: string; readonly name: string }

function useCrossings(): readonly Choice[] {
  const [found, setFound] = useState<readonly Choice[]>([])
  useEffect(() => {
    void fetchList().then((answer) => {
      if (answer.state !== 'answered') return
      setFound([...answer.items].sort((a, b) => a.name.localeCompare(b.name)))
    })
  }, [])
  return found
}

function MakeForm({ onLink }: { readonly onLink: (address: string) => void }) {
  const crossings = useCrossings()
  const [chosen, setChosen] = useState('')
  const [name, setName] = useState('')
  const [days, setDays] = useState(USUAL_DAYS)
  const submit = async (): Promise<Said> => {
    const crossing = chosen || (crossings[0]?.id ?? '')
    const body = { crossing, name, days: Number(days) }
    const answer = await askAccess('POST', '/api/shares', newShareAnswer, { body })
    if (answer.state === 'done') {
      onLink(`${location.origin}/shared#${answer.value.token}`)
      setName('')
    }
    return saidOf(answer)
  }
  return (
    <AccessForm label={ACCESS.linkMake} action={ACCESS.linkMake} submit={submit}>
      <div class="fields">
        <div class="field">
          <label for="link-crossing">{ACCESS.linkCrossing}</label>
          <select
            id="link-crossing"
            value={chosen || (crossings[0]?.id ?? '')}
            onChange={(event) => setChosen(event.currentTarget.value)}
          >
            {crossings.map(({ id, name: each }) => (
              <option key={id} value={id}>
                {each}
              </option>
            ))}
          </select>
        </div>
        <LineField id="link-for" label={ACCESS.linkFor} value={name} onInput={setName} autocomplete="off" />
        <LineField
          id="link-days"
          label={ACCESS.linkDays}
          value={days}
          onInput={setDays}
          autocomplete="off"
          inputMode="numeric"
        />
      </div>
    </AccessForm>
  )
}

/** Made at an address that means another machine everywhere else. */
const isOnlyHere = (link: string): boolean =>
  ['localhost', '127.0.0.1', '[::1]'].includes(new URL(link).hostname)

/** When and from where a link was used, on demand. */
function Uses({ id, name }: { readonly id: string; readonly name: string }) {
  const [uses, setUses] = useState<readonly { readonly at: string; readonly from: string }[] | null>(null)
  if (uses === null) {
    const ask = async () => {
      const answer = await askAccess('GET', `/api/shares/${id}/accesses`, shareAccessList)
      if (answer.state === 'done') setUses(answer.value.items)
    }
    return (
      <button type="button" aria-label={ACCESS.ofWhom(ACCESS.uses, name)} onClick={() => void ask()}>
        {ACCESS.uses}
      </button>
    )
  }
  return (
    <div role="status">
      {ACCESS.usesCount(uses.length)}
      <ul>
        {uses.slice(0, 20).map(({ at, from }) => (
          <li key={`${at} ${from}`}>
            {whenWords(at)}, {from}
          </li>
        ))}
      </ul>
    </div>
  )
}

/** Links that show a crossing to people without an account. */
export function LinksPanel() {
  const { items, again } = useFetchedList('/api/shares', shareList)
  const [made, setMade] = useState<string | null>(null)
  const revoke = async (id: string) => {
    await askAccess('DELETE', `/api/shares/${id}`, DONE)
    await again()
  }
  const rows = items.map((link) => {
    const isOver = Date.parse(link.expiresAt) <= Date.now()
    return {
      key: link.id,
      cells: [
        link.name,
        link.madeBy,
        whenWords(link.expiresAt),
        <Uses key="uses" id={link.id} name={link.name} />,
        link.revokedAt !== null || isOver ? (
          isOver ? (
            ACCESS.over
          ) : (
            ACCESS.takenBack
          )
        ) : (
          <button
            key="revoke"
            type="button"
            aria-label={ACCESS.ofWhom(ACCESS.takeBack, link.name)}
            onClick={() => void revoke(link.id)}
          >
            {ACCESS.takeBack}
          </button>
        ),
      ],
    }
  })
  return (
    <section class="panel">
      <h2>{ACCESS.links}</h2>
      <p class="hint">{ACCESS.linksIntro}</p>
      {rows.length > 0 && <DataTable caption={ACCESS.links} columns={ACCESS.linkColumns} rows={rows} />}
      <MakeForm
        onLink={(address) => {
          setMade(address)
          void again()
        }}
      />
      <div role="status">
        {made !== null && (
          <>
            <p>{ACCESS.linkShown}</p>
            {isOnlyHere(made) && <p>{ACCESS.linkHere}</p>}
            <p>
              <code class="shown-once">{made}</code>
            </p>
          </>
        )}
      </div>
    </section>
  )
}
