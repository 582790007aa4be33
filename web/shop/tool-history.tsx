import { isSized } from '../../shared/core/shop/template.ts'
import { inOrder } from '../../shared/core/shop/tool-state.ts'
import { sizeWords } from './printed-sheet.tsx'
import type { ShopTool, ShopView } from './shop-facts.ts'
import { dayWords, gradeName, measureName, partNameOf } from './shop-said.ts'
import { SHOP } from './shop-words.ts'

/** The strip of what was found, newest first. */
export function ToolHistory({ tool, view }: { readonly tool: ShopTool; readonly view: ShopView }) {
  const sheets = [...inOrder(view.sheets.filter((sheet) => sheet.tool === tool.entry.id))].reverse()
  const F = SHOP.form
  return (
    <section class="panel" aria-labelledby="history-heading">
      <h2 id="history-heading">{SHOP.wear.history}</h2>
      {sheets.length === 0 && <p>{SHOP.wear.noHistory}</p>}
      <ol class="history">
        {sheets.map((sheet) => {
          const tilt = sheet.tiltAfter ?? sheet.tiltBefore
          return (
            <li key={sheet.id}>
              <strong>{dayWords(sheet.on)}</strong>, {sheet.by}
              {tilt !== null && ` · ${F.tilt}: ${F[tilt]}`}
              {sheet.stripped && ` · ${F.stripped}`}
              <ul>
                {sheet.readings.map((reading) => {
                  const part = tool.template.parts.find(({ key }) => key === reading.part)
                  const measure = part?.measures.find(({ key }) => key === reading.key)?.measure ?? null
                  const name = measure === null ? reading.key : measureName(measure)
                  const said =
                    reading.valueM !== null && (measure === null || isSized(measure))
                      ? sizeWords(reading.valueM)
                      : gradeName(reading.grade ?? '')
                  return (
                    <li key={`${reading.part} ${reading.key}`}>
                      {partNameOf(tool.template, reading.part)}, {name}: {said}
                    </li>
                  )
                })}
                {sheet.replaced.map((key) => (
                  <li key={`new ${key}`}>
                    {partNameOf(tool.template, key)}: {F.replaced}
                  </li>
                ))}
              </ul>
            </li>
          )
        })}
      </ol>
    </section>
  )
}
