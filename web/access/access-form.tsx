import type { ComponentChildren } from 'preact'
import { useState } from 'preact/hooks'
import { StatusMark } from '../crossings/answers/status-mark.tsx'
import type { Answered } from './access-requests.ts'
import { ACCESS, refusedWords } from './access-words.ts'

export type Said = { readonly tone: 'good' | 'bad'; readonly text: string } | null

/** What came of it, said to those who listen as well. */
export const SaidLine = ({ said }: { readonly said: Said }) => (
  <p class={said?.tone === 'bad' ? 'said-line said-bad' : 'said-line'} role="status">
    {said !== null && (
      <>
        <StatusMark shape={said.tone === 'bad' ? 'stop' : 'good'} /> {said.text}
      </>
    )}
  </p>
)

export function saidOf(answer: Answered<unknown>, done: string | null = null): Said {
  if (answer.state === 'done') return done === null ? null : { tone: 'good', text: done }
  if (answer.state === 'unreachable') return { tone: 'bad', text: ACCESS.unreachable }
  return { tone: 'bad', text: refusedWords(answer) }
}

type Props = {
  readonly label: string
  readonly action: string
  /** What is said afterwards; null says nothing. */
  readonly submit: () => Promise<Said>
  readonly children: ComponentChildren
}

/** A form that sends itself once at a time and says what came of it. */
export function AccessForm({ label, action, submit, children }: Props) {
  const [said, setSaid] = useState<Said>(null)
  const [isBusy, setBusy] = useState(false)
  const send = async () => {
    if (isBusy) return
    setBusy(true)
    setSaid(null)
    try {
      setSaid(await submit())
    } finally {
      setBusy(false)
    }
  }
  return (
    <form
      class="access-form"
      aria-label={label}
      onSubmit={(event) => {
        event.preventDefault()
        void send()
      }}
    >
      {children}
      <button type="submit" class="save" aria-disabled={isBusy}>
        {isBusy ? ACCESS.oneMoment : action}
      </button>
      <SaidLine said={said} />
    </form>
  )
}
