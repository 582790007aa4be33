import type { ToolCard } from '../../shared/core/shop/tool-card.ts'
import { CodeDrawing } from '../fields/code-drawing.tsx'
import { civilNow } from '../site/civil-now.ts'
import type { ShopTool } from './shop-facts.ts'
import { dayWords } from './shop-said.ts'
import { SHOP } from './shop-words.ts'
import { IssueLine } from './tool-face.tsx'

/**
 * To hang on the tool: its name, and the way to its card. A hold is printed; that a tool may go out never is, for a tag
 * outlives it.
 */
export function PrintedTag({ tool, card }: { readonly tool: ShopTool; readonly card: ToolCard | null }) {
  const address = `${location.origin}/shop/${tool.entry.id}`
  return (
    <div class="printed-tag">
      <h1>{tool.file.name}</h1>
      <button type="button" class="no-print" onClick={() => window.print()}>
        {SHOP.sheet.print}
      </button>
      {tool.file.serial !== undefined && <p>{tool.file.serial}</p>}
      <CodeDrawing text={address} label={SHOP.tag.scan} />
      <p class="fine">{address}</p>
      {card !== null && card.holds.length > 0 && <IssueLine tool={tool} card={card} />}
      <p class="fine">{SHOP.tag.madeOn(dayWords(civilNow(new Date()).day))}</p>
    </div>
  )
}
