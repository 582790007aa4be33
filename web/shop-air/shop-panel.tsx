import { useEffect, useState } from 'preact/hooks'
import { FoldedList } from '../crossings/form/panel.tsx'
import type { CrossingModel } from '../state/crossing-model.ts'
import { listAt, valueAt } from '../state/document-path.ts'
import { isObject, type JsonObject } from '../state/json.ts'
import { AIR } from '../words/air-words.ts'
import { ReadingFields } from './reading-fields.tsx'
import { fetchShop, keepInShop, SHOP_NOUNS, type ShopItem, type ShopNoun, shop } from './shop-air.ts'

const W = AIR.fleet
type Props = { readonly model: CrossingModel }

/** What a kept document says of itself, and what stands beside the compressor in a crossing. */
const OF_THE_SHELF = ['schema', 'name', 'serial', 'notes']
const BESIDE = ['receiver', 'oiler', 'separator'] as const
const inLine = (document: JsonObject): JsonObject =>
  Object.fromEntries(
    Object.entries(document).filter(
      ([key]) => !OF_THE_SHELF.includes(key) && !BESIDE.some((each) => each === key),
    ),
  )

type PickProps = {
  readonly noun: ShopNoun
  readonly label: string
  readonly does: string
  readonly onPick: (item: ShopItem) => void
}

function Pick({ noun, label, does, onPick }: PickProps) {
  const items = shop[noun].value ?? []
  const [chosen, choose] = useState('')
  const item = items.find(({ id }) => id === chosen)
  const id = `shop-${noun}`
  if (items.length === 0) return null
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <select id={id} value={chosen} onChange={(event) => choose(event.currentTarget.value)}>
        <option value="">{AIR.answer.none}</option>
        {items.map((each) => (
          <option key={each.id} value={each.id}>
            {each.name}
          </option>
        ))}
      </select>
      <button type="button" class="quiet" disabled={item === undefined} onClick={() => item && onPick(item)}>
        {does}
      </button>
    </div>
  )
}

function Picks({ model }: Props) {
  const useCompressor = ({ document }: ShopItem) => {
    const beside = BESIDE.flatMap((key) =>
      document[key] === undefined ? [] : [[`air.${key}`, document[key]] as const],
    )
    const oiled = document.oiler === undefined ? [] : [['air.lubricator', true] as const]
    model.setAll([['air.compressor', inLine(document)], ...beside, ...oiled])
  }
  const addHose = ({ document }: ShopItem) => {
    const hoses = listAt(model.document.value, 'air.hoses').filter(
      (hose) => isObject(hose) && Object.keys(hose).length > 0,
    )
    model.set('air.hoses', [...hoses, inLine(document)])
  }
  const isEmpty = SHOP_NOUNS.every((noun) => (shop[noun].value ?? []).length === 0)
  if (isEmpty) return <p class="fine">{W.none}</p>
  return (
    <div class="fields">
      <Pick noun="compressors" label={W.compressor} does={W.use} onPick={useCompressor} />
      <Pick noun="hoses" label={W.hose} does={W.add} onPick={addHose} />
    </div>
  )
}

type Keep = { readonly noun: ShopNoun; readonly documents: readonly JsonObject[] }

/** What of the form can be kept: whole documents, named by who keeps them. */
function keepable(document: JsonObject): readonly (Keep & { readonly words: string })[] {
  const compressor = valueAt(document, 'air.compressor')
  const hoses = listAt(document, 'air.hoses').filter(isObject)
  const beside = Object.fromEntries(
    BESIDE.flatMap((key) => {
      const value = valueAt(document, `air.${key}`)
      return value === undefined ? [] : [[key, value] as const]
    }),
  )
  return [
    {
      noun: 'compressors',
      words: W.keepCompressor,
      documents: isObject(compressor) ? [{ ...compressor, ...beside }] : [],
    },
    { noun: 'hoses', words: W.keepHoses, documents: hoses },
  ]
}

function KeepFields({ model }: Props) {
  const [name, setName] = useState('')
  const [outcome, setOutcome] = useState<'kept' | 'failed' | null>(null)
  const keep = async ({ noun, documents }: Keep) => {
    const sent = await Promise.all(
      documents.map((document, place) => {
        const numbered = documents.length > 1 ? `${name.trim()} ${place + 1}` : name.trim()
        return keepInShop(noun, { name: numbered, ...document })
      }),
    )
    setOutcome(sent.every((each) => each) ? 'kept' : 'failed')
  }
  return (
    <>
      <h3>{W.keep}</h3>
      <div class="field">
        <label for="shop-name">{W.name}</label>
        <input
          id="shop-name"
          type="text"
          autocomplete="off"
          maxLength={200}
          value={name}
          onInput={(event) => setName(event.currentTarget.value)}
        />
      </div>
      {keepable(model.document.value)
        .filter(({ documents }) => documents.length > 0)
        .map((each) => (
          <button
            key={each.noun}
            type="button"
            class="quiet"
            disabled={name.trim() === ''}
            onClick={() => keep(each)}
          >
            {each.words}
          </button>
        ))}
      <p role="status" class="fine">
        {outcome === null ? '' : W[outcome]}
      </p>
    </>
  )
}

/** The shop's own compressors (with the oiler, separator and tank that ride with them) and hoses: picked from, added to, and read by a gauge. */
export function ShopPanel({ model }: Props) {
  useEffect(() => {
    for (const noun of SHOP_NOUNS) fetchShop(noun)
  }, [])
  return (
    <FoldedList words={W.pick} isOpen={false}>
      <Picks model={model} />
      <ReadingFields model={model} />
      <KeepFields model={model} />
    </FoldedList>
  )
}
