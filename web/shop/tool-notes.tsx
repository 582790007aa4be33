import { useState } from 'preact/hooks'
import type { JsonObject } from '../state/json.ts'
import type { ShopTool, ShopView } from './shop-facts.ts'
import { keepDocument } from './shop-store.ts'
import { SHOP } from './shop-words.ts'

const KEYS = ['complaint', 'withdrawn', 'ratedPressure', 'blowRate', 'stroke'] as const
type Key = (typeof KEYS)[number]
type Typed = Readonly<Record<Key, string>>

const textOf = (document: JsonObject, key: Key): string => {
  const value = document[key]
  return typeof value === 'string' ? value : ''
}

/** As it was, with what was typed in place of it; a complaint keeps its day until its words change. */
function documentWith({ entry, file }: ShopTool, typed: Typed, today: string): JsonObject {
  const others = Object.fromEntries(
    Object.entries(entry.document).filter(([key]) => !KEYS.some((each) => each === key)),
  )
  const words = typed.complaint.trim()
  const on = words === file.complaint?.words ? file.complaint.on : today
  const plain = KEYS.flatMap((key) =>
    key === 'complaint' || typed[key].trim() === '' ? [] : [[key, typed[key].trim()] as const],
  )
  return {
    ...others,
    ...Object.fromEntries(plain),
    ...(words === '' ? {} : { complaint: { on, words } }),
  }
}

/** What the crew said of it, whether it is out of use, and what its plate says. */
export function ToolNotes({ tool, view }: { readonly tool: ShopTool; readonly view: ShopView }) {
  const W = SHOP.notes
  const { document } = tool.entry
  const [typed, setTyped] = useState<Typed>({
    complaint: tool.file.complaint?.words ?? '',
    withdrawn: textOf(document, 'withdrawn'),
    ratedPressure: textOf(document, 'ratedPressure'),
    blowRate: textOf(document, 'blowRate'),
    stroke: textOf(document, 'stroke'),
  })
  const [outcome, setOutcome] = useState<'saved' | 'failed' | null>(null)
  const save = async () => {
    const { today } = view.factsOf(tool.entry.id)
    const changed = documentWith(tool, typed, today)
    const isKept = await keepDocument('tools', tool.entry.id, tool.entry.version, changed)
    setOutcome(isKept ? 'saved' : 'failed')
  }
  return (
    <section class="panel" aria-labelledby="notes-heading">
      <h2 id="notes-heading">{W.heading}</h2>
      <div class="fields">
        {KEYS.map((key) => (
          <div class="field" key={key}>
            <label for={`notes-${key}`}>{W[key]}</label>
            <input
              id={`notes-${key}`}
              type="text"
              autocomplete="off"
              maxLength={300}
              value={typed[key]}
              onInput={(event) => setTyped({ ...typed, [key]: event.currentTarget.value })}
            />
          </div>
        ))}
      </div>
      <button type="button" onClick={() => void save()}>
        {W.save}
      </button>
      <p role="status" class="fine">
        {outcome === null ? '' : W[outcome]}
      </p>
    </section>
  )
}
