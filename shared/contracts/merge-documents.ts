type Document = Readonly<Record<string, unknown>>

export type Merged = {
  readonly merged: Record<string, unknown>
  /** Top-level keys both sides changed, each in its own way; `merged` holds mine there. */
  readonly conflicts: string[]
}

const isObject = (value: unknown): value is Document => value !== null && typeof value === 'object'

/** Equal as JSON: the order of keys means nothing, the order of a list does. */
export function sameJson(a: unknown, b: unknown): boolean {
  if (a === b) return true
  if (!isObject(a) || !isObject(b) || Array.isArray(a) !== Array.isArray(b)) return false
  const keys = Object.keys(a)
  return (
    keys.length === Object.keys(b).length &&
    keys.every((key) => Object.hasOwn(b, key) && sameJson(a[key], b[key]))
  )
}

/** A key that is not there, or holds undefined, has been left out: JSON knows no other way. */
const valueIn = (document: Document, key: string): unknown =>
  Object.hasOwn(document, key) ? document[key] : undefined

/**
 * Two changes of one document brought together, key by key at the top level: what only one side changed, added or took
 * out is taken over; what both changed alike is taken once; what both changed differently keeps mine and is named.
 * Deeper than that nothing is mixed: half of one list of utilities and half of another is nobody's list.
 */
export function mergeDocuments(base: Document, mine: Document, theirs: Document): Merged {
  const conflicts: string[] = []
  const entries: [string, unknown][] = []
  for (const key of new Set([...Object.keys(theirs), ...Object.keys(mine)])) {
    const [was, ours, other] = [valueIn(base, key), valueIn(mine, key), valueIn(theirs, key)]
    const isConflict = !sameJson(ours, other) && !sameJson(was, ours) && !sameJson(was, other)
    if (isConflict) conflicts.push(key)
    const value = sameJson(was, ours) ? other : ours
    if (value !== undefined) entries.push([key, value])
  }
  return { merged: Object.fromEntries(entries), conflicts }
}
