import { useMemo } from 'preact/hooks'
import { type ToolCard, toolCard } from '../../shared/core/shop/tool-card.ts'
import type { ShopTool, ShopView } from './shop-facts.ts'
import { partNameOf } from './shop-said.ts'
import { SHOP } from './shop-words.ts'

type Row = { readonly tool: ShopTool; readonly card: ToolCard }

/** What one part of one tool stands at, in a word. */
function standing({ card }: Row, key: string): string {
  const state = card.states.find(({ part }) => part === key)?.judged ?? null
  const report = card.parts.find((each) => each.key === key)
  if (report === undefined) return '—'
  if (state?.verdict === 'replace' && !state.replaced) return SHOP.verdicts.replace
  if (report.dueBefore !== null) return `${SHOP.card.due}: ${report.dueBefore.name}`
  return state?.verdict == null ? SHOP.why['not-read'] : SHOP.verdicts[state.verdict]
}

/** All tools against all parts, behind the cards. */
export function FleetBoard({ view }: { readonly view: ShopView }) {
  const rows = useMemo(
    (): readonly Row[] =>
      view.tools.flatMap((tool) => {
        const facts = view.toolFacts.find(({ id }) => id === tool.entry.id)
        if (facts === undefined) return []
        return [{ tool, card: toolCard(facts, view.toolFacts, view.factsOf(tool.entry.id)) }]
      }),
    [view],
  )
  const keys = [...new Set(rows.flatMap(({ tool }) => tool.template.parts.map(({ key }) => key)))]
  return (
    <details class="panel">
      <summary>{SHOP.wear.board}</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable without a mouse */}
      <section class="fleet-board" tabIndex={0} aria-label={SHOP.wear.board}>
        <table>
          <thead>
            <tr>
              <th scope="col">{SHOP.wear.part}</th>
              {rows.map(({ tool }) => (
                <th key={tool.entry.id} scope="col">
                  {tool.file.name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {keys.map((key) => (
              <tr key={key}>
                <th scope="row">{rows[0] === undefined ? key : partNameOf(rows[0].tool.template, key)}</th>
                {rows.map((row) => (
                  <td key={row.tool.entry.id}>{standing(row, key)}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  )
}
