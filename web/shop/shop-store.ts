import { signal } from '@preact/signals'
import { z } from 'zod'
import { newId } from '../saved/new-id.ts'
import { sendPhoto } from '../site/site-requests.ts'
import { recall, remember } from '../state/browser-memory.ts'
import { isObject, type JsonObject } from '../state/json.ts'
import { fetchAll, fetchPlanned, jsonObject, put } from './shop-requests.ts'

const NOUNS = ['tools', 'tool-templates', 'parts', 'inspections', 'bore-logs', 'days'] as const
export type ShopNoun = (typeof NOUNS)[number]

const entry = z.object({
  id: z.string(),
  version: z.number(),
  demo: z.boolean(),
  document: jsonObject,
})
const crossing = z.object({
  lengthM: z.number(),
  hammerS: z.number(),
  advanceMPerS: z.number(),
  blowRateHz: z.number(),
  oiled: z.boolean().nullable(),
  name: z.string(),
})
const whole = z.object({
  tools: z.array(entry),
  'tool-templates': z.array(entry),
  parts: z.array(entry),
  inspections: z.array(entry),
  'bore-logs': z.array(entry),
  days: z.array(entry),
  /** What the plans of crossings say, by id. */
  crossings: z.record(z.string(), crossing),
})
const waitingSheet = z.object({
  id: z.string(),
  document: jsonObject,
  photos: z.array(z.object({ attachment: z.string(), item: z.string(), data: z.string() })),
})

export type ShopDocuments = z.infer<typeof whole>
type CrossingPlan = z.infer<typeof crossing>
export type WaitingSheet = z.infer<typeof waitingSheet>
type Shown =
  | { readonly state: 'loading' }
  | { readonly state: 'here' | 'kept'; readonly documents: ShopDocuments }
  | { readonly state: 'nothing' }

const KEPT = 'underlane.shop'
const WAITING = 'underlane.shop.waiting'

function recalled<Value>(key: string, schema: z.ZodType<Value>): Value | null {
  const text = recall(key)
  if (text === null) return null
  try {
    const read = schema.safeParse(JSON.parse(text))
    return read.success ? read.data : null
  } catch (error) {
    if (error instanceof SyntaxError) return null
    throw error
  }
}

/** What the shop page shows: the server's word, or what this browser kept of it. */
export const shop = signal<Shown>({ state: 'loading' })
/** Sheets the server has not got yet; they count as found all the same. */
export const waiting = signal<readonly WaitingSheet[]>(recalled(WAITING, z.array(waitingSheet)) ?? [])

const keepWaiting = (sheets: readonly WaitingSheet[]): boolean => {
  waiting.value = sheets
  return remember(WAITING, JSON.stringify(sheets))
}

async function planOf(id: string): Promise<CrossingPlan | null> {
  const found = await fetchPlanned(id)
  if (found?.result == null) return null
  const { bore, run } = found.result
  const { air, name } = found.document
  const lubricator = isObject(air) ? air.lubricator : null
  return {
    lengthM: bore.lengthM,
    hammerS: run.hammerTimeS?.p50 ?? run.giveUpTimeS,
    advanceMPerS: run.advanceMPerS.p50,
    blowRateHz: run.blowRateHz,
    oiled: typeof lubricator === 'boolean' ? lubricator : null,
    name: typeof name === 'string' ? name : id,
  }
}

/** Crossings that tools are put to, and those the last bores were planned as: no more than a page can use. */
const MOST_PLANS = 60
function crossingsWanted(documents: Omit<ShopDocuments, 'crossings'>): readonly string[] {
  const days = documents.days.flatMap(({ document }) => (Array.isArray(document.tools) ? document.tools : []))
  const put = days.flatMap((each) => (isObject(each) ? [each.crossing] : []))
  const logs = documents['bore-logs'].map(({ document }) => document.crossing)
  return [...new Set([...put, ...logs].filter((id) => typeof id === 'string'))].slice(0, MOST_PLANS)
}

/** Sends what waits, then fetches all; without a connection what was kept is shown. */
export async function loadShop(): Promise<void> {
  await sendWaiting()
  const lists = await Promise.all(NOUNS.map(fetchAll))
  const [tools, templates, parts, inspections, logs, days] = lists.map((list) =>
    list === null ? null : [...list],
  )
  if (!tools || !templates || !parts || !inspections || !logs || !days) {
    const kept = recalled(KEPT, whole)
    shop.value = kept === null ? { state: 'nothing' } : { state: 'kept', documents: kept }
    return
  }
  const listed = { tools, 'tool-templates': templates, parts, inspections, 'bore-logs': logs, days }
  const ids = crossingsWanted(listed)
  const plans = await Promise.all(ids.map(planOf))
  const crossings = Object.fromEntries(
    ids.flatMap((id, place) => {
      const plan = plans[place]
      return plan == null ? [] : [[id, plan] as const]
    }),
  )
  const documents = { ...listed, crossings }
  shop.value = { state: 'here', documents }
  remember(KEPT, JSON.stringify(documents))
}

async function sendOne(sheet: WaitingSheet): Promise<'done' | 'refused' | 'unreachable'> {
  const sent = await put({ noun: 'inspections', id: sheet.id, version: null, document: sheet.document })
  if (sent !== 'done') return sent
  for (const photo of sheet.photos) {
    if (!(await sendPhoto(sheet.id, photo))) return 'unreachable'
  }
  return 'done'
}

/** In order; what the server refuses stays here, for it is somebody's work. Sent twice it is there once. */
async function sendWaiting(): Promise<void> {
  for (const sheet of waiting.value) {
    if ((await sendOne(sheet)) === 'done') keepWaiting(waiting.value.filter((each) => each.id !== sheet.id))
  }
}

export type Saved = 'saved' | 'waiting' | 'not-kept' | 'refused'

/** Keeps a sheet in this browser first, then sends it. */
export async function saveSheet(
  document: JsonObject,
  photos: readonly { readonly item: string; readonly data: string }[],
): Promise<Saved> {
  const sheet = {
    id: newId(),
    document,
    photos: photos.map((photo) => ({ ...photo, attachment: newId() })),
  }
  const isKept = keepWaiting([...waiting.value, sheet])
  const sent = await sendOne(sheet)
  if (sent === 'unreachable') return isKept ? 'waiting' : 'not-kept'
  keepWaiting(waiting.value.filter((each) => each.id !== sheet.id))
  if (sent === 'refused') return 'refused'
  await loadShop()
  return 'saved'
}

/** Puts one document of the shop; false when it was not taken. */
export async function keepDocument(
  noun: ShopNoun,
  id: string | null,
  version: number | null,
  document: JsonObject,
): Promise<boolean> {
  const sent = await put({ noun, id: id ?? newId(), version, document })
  if (sent === 'done') await loadShop()
  return sent === 'done'
}
