import { sheetOf, templateOf } from '../../shared/contracts/shop-documents.ts'
import type { Issue } from '../../shared/core/outcome.ts'
import type { Inspection } from '../../shared/core/shop/template.ts'
import { isHeldByShop } from '../../shared/core/shop/tool-state.ts'
import { GENERIC_TOOL_TEMPLATE } from '../../shared/tables/generic-tool-template.ts'
import type { NamedDocument } from '../store/nouns.ts'
import type { Stores } from '../store/open-store.ts'

const AT_ONCE = 500
/** Guards against walking for ever; no tool is looked at so often. */
const MOST_PAGES = 20

async function sheetsOf(store: Stores, tool: string): Promise<readonly Inspection[]> {
  const found: Inspection[] = []
  let after: string | null = null
  for (let pages = 0; pages < MOST_PAGES; pages++) {
    const page: Awaited<ReturnType<Stores['inspections']['list']>> = await store.inspections.list({
      after,
      limit: AT_ONCE,
      belongsTo: tool,
    })
    for (const { id, document } of page.items) {
      const sheet = sheetOf(id, document)
      if (sheet !== null) found.push(sheet)
    }
    after = page.next
    if (after === null) break
  }
  return found
}

async function isHeld(store: Stores, tool: string): Promise<boolean> {
  const kept = await store.tools.find(tool)
  // A tool that nobody keeps has no sheets: the site's own checks stand for it.
  if (kept === null) return false
  const { template, withdrawn } = kept.document
  const list = typeof template === 'string' ? await store['tool-templates'].find(template) : null
  const own = list === null ? null : templateOf(list.document)
  const sheets = await sheetsOf(store, tool)
  return isHeldByShop(own ?? GENERIC_TOOL_TEMPLATE, sheets, withdrawn !== undefined)
}

/** Pairs of crossing and tool on a day, in their order. */
const pairsOf = (document: NamedDocument): readonly (readonly [crossing: string, tool: string])[] =>
  (Array.isArray(document.tools) ? document.tools : []).flatMap((each: unknown) => {
    if (each === null || typeof each !== 'object') return []
    const [crossing, tool] = [Reflect.get(each, 'crossing'), Reflect.get(each, 'tool')]
    return typeof crossing === 'string' && typeof tool === 'string'
      ? [[crossing.toLowerCase(), tool.toLowerCase()] as const]
      : []
  })

/**
 * Tools a day newly puts to a bore while the shop holds them. What stood there before stays: a day must be changeable
 * after its tool has failed, were it only to take the tool off.
 */
export async function heldTools(
  store: Stores,
  id: string,
  document: NamedDocument,
): Promise<readonly Issue[]> {
  const pairs = pairsOf(document)
  if (pairs.length === 0) return []
  const before = await store.days.find(id)
  const known = new Set(before === null ? [] : pairsOf(before.document).map((pair) => pair.join(' ')))
  const issues: Issue[] = []
  for (const [place, pair] of pairs.entries()) {
    if (known.has(pair.join(' ')) || !(await isHeld(store, pair[1]))) continue
    issues.push({
      path: `tools.${place}.tool`,
      code: 'not-available',
      given: pair[1],
      accepted:
        'a tool that is not held: its tilt test failed, a part is to be replaced, or it is out of use',
    })
  }
  return issues
}
