import { useState } from 'preact/hooks'
import type { Piece } from '../../shared/core/shop/part-history.ts'
import { civilNow } from '../site/civil-now.ts'
import type { JsonObject } from '../state/json.ts'
import type { ShopTool, ShopView } from './shop-facts.ts'
import { partName, partNameOf } from './shop-said.ts'
import { keepDocument } from './shop-store.ts'
import { SHOP } from './shop-words.ts'

type Props = { readonly tool: ShopTool; readonly view: ShopView }
type Fitted = { readonly tool: string; readonly on: string; readonly off: string | null }

const written = (fitted: readonly Fitted[]) =>
  fitted.map(({ tool, on, off }) => ({ tool, on, ...(off === null ? {} : { off }) }))

/** Out of wherever it sits, today. */
const takenOut = (piece: Piece, today: string): readonly Fitted[] =>
  piece.fitted.map((each) => (each.off === null ? { ...each, off: today } : each))

function PieceLine({
  piece,
  tool,
  view,
  onDone,
}: Props & { piece: Piece; onDone: (isKept: boolean) => void }) {
  const W = SHOP.pieces
  const entry = view.pieceEntries.find(({ id }) => id === piece.id)
  const today = civilNow(new Date()).day
  const keep = async (fitted: readonly Fitted[], at: string | null) => {
    if (entry === undefined) return
    const { tool: _where, ...rest } = entry.document
    const document: JsonObject = {
      ...rest,
      fitted: written(fitted),
      ...(at === null ? {} : { tool: at }),
    }
    onDone(await keepDocument('parts', entry.id, entry.version, document))
  }
  const fitHere = () =>
    keep([...takenOut(piece, today), { tool: tool.entry.id, on: today, off: null }], tool.entry.id)
  const isHere = piece.tool === tool.entry.id
  const other = view.tools.find(({ entry: each }) => each.id === piece.tool)
  const where = isHere ? W.here : other === undefined ? W.shelf : W.elsewhere(other.file.name)
  return (
    <li class="piece">
      <span>
        <strong>{piece.name}</strong>, {partNameOf(tool.template, piece.key)}: {where}
      </span>
      {isHere ? (
        <button type="button" onClick={() => void keep(takenOut(piece, today), null)}>
          {W.take} <span class="unseen">{piece.name}</span>
        </button>
      ) : (
        <button type="button" onClick={() => void fitHere()}>
          {W.fit} <span class="unseen">{piece.name}</span>
        </button>
      )}
    </li>
  )
}

/** Pieces that are moved between tools, with their hours. */
export function PiecesPanel({ tool, view }: Props) {
  const W = SHOP.pieces
  const [name, setName] = useState('')
  const [key, setKey] = useState(tool.template.parts[0]?.key ?? '')
  const [isKept, setKept] = useState(true)
  const add = async () => {
    const today = civilNow(new Date()).day
    const document = {
      name: name.trim(),
      key,
      tool: tool.entry.id,
      fitted: [{ tool: tool.entry.id, on: today }],
    }
    const done = await keepDocument('parts', null, null, document)
    setKept(done)
    if (done) setName('')
  }
  return (
    <section class="panel" aria-labelledby="pieces-heading">
      <h2 id="pieces-heading">{W.heading}</h2>
      <p class="fine">{W.intro}</p>
      <ul class="pieces">
        {view.pieces.map((piece) => (
          <PieceLine key={piece.id} piece={piece} tool={tool} view={view} onDone={setKept} />
        ))}
      </ul>
      <div class="fields">
        <div class="field">
          <label for="piece-name">{W.name}</label>
          <input
            id="piece-name"
            type="text"
            autocomplete="off"
            maxLength={80}
            value={name}
            onInput={(event) => setName(event.currentTarget.value)}
          />
        </div>
        <div class="field">
          <label for="piece-key">{W.part}</label>
          <select id="piece-key" value={key} onChange={(event) => setKey(event.currentTarget.value)}>
            {tool.template.parts.map((part) => (
              <option key={part.key} value={part.key}>
                {partName(part)}
              </option>
            ))}
          </select>
        </div>
      </div>
      <button type="button" disabled={name.trim() === ''} onClick={() => void add()}>
        {W.add}
      </button>
      <p role="status" class="fine">
        {isKept ? '' : W.failed}
      </p>
    </section>
  )
}
