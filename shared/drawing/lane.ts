/** Something that wants room on a row of labels. */
export type LaneItem = {
  readonly centrePx: number
  readonly widthPx: number
  /** Larger goes first. */
  readonly priority: number
  /** How far it may stand off its place before it is better left out. */
  readonly slackPx: number
}
type Span = { readonly left: number; readonly right: number }

const GAP_PX = 6
const STEP_PX = 4

const isFree = (taken: readonly Span[], span: Span): boolean =>
  taken.every((each) => span.right + GAP_PX <= each.left || span.left >= each.right + GAP_PX)

/**
 * One row of labels, none over another: each at its place, or a little beside it, or left out (null). `reserved` are
 * stretches of the row that something else runs through.
 */
export function placeInLane(
  items: readonly LaneItem[],
  range: Span,
  reserved: readonly Span[] = [],
): readonly (number | null)[] {
  const taken: Span[] = [...reserved]
  const centres: (number | null)[] = items.map(() => null)
  const order = items
    .map((item, index) => ({ item, index }))
    .sort((a, b) => b.item.priority - a.item.priority || a.item.centrePx - b.item.centrePx)
  for (const { item, index } of order) {
    const half = item.widthPx / 2
    if (item.widthPx > range.right - range.left) continue
    const wanted = Math.min(Math.max(item.centrePx, range.left + half), range.right - half)
    for (let off = 0; off <= item.slackPx; off += STEP_PX) {
      const found = [wanted + off, wanted - off].find((centre) => {
        const span = { left: centre - half, right: centre + half }
        return span.left >= range.left && span.right <= range.right && isFree(taken, span)
      })
      if (found === undefined) continue
      taken.push({ left: found - half, right: found + half })
      centres[index] = found
      break
    }
  }
  return centres
}
