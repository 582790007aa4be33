import { type KeptCrossing, listCrossings } from '../api.ts'
import { ageOf, keepCrossings, keptList } from './kept-crossings.ts'

/** With the seconds since it was kept here; null when it comes from the server just now. */
type CrossingHere = KeptCrossing & { readonly ageS: number | null }

/** `kept`: the server is out of reach, and these are what this browser has of it. */
export type ListedHere =
  | { readonly state: 'answered' | 'kept'; readonly value: readonly CrossingHere[] }
  | { readonly state: 'failed' }

/** The crossings of the server, kept for when it is gone; then those. */
export async function crossingsHere(): Promise<ListedHere> {
  const asked = await listCrossings()
  if (asked.state === 'answered') {
    // Not waited for: a slow disk must not hold up the list.
    void keepCrossings(
      asked.value.map(({ id, version, demo, document }) => ({ id, version, demo, document })),
    )
    return { state: 'answered', value: asked.value.map((each) => ({ ...each, ageS: null })) }
  }
  const copies = await keptList()
  if (copies.length === 0) return asked
  return {
    state: 'kept',
    value: copies.map((copy) => ({
      id: copy.id,
      version: copy.version,
      demo: copy.demo,
      document: copy.document,
      name: typeof copy.document.name === 'string' ? copy.document.name : copy.id,
      ageS: ageOf(copy.id),
    })),
  }
}
