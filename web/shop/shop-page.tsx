import './shop.css'
import type { ComponentChildren } from 'preact'
import { useEffect, useMemo } from 'preact/hooks'
import { useRoute } from 'preact-iso'
import { toolCard } from '../../shared/core/shop/tool-card.ts'
import { connection } from '../offline/connection.ts'
import { civilNow } from '../site/civil-now.ts'
import { AddTool } from './add-tool.tsx'
import { BoresPanel } from './bores-panel.tsx'
import { FleetBoard } from './fleet-board.tsx'
import { InspectionForm } from './inspection-form.tsx'
import { PiecesPanel } from './pieces-panel.tsx'
import { PrintedSheet } from './printed-sheet.tsx'
import { PrintedTag } from './printed-tag.tsx'
import { type ShopTool, type ShopView, shopView } from './shop-facts.ts'
import { loadShop, shop, waiting } from './shop-store.ts'
import { SHOP } from './shop-words.ts'
import { TemplateEditor } from './template-editor.tsx'
import { ToolFace } from './tool-face.tsx'
import { ToolHistory } from './tool-history.tsx'
import { ToolNotes } from './tool-notes.tsx'
import { WearPanel } from './wear-panel.tsx'

const cardOf = (tool: ShopTool, view: ShopView) => {
  const facts = view.toolFacts.find(({ id }) => id === tool.entry.id)
  return facts === undefined ? null : toolCard(facts, view.toolFacts, view.factsOf(tool.entry.id))
}

function ToolItem({ tool, view }: { readonly tool: ShopTool; readonly view: ShopView }) {
  const card = useMemo(() => cardOf(tool, view), [tool, view])
  const at = `/shop/${tool.entry.id}`
  const W = SHOP.card
  if (card === null) return null
  return (
    <li class="panel tool-card">
      <h2>
        <a href={at}>{tool.file.name}</a>
        {tool.entry.demo && <span class="fine"> {SHOP.demo}</span>}
      </h2>
      <ToolFace tool={tool} card={card} />
      <p class="tool-doors">
        <a class="tool-door" href={`${at}/inspect`}>
          {W.inspect}
        </a>
        <a class="tool-door" href={at}>
          {W.open}
        </a>
      </p>
    </li>
  )
}

const Fleet = ({ view }: { readonly view: ShopView }) => (
  <>
    <h1>{SHOP.heading}</h1>
    <p class="fine">{SHOP.intro}</p>
    {view.tools.length === 0 && <p>{SHOP.empty}</p>}
    <ul class="tool-cards">
      {view.tools.map((tool) => (
        <ToolItem key={tool.entry.id} tool={tool} view={view} />
      ))}
    </ul>
    <section class="panel">
      <AddTool />
    </section>
    {view.tools.length > 1 && <FleetBoard view={view} />}
  </>
)

function ToolPlace({ tool, view }: { readonly tool: ShopTool; readonly view: ShopView }) {
  const card = useMemo(() => cardOf(tool, view), [tool, view])
  const at = `/shop/${tool.entry.id}`
  const W = SHOP.card
  if (card === null) return null
  return (
    <>
      <h1>{tool.file.name}</h1>
      <section class="panel tool-card">
        <ToolFace tool={tool} card={card} />
        <p class="tool-doors">
          {[
            [`${at}/inspect`, W.inspect],
            [`${at}/sheet`, W.sheet],
            [`${at}/tag`, W.tag],
            [`${at}/template`, W.template],
          ].map(([href, words]) => (
            <a key={href} class="tool-door" href={href}>
              {words}
            </a>
          ))}
        </p>
      </section>
      <WearPanel tool={tool} card={card} view={view} />
      <BoresPanel tool={tool} view={view} />
      <ToolNotes key={tool.entry.id} tool={tool} view={view} />
      <PiecesPanel tool={tool} view={view} />
      <ToolHistory tool={tool} view={view} />
    </>
  )
}

function Place({ view }: { readonly view: ShopView }) {
  const { params } = useRoute()
  const { tool: id, part } = params
  if (id === undefined) return <Fleet view={view} />
  const tool = view.tools.find(({ entry }) => entry.id === id)
  if (tool === undefined) return <h1>{SHOP.notFound}</h1>
  if (part === 'inspect') return <InspectionForm key={id} tool={tool} view={view} />
  if (part === 'sheet') return <PrintedSheet tool={tool} view={view} />
  if (part === 'tag') return <PrintedTag tool={tool} card={cardOf(tool, view)} />
  if (part === 'template') return <TemplateEditor key={id} tool={tool} />
  return <ToolPlace tool={tool} view={view} />
}

const Again = ({ children }: { readonly children: ComponentChildren }) => (
  <div class="former-note" role="status">
    <p>{children}</p>
    <button type="button" onClick={() => void loadShop()}>
      {SHOP.again}
    </button>
  </div>
)

/** The shop: tools on cards, what was found on them, and before which bore the next service falls. */
export function ShopPage() {
  const { params } = useRoute()
  useEffect(() => void loadShop(), [])
  const isOnline = connection.value === 'online'
  useEffect(() => {
    if (isOnline && shop.peek().state === 'kept') void loadShop()
  }, [isOnline])
  const now = shop.value
  const documents = now.state === 'here' || now.state === 'kept' ? now.documents : null
  const sheets = waiting.value
  const view = useMemo(
    () => (documents === null ? null : shopView(documents, sheets, civilNow(new Date()).day)),
    [documents, sheets],
  )
  return (
    <main class="shop-page">
      {params.tool !== undefined && (
        <p class="shop-back">
          <a href={params.part === undefined ? '/shop' : `/shop/${params.tool}`}>
            ← {params.part === undefined ? SHOP.back : SHOP.card.open}
          </a>
        </p>
      )}
      {now.state === 'kept' && <Again>{SHOP.unreachable}</Again>}
      {now.state === 'nothing' && <Again>{SHOP.unreachableNothing}</Again>}
      {now.state === 'loading' && (
        <>
          <h1>{SHOP.heading}</h1>
          <p role="status">{SHOP.loading}</p>
        </>
      )}
      {now.state === 'nothing' && <h1>{SHOP.heading}</h1>}
      {view !== null && <Place view={view} />}
    </main>
  )
}
