import type { NamedDocument, NounPath } from '../../store/nouns.ts'
import type { Stores } from '../../store/open-store.ts'
import { type Asker, whoOf } from './asker.ts'
import { rightOf } from './roles.ts'

const AT_ONCE = 500
/** Guards against walking for ever; a firm has some crews, and a crew some years of days. */
const MOST_PAGES = 20

async function* everyOne(store: Stores, noun: NounPath, belongsTo: string | null) {
  let after: string | null = null
  for (let pages = 0; pages < MOST_PAGES; pages++) {
    const page: Awaited<ReturnType<Stores[NounPath]['list']>> = await store[noun].list({
      after,
      limit: AT_ONCE,
      belongsTo,
    })
    yield* page.items
    after = page.next
    if (after === null) return
  }
}

const textsAt = (document: NamedDocument, key: string): readonly string[] => {
  const value = document[key]
  const list = Array.isArray(value) ? value : [value]
  return list.filter((each) => typeof each === 'string').map((each) => each.toLowerCase())
}

/** The crews a person is in: by their own card, or by the crew's. */
async function crewsOf(store: Stores, person: string): Promise<ReadonlySet<string>> {
  const card = await store.people.find(person)
  const crews = new Set(card === null ? [] : textsAt(card.document, 'crew'))
  for await (const crew of everyOne(store, 'crews', null)) {
    if (textsAt(crew.document, 'people').includes(person)) crews.add(crew.id)
  }
  return crews
}

async function isOnADayOf(store: Stores, crews: ReadonlySet<string>, crossing: string): Promise<boolean> {
  for (const crew of crews) {
    for await (const day of everyOne(store, 'days', crew)) {
      if (textsAt(day.document, 'crossings').includes(crossing)) return true
    }
  }
  return false
}

/** A day is assigned to its crew, a crossing by a day, a bore log with its crossing; nothing else is anybody's. */
async function isAssigned(
  store: Stores,
  noun: NounPath,
  id: string,
  person: string | null,
): Promise<boolean> {
  if (person === null || !['days', 'crossings', 'bore-logs'].includes(noun)) return false
  const crews = await crewsOf(store, person)
  if (crews.size === 0) return false
  if (noun === 'crossings') return isOnADayOf(store, crews, id)
  const found = await store[noun].find(id)
  if (found === null) return false
  if (noun === 'days') return textsAt(found.document, 'crew').some((crew) => crews.has(crew))
  const [crossing] = textsAt(found.document, 'crossing')
  return crossing !== undefined && isOnADayOf(store, crews, crossing)
}

/** Own: made by whoever asks, or assigned to them. 'none' when there is no such document and never was. */
export async function whoseIs(
  store: Stores,
  asker: Asker,
  noun: NounPath,
  id: string,
): Promise<'own' | 'other' | 'none'> {
  const { items } = await store[noun].history(id, { after: null, limit: 1 })
  const [first] = items
  if (first === undefined) return 'none'
  if (first.who === whoOf(asker)) return 'own'
  const person = asker.kind === 'account' ? asker.account.person : null
  return (await isAssigned(store, noun, id, person)) ? 'own' : 'other'
}

/**
 * Whoever may plan only their own days must not make a crossing theirs by putting it on one: what is added to a day has
 * to be theirs already.
 */
export async function addsOthersCrossings(
  store: Stores,
  asker: Asker,
  id: string,
  document: NamedDocument,
): Promise<boolean> {
  if (asker.kind !== 'account' && asker.kind !== 'token') return false
  if (rightOf(asker.role, 'days') !== 'own') return false
  const before = await store.days.find(id)
  const known = before === null ? [] : textsAt(before.document, 'crossings')
  for (const crossing of textsAt(document, 'crossings')) {
    if (known.includes(crossing)) continue
    if ((await whoseIs(store, asker, 'crossings', crossing)) !== 'own') return true
  }
  return false
}
