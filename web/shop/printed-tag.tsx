import qrcode from 'qrcode-generator'
import type { ToolCard } from '../../shared/core/shop/tool-card.ts'
import { civilNow } from '../site/civil-now.ts'
import type { ShopTool } from './shop-facts.ts'
import { dayWords } from './shop-said.ts'
import { SHOP } from './shop-words.ts'
import { IssueLine } from './tool-face.tsx'

/** Modules of the code as one path: no data address, which the page's own rules would refuse. */
function CodeDrawing({ text, label }: { readonly text: string; readonly label: string }) {
  const code = qrcode(0, 'M')
  code.addData(text)
  code.make()
  const count = code.getModuleCount()
  const dark = Array.from({ length: count * count }, (_, place) => [Math.floor(place / count), place % count])
    .filter(([row = 0, column = 0]) => code.isDark(row, column))
    .map(([row = 0, column = 0]) => `M${column} ${row}h1v1h-1z`)
  return (
    <svg class="tag-code" viewBox={`-4 -4 ${count + 8} ${count + 8}`} role="img" aria-label={label}>
      <path class="tag-paper" d={`M-4-4h${count + 8}v${count + 8}h-${count + 8}z`} />
      <path class="tag-ink" d={dark.join('')} />
    </svg>
  )
}

/** To hang on the tool: its name, and the way to its card. What may change is on the card, not on the tag. */
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
      {card !== null && <IssueLine tool={tool} card={card} />}
      <p class="fine">{SHOP.tag.madeOn(dayWords(civilNow(new Date()).day))}</p>
    </div>
  )
}
