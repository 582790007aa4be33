import { useState } from 'preact/hooks'
import type { ReleaseAnswer } from '../../shared/contracts/release-answer.ts'
import { maySetAside } from '../../shared/core/digsafe/release-points.ts'
import { REOPEN_CAUSES, type ReopenCause } from '../../shared/core/digsafe/sign-off-items.ts'
import { afterSentence, gateWord } from '../../shared/text/gate-sentences.ts'
import { releaseSentence } from '../../shared/text/release-sentences.ts'
import { say } from '../state/unit-choice.ts'
import type { SignedStore } from './signed-store.ts'
import { type Shown, signOffNow } from './site-state.ts'
import { SITE } from './site-words.ts'

type Props = {
  readonly shown: Shown
  readonly store: SignedStore
  readonly name: string
  readonly onName: (name: string) => void
}

function NameField({
  id,
  label,
  value,
  onInput,
}: {
  readonly id: string
  readonly label: string
  readonly value: string
  readonly onInput: (value: string) => void
}) {
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <input id={id} type="text" value={value} onInput={(event) => onInput(event.currentTarget.value)} />
    </div>
  )
}

/** What ends a release: one tap each, with the name that stands there. */
export function Happened({ shown, store, name, onName }: Props) {
  const [said, setSaid] = useState('')
  const tell = async (why: ReopenCause) => {
    if (name.trim() === '') return setSaid(SITE.nameFirst)
    const file = signOffNow(shown, { layer: 'reopen', by: name.trim(), why }, new Date())
    setSaid((await store.sign(file, [])) ? gateWord('cause', why, say.value) : SITE.noRoom)
  }
  return (
    <details class="folded">
      <summary>{SITE.happened}</summary>
      <p class="fine">{SITE.happenedHint}</p>
      <div class="fields">
        <NameField id="site-happened-name" label={SITE.happenedName} value={name} onInput={onName} />
      </div>
      <div class="actions">
        {REOPEN_CAUSES.map((why) => (
          <button key={why} type="button" class="quiet" onClick={() => void tell(why)}>
            {gateWord('cause', why, say.value)}
          </button>
        ))}
      </div>
      <p role="status">{said}</p>
    </details>
  )
}

/** A rule set aside by two people: which, why, and who the other is. */
export function SetAside({ shown, store, name, onName }: Props) {
  const [rule, setRule] = useState('')
  const [second, setSecond] = useState('')
  const [reason, setReason] = useState('')
  const [said, setSaid] = useState('')
  const rules = shown.plan.release.reasons.filter(
    ({ code, kind, values }) =>
      kind !== 'advice' && maySetAside(code, typeof values.kind === 'string' ? values.kind : null),
  )
  const sign = async () => {
    const found = rules[Number(rule)]
    const same = name.trim().toLowerCase() === second.trim().toLowerCase()
    const isWhole = found && !same && name.trim() && second.trim() && reason.trim().length >= 8
    if (!isWhole || rule === '') return setSaid(SITE.asideTwo)
    const line = found.values.line
    const setAside = {
      code: found.code,
      reason: reason.trim(),
      second: second.trim(),
      ...(typeof line === 'number' ? { line } : {}),
    }
    const file = signOffNow(shown, { layer: 'bore', by: name.trim(), setAside }, new Date())
    setSaid((await store.sign(file, [])) ? SITE.signedNow : SITE.noRoom)
  }
  return (
    <details class="folded">
      <summary>{SITE.aside}</summary>
      <p class="fine">{SITE.asideHint}</p>
      {rules.length === 0 ? (
        <p>{SITE.asideNone}</p>
      ) : (
        <>
          <div class="fields">
            <div class="field">
              <label for="site-rule">{SITE.asideRule}</label>
              <select id="site-rule" value={rule} onChange={(event) => setRule(event.currentTarget.value)}>
                <option value="" />
                {rules.map((each, place) => (
                  <option key={`${each.code} ${each.values.line ?? ''}`} value={String(place)}>
                    {releaseSentence(each, say.value)}
                  </option>
                ))}
              </select>
            </div>
            <NameField id="site-reason" label={SITE.asideReason} value={reason} onInput={setReason} />
            <NameField id="site-first" label={SITE.name} value={name} onInput={onName} />
            <NameField id="site-second" label={SITE.asideSecond} value={second} onInput={setSecond} />
          </div>
          <button type="button" onClick={() => void sign()}>
            {SITE.asideSign}
          </button>
        </>
      )}
      <p role="status">{said}</p>
    </details>
  )
}

/** Looked at, by whom: not for gas or service before. */
export function AfterLook({
  shown,
  store,
  answer,
}: Omit<Props, 'name' | 'onName'> & { readonly answer: ReleaseAnswer }) {
  const [by, setBy] = useState('')
  const [said, setSaid] = useState('')
  const sign = async () => {
    if (by.trim() === '') return setSaid(SITE.nameFirst)
    const file = signOffNow(
      shown,
      { layer: 'after', by: by.trim(), items: ['after-look-agreed'] },
      new Date(),
    )
    setSaid((await store.sign(file, [])) ? SITE.signedNow : SITE.noRoom)
  }
  return (
    <details class="folded">
      <summary>{SITE.after}</summary>
      <p>{afterSentence(answer.after, say.value)}</p>
      <div class="fields">
        <NameField id="site-after" label={SITE.afterName} value={by} onInput={setBy} />
      </div>
      <button type="button" onClick={() => void sign()}>
        {SITE.afterSign}
      </button>
      <p role="status">{said}</p>
    </details>
  )
}
