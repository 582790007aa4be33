import { type Box, LINE_PX, overlaps, SMALL_PX } from './label.ts'
import { BOLD, textWidth } from './text-width.ts'

/** A note on a pole above the ground: a shape and a few lines of words. */
export type FlagItem = {
  readonly xPx: number
  readonly priority: number
  readonly lines: readonly string[]
  /** What is left of the lines where room is short. */
  readonly shortLines: readonly string[]
}
export type Flag = {
  readonly side: 'left' | 'right'
  readonly lines: readonly string[]
  /** Top and foot of the words, in pixels above the foot of the whole field (so never negative). */
  readonly foot: number
  readonly top: number
}

export const GLYPH_PX = 14
const PAD_PX = 4
const MOST_LEVELS = 12
const FIRST_LINE_LEAD_PX = GLYPH_PX + 4

export const flagWidth = (lines: readonly string[]): number =>
  lines.reduce(
    (widest, text, index) =>
      Math.max(widest, textWidth(text, SMALL_PX) * BOLD + (index === 0 ? FIRST_LINE_LEAD_PX : 0)),
    FIRST_LINE_LEAD_PX,
  )

type Range = { readonly left: number; readonly right: number }

function boxOf(xPx: number, side: Flag['side'], lines: readonly string[], foot: number): Box {
  const width = flagWidth(lines)
  const left = side === 'right' ? xPx + PAD_PX : xPx - PAD_PX - width
  // Pixels above the foot count up; a box counts down.
  return { left, right: left + width, top: -(foot + Math.max(1, lines.length) * LINE_PX), bottom: -foot }
}

/** Lines a flag may carry, the fullest first; none leaves the shape alone. */
type Variants = (item: FlagItem) => readonly (readonly string[])[]
const isPressing = (item: FlagItem): boolean => item.priority > 1

/** Ever fewer words, until all have their place. */
const ATTEMPTS: readonly Variants[] = [
  (item) => [item.lines, item.shortLines, []],
  (item) => [item.shortLines, []],
  (item) => (isPressing(item) ? [item.shortLines] : [[]]),
]

/**
 * Flags so that no words lie over other words or over another flag's pole. Where they stand too close the words are
 * shortened, least where the room is short; the shape on its pole always stays, and the table has the rest.
 */
export function placeFlags(items: readonly FlagItem[], range: Range): readonly Flag[] {
  for (const variants of ATTEMPTS) {
    const flags = place(items, range, variants)
    const isGood = flags.every((flag, index) => {
      const item = items[index]
      return flag !== null && item !== undefined && (!isPressing(item) || flag.lines.length > 0)
    })
    if (isGood) return flags.filter((flag) => flag !== null)
  }
  // Shapes to the right of their poles, each above those it would touch, always have room.
  const open = { left: Number.NEGATIVE_INFINITY, right: Number.POSITIVE_INFINITY }
  return place(items, open, () => [[]]).map(
    (flag) => flag ?? { side: 'right', lines: [], foot: 0, top: LINE_PX },
  )
}

/**
 * From right to left, words to the right of their pole where they fit: none then stands in the way of a pole still to
 * come. null: no place.
 */
function place(items: readonly FlagItem[], range: Range, variants: Variants): readonly (Flag | null)[] {
  const words: Box[] = []
  const poles: Box[] = []
  const flags: (Flag | null)[] = items.map(() => null)
  const order = items
    .map((item, index) => ({ item, index }))
    .sort((a, b) => b.item.xPx - a.item.xPx || b.item.priority - a.item.priority)
  order.forEach(({ item, index }, turn) => {
    const toCome = order.slice(turn + 1).map((each) => each.item)
    const found = search(item, range, variants(item), { words, poles, toCome })
    if (!found) return
    words.push(found.box)
    poles.push(poleOf(item.xPx, found.box))
    flags[index] = found.flag
  })
  return flags
}

const poleOf = (xPx: number, box: Box): Box => ({ left: xPx - 2, right: xPx + 2, top: box.top, bottom: 0 })

type Taken = {
  readonly words: readonly Box[]
  readonly poles: readonly Box[]
  readonly toCome: readonly FlagItem[]
}

/** Words to the left stand over poles still to come: room is left for those under them. */
function leastFoot(box: Box, side: Flag['side'], toCome: readonly FlagItem[]): number {
  if (side === 'right') return 0
  const under = toCome.filter((each) => each.xPx > box.left - PAD_PX && each.xPx < box.right + PAD_PX)
  return under.reduce((sum, each) => sum + each.lines.length * LINE_PX, 0)
}

function search(
  item: FlagItem,
  range: Range,
  variants: readonly (readonly string[])[],
  { words, poles, toCome }: Taken,
): { readonly box: Box; readonly flag: Flag } | null {
  for (const lines of variants) {
    // What must be said is said, and every shape shown, however high it has to stand.
    const levels = lines === item.lines ? MOST_LEVELS : 10 * MOST_LEVELS
    for (let level = 0; level < levels; level++) {
      const foot = level * LINE_PX
      for (const side of ['right', 'left'] as const) {
        const box = boxOf(item.xPx, side, lines, foot)
        if (box.left < range.left || box.right > range.right) continue
        if (foot < leastFoot(box, side, toCome)) continue
        const pole = poleOf(item.xPx, box)
        const isTaken =
          words.some((each) => overlaps(each, box) || overlaps(each, pole)) ||
          poles.some((each) => overlaps(each, box))
        if (!isTaken) return { box, flag: { side, lines, foot, top: -box.top } }
      }
    }
  }
  return null
}

export const flagsHeight = (flags: readonly Flag[]): number => Math.max(0, ...flags.map((flag) => flag.top))
