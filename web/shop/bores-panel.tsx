import { useEffect, useState } from 'preact/hooks'
import { AIR_STATES, OILING } from '../../shared/core/shop/exposure.ts'
import type { JsonObject } from '../state/json.ts'
import { plannedDocument } from './planned-document.ts'
import type { ShopTool, ShopView } from './shop-facts.ts'
import { fetchAll } from './shop-requests.ts'
import { dayWords } from './shop-said.ts'
import { keepDocument } from './shop-store.ts'
import { SHOP } from './shop-words.ts'

type Props = { readonly tool: ShopTool; readonly view: ShopView }
type Named = { readonly id: string; readonly name: string }

const SIZES = ['length', 'hammerTime', 'pressure'] as const
const CHOICES = {
  abrasivity: ['1', '2', '3', '4', '5', '6'],
  oil: OILING,
  air: AIR_STATES,
} as const
const CHOICE_KEYS = ['abrasivity', 'oil', 'air'] as const
type Typed = Readonly<Record<(typeof SIZES)[number] | (typeof CHOICE_KEYS)[number], string>>
const NOTHING: Typed = { length: '', hammerTime: '', pressure: '', abrasivity: '', oil: '', air: '' }

/** Crossings by name; without a connection there are none to choose from, and that is said. */
function useCrossings(): readonly Named[] | null {
  const [found, setFound] = useState<readonly Named[] | null>(null)
  useEffect(() => {
    void fetchAll('crossings').then((list) =>
      setFound(
        (list ?? [])
          .map(({ id, document }) => ({ id, name: String(document.name ?? id) }))
          .sort((a, b) => a.name.localeCompare(b.name)),
      ),
    )
  }, [])
  return found
}

function logDocument(tool: ShopTool, crossing: Named, on: string, typed: Typed): JsonObject {
  const given = [...SIZES, 'oil' as const, 'air' as const].flatMap((key) =>
    typed[key].trim() === '' ? [] : [[key, typed[key].trim()] as const],
  )
  return {
    name: crossing.name,
    crossing: crossing.id,
    on,
    tool: tool.entry.id,
    ...Object.fromEntries(given),
    ...(typed.abrasivity === '' ? {} : { abrasivity: Number(typed.abrasivity) }),
  }
}

type FieldsProps = { readonly typed: Typed; readonly onType: (to: Partial<Typed>) => void }
function MadeFields({ typed, onType }: FieldsProps) {
  const W = SHOP.bores
  return (
    <>
      {SIZES.map((key) => (
        <div class="field" key={key}>
          <label for={`bore-${key}`}>{W[key]}</label>
          <input
            id={`bore-${key}`}
            type="text"
            autocomplete="off"
            maxLength={40}
            value={typed[key]}
            onInput={(event) => onType({ [key]: event.currentTarget.value })}
          />
        </div>
      ))}
      {CHOICE_KEYS.map((key) => (
        <div class="field" key={key}>
          <label for={`bore-${key}`}>{W[key]}</label>
          <select
            id={`bore-${key}`}
            value={typed[key]}
            onChange={(event) => onType({ [key]: event.currentTarget.value })}
          >
            <option value="">{W.notSaid}</option>
            {CHOICES[key].map((each, place) => (
              <option key={each} value={each}>
                {W.choices[key][place]}
              </option>
            ))}
          </select>
        </div>
      ))}
    </>
  )
}

/** Bores a tool has made and is put to: what its hours and its next service come from. */
export function BoresPanel({ tool, view }: Props) {
  const W = SHOP.bores
  const { today, planned } = view.factsOf(tool.entry.id)
  const crossings = useCrossings()
  const [chosen, choose] = useState('')
  const [on, setOn] = useState(today)
  const [typed, setTyped] = useState(NOTHING)
  const [outcome, setOutcome] = useState<'saved' | 'failed' | null>(null)
  const crossing = crossings?.find(({ id }) => id === chosen)
  const keep = async (noun: 'bore-logs' | 'days', document: JsonObject) => {
    const isKept = await keepDocument(noun, null, null, document)
    setOutcome(isKept ? 'saved' : 'failed')
    if (isKept) setTyped(NOTHING)
  }
  return (
    <section class="panel" aria-labelledby="bores-heading">
      <h2 id="bores-heading">{W.heading}</h2>
      {planned.length === 0 && <p>{SHOP.wear.noPlan}</p>}
      <ol>
        {planned.map((bore) => (
          <li key={`${bore.id} ${bore.on}`}>
            {bore.name}, {dayWords(bore.on)}
          </li>
        ))}
      </ol>
      <div class="fields">
        <div class="field">
          <label for="bore-crossing">{W.crossing}</label>
          <select id="bore-crossing" value={chosen} onChange={(event) => choose(event.currentTarget.value)}>
            <option value="">{crossings !== null && crossings.length === 0 ? W.none : W.choose}</option>
            {crossings?.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
        </div>
        <div class="field">
          <label for="bore-on">{SHOP.form.on}</label>
          <input id="bore-on" type="date" value={on} onInput={(event) => setOn(event.currentTarget.value)} />
        </div>
        <MadeFields typed={typed} onType={(to) => setTyped({ ...typed, ...to })} />
      </div>
      <p class="fine">{W.hint}</p>
      <div class="big-choices">
        <button
          type="button"
          disabled={crossing === undefined || on === '' || on > today || typed.length.trim() === ''}
          onClick={() => crossing && void keep('bore-logs', logDocument(tool, crossing, on, typed))}
        >
          {W.made}
        </button>
        <button
          type="button"
          disabled={crossing === undefined || on < today || view.isHeld(tool.entry.id)}
          onClick={() => crossing && void keep('days', plannedDocument(tool.entry.id, crossing.id, on))}
        >
          {W.plan}
        </button>
      </div>
      {view.isHeld(tool.entry.id) && <p class="fine">{W.held}</p>}
      <p role="status" class="fine">
        {outcome === null ? '' : W[outcome]}
      </p>
    </section>
  )
}
