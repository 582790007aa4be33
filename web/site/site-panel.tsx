import './site.css'
import { useEffect, useMemo, useState } from 'preact/hooks'
import type { ReleaseAnswer } from '../../shared/contracts/release-answer.ts'
import { SIGN_LAYERS, type SignItem } from '../../shared/core/digsafe/sign-off-items.ts'
import { gateMeaning, gateWord, openSentence } from '../../shared/text/gate-sentences.ts'
import { DataTable } from '../crossings/answers/data-table.tsx'
import { StatusMark } from '../crossings/answers/status-mark.tsx'
import { Panel } from '../crossings/form/panel.tsx'
import type { CrossingModel } from '../state/crossing-model.ts'
import { say } from '../state/unit-choice.ts'
import { LayerForm } from './layer-form.tsx'
import { type SignedStore, signedStore } from './signed-store.ts'
import { AfterLook, Happened, SetAside } from './site-events.tsx'
import { answerFor, planVersion, type Shown } from './site-state.ts'
import { SITE } from './site-words.ts'

const MINUTE_MS = 60_000
const SHAPES = { hold: 'stop', check: 'look', ready: 'good' } as const
const STATES = { hold: 'stop', pass: 'good', 'set-aside': 'look' } as const

/** A clock that moves on by itself: a release must end without anybody touching the page. */
function useNow(): number {
  const [nowMs, setNow] = useState(() => Date.now())
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), MINUTE_MS / 6)
    return () => clearInterval(timer)
  }, [])
  return nowMs
}

function Points({ answer, shown }: { readonly answer: ReleaseAnswer; readonly shown: Shown }) {
  const { reasons } = shown.plan.release
  const others = answer.others.map((each) => openSentence(each, reasons, say.value))
  const open = answer.points.filter((each) => each.state === 'hold').length + (others.length > 0 ? 1 : 0)
  return (
    <details class="folded" open={open > 0 && open < 5}>
      <summary>
        {SITE.points} <span class="fine">{SITE.open(open)}</span>
      </summary>
      <ol class="site-points">
        {answer.points.map((each) => (
          <li key={each.point}>
            <StatusMark shape={STATES[each.state]} />
            <div>
              <p>
                {gateWord('point', each.point, say.value)}{' '}
                <span class="fine">{gateWord('state', each.state, say.value)}</span>
              </p>
              {each.open.map((open) => (
                <p key={`${open.code} ${open.of} ${open.line}`} class="fine">
                  {openSentence(open, reasons, say.value)}
                </p>
              ))}
            </div>
          </li>
        ))}
        {others.length > 0 && (
          <li>
            <StatusMark shape="stop" />
            <div>
              <p>{gateWord('point', 'others', say.value)}</p>
              {others.map((text) => (
                <p key={text} class="fine">
                  {text}
                </p>
              ))}
            </div>
          </li>
        )}
      </ol>
    </details>
  )
}

function SignedList({ store, version }: { readonly store: SignedStore; readonly version: string }) {
  const rows = [...store.signed.value]
    .sort((a, b) => `${b.file.on}${b.file.at ?? ''}`.localeCompare(`${a.file.on}${a.file.at ?? ''}`))
    .map(({ id, file, isSent }) => ({
      key: id,
      cells: [
        `${file.on} ${file.at ?? ''}`,
        file.why === undefined
          ? gateWord('layer', file.layer, say.value)
          : gateWord('cause', file.why, say.value),
        file.setAside === undefined
          ? file.by
          : `${file.by}, ${file.setAside.second}: ${file.setAside.reason}`,
        [isSent ? '' : SITE.notSent, file.layer === 'bore' && file.plan !== version ? SITE.oldPlan : '']
          .filter((each) => each !== '')
          .join(', '),
      ],
    }))
  if (rows.length === 0) return null
  return (
    <details class="folded">
      <summary>{SITE.signedList}</summary>
      <DataTable caption={SITE.signedList} columns={SITE.signedColumns} rows={rows} />
    </details>
  )
}

/** How old is what is known here, and what of it nobody else knows yet. */
function Heard({ store, nowMs }: { readonly store: SignedStore; readonly nowMs: number }) {
  const heardMs = store.asOfMs.value
  const waiting = store.signed.value.filter((each) => !each.isSent).length
  return (
    <p class="fine">
      {heardMs === null
        ? SITE.neverHeard
        : SITE.heard(Math.max(0, Math.floor((nowMs - heardMs) / MINUTE_MS)))}{' '}
      {waiting > 0 && SITE.waiting(waiting)}{' '}
      <button type="button" class="quiet" onClick={() => void store.refresh()}>
        {SITE.again}
      </button>
    </p>
  )
}

const isAskedOf =
  ({ input }: Shown, needed: number) =>
  ({ when }: SignItem): boolean => {
    const lines = input.utilities ?? []
    if (when === 'lines') return lines.length > 0
    if (when === 'proved') return lines.some((each) => each.evidence === 'proved')
    return when !== 'watchers' || needed > 0
  }

function Lists({ shown, store }: { readonly shown: Shown; readonly store: SignedStore }) {
  const nowMs = useNow()
  const [isHere, setHere] = useState(false)
  const [name, setName] = useState('')
  const answer = answerFor(shown, store.signed.value, store.asOfMs.value, isHere, nowMs)
  const open = new Set(
    answer.points
      .flatMap((each) => each.open)
      .flatMap((each) => (each.code === 'plan-hold' ? [] : [each.of])),
  )
  const isAsked = isAskedOf(shown, answer.watchers.needed)
  const signing = { shown, store, name, onName: setName }
  return (
    <>
      <p class="release-status" role="status">
        <span class={`status status-${answer.status}`}>
          <StatusMark shape={SHAPES[answer.status]} />
          <span>{gateWord('status', answer.status, say.value)}</span>
        </span>{' '}
        {gateMeaning(answer, { bore: shown.bore, until: answer.until?.slice(11) ?? '' }, say.value)}
      </p>
      <label class="site-here">
        <input type="checkbox" checked={isHere} onChange={(event) => setHere(event.currentTarget.checked)} />{' '}
        {SITE.here}
      </label>
      <Heard store={store} nowMs={nowMs} />
      {answer.setAside > 0 && <p>{SITE.setAside(answer.setAside)}</p>}
      {answer.watchers.needed > 0 && <p>{SITE.watchers(answer.watchers.named, answer.watchers.needed)}</p>}
      <Points answer={answer} shown={shown} />
      {SIGN_LAYERS.map((layer) => (
        <LayerForm key={layer} layer={layer} open={open} isAsked={isAsked} isHere={isHere} {...signing} />
      ))}
      <Happened {...signing} />
      <SetAside {...signing} />
      <AfterLook shown={shown} store={store} answer={answer} />
      <SignedList store={store} version={planVersion(shown.document)} />
    </>
  )
}

type Props = { readonly crossing: string; readonly model: CrossingModel }

/** The release on site: what is open, what is signed, and how long it holds. The plan itself never says ready. */
export function SitePanel({ crossing, model }: Props) {
  const store = useMemo(() => signedStore(crossing), [crossing])
  const [bore, setBore] = useState(1)
  useEffect(() => {
    void store.refresh()
    const again = () => void store.refresh()
    addEventListener('online', again)
    return () => removeEventListener('online', again)
  }, [store])
  const answers = model.answers.value
  if (answers.state !== 'current')
    return (
      <Panel id="site" heading={SITE.heading}>
        {SITE.notPlanned}
      </Panel>
    )
  const { plan, input } = answers
  const bores = plan.shots.length
  const here = Math.min(bore, bores)
  const shown = { crossing, document: model.document.value, plan, input, bore: here }
  return (
    <Panel id="site" heading={SITE.heading}>
      {bores > 1 && (
        <div class="field">
          <label for="site-bore">{SITE.bore}</label>
          <select
            id="site-bore"
            value={String(here)}
            onChange={(event) => setBore(Number(event.currentTarget.value))}
          >
            {plan.shots.map((shot, place) => (
              <option key={shot.fromM} value={String(place + 1)}>
                {SITE.boreNumber(place + 1)}
              </option>
            ))}
          </select>
        </div>
      )}
      <Lists key={here} shown={shown} store={store} />
    </Panel>
  )
}
