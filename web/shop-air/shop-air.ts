import { effect, type Signal, signal } from '@preact/signals'
import { z } from 'zod'
import type { OtherCompressor } from '../../shared/core/plan/air-changes.ts'
import { parseQuantity } from '../../shared/quantities/parse-quantity.ts'
import { noteSignedOut } from '../access/session-state.ts'
import { noteReached } from '../offline/connection.ts'
import type { JsonObject } from '../state/json.ts'

/** The air gear of the shop that a crossing's line can be put together from. */
export const SHOP_NOUNS = ['compressors', 'hoses'] as const
export type ShopNoun = (typeof SHOP_NOUNS)[number]
export type ShopItem = { readonly id: string; readonly name: string; readonly document: JsonObject }

/** null: not asked yet. */
export const shop: Readonly<Record<ShopNoun, Signal<readonly ShopItem[] | null>>> = {
  compressors: signal(null),
  hoses: signal(null),
}

/** The shop's compressors as the fix finder takes them. */
export const shopCompressors = signal<readonly OtherCompressor[]>([])
effect(() => {
  shopCompressors.value = (shop.compressors.value ?? []).flatMap(({ name, document }) => {
    const air = parseQuantity(document.freeAirDelivery, 'volumeFlow')
    const pressure = parseQuantity(document.pressure, 'gaugePressure')
    return air.ok && pressure.ok
      ? [{ name, freeAirDeliveryM3PerS: air.valueSi, gaugePa: pressure.valueSi }]
      : []
  })
})

const page = z.object({
  items: z.array(z.object({ id: z.string(), name: z.string(), document: z.record(z.string(), z.json()) })),
})

/** One page is a whole shop: nobody keeps more hoses than that. */
const MOST = 500
const PATIENCE_MS = 20_000

async function ask(path: string, init: RequestInit): Promise<Response | null> {
  try {
    const answer = await fetch(path, { ...init, signal: AbortSignal.timeout(PATIENCE_MS) })
    noteReached(true)
    if (answer.status === 401) noteSignedOut()
    return answer
  } catch (error) {
    // TypeError without a connection; a DOMException when patience ran out.
    if (!(error instanceof TypeError || error instanceof DOMException)) throw error
    noteReached(false)
    return null
  }
}

/** Everything the shop holds of a noun, as it is kept; nothing without a connection. */
export async function documentsOf(noun: string): Promise<readonly JsonObject[]> {
  const answer = await ask(`/api/${noun}?limit=${MOST}`, {
    headers: { Accept: 'application/json' },
    cache: 'no-store',
  })
  if (answer === null || !answer.ok) return []
  const parsed = page.safeParse(await answer.json())
  return parsed.success ? parsed.data.items.map((item) => item.document) : []
}

/** What the shop holds of a noun; without a connection what was known stays. */
export async function fetchShop(noun: ShopNoun): Promise<void> {
  const answer = await ask(`/api/${noun}?limit=${MOST}`, {
    headers: { Accept: 'application/json' },
    cache: 'no-store',
  })
  if (answer === null || !answer.ok) return
  const parsed = page.safeParse(await answer.json())
  if (parsed.success) shop[noun].value = parsed.data.items
}

/** Keeps one more; false when the server did not take it. */
export async function keepInShop(noun: ShopNoun, document: JsonObject): Promise<boolean> {
  const answer = await ask(`/api/${noun}/${crypto.randomUUID()}`, {
    method: 'PUT',
    headers: { Accept: 'application/json', 'Content-Type': 'application/json' },
    body: JSON.stringify(document),
  })
  const isKept = answer?.ok === true
  if (isKept) await fetchShop(noun)
  return isKept
}
