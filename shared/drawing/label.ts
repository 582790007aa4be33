import { type Attributes, type SvgNode, textNode } from './svg-tree.ts'
import { BOLD, textWidth } from './text-width.ts'

/** Smallest text of any drawing, and the size of ordinary labels. */
export const SMALL_PX = 12
export const LABEL_PX = 13
/** From one line of text to the next. */
export const LINE_PX = 16

export type Anchor = 'start' | 'middle' | 'end'
export type Box = {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

/** Baseline text; `y` is the baseline. */
export function label(
  text: string,
  x: number,
  y: number,
  options: { readonly anchor?: Anchor; readonly className?: string; readonly sizePx?: number } = {},
): SvgNode {
  const attributes: Attributes = {
    class: `words ${options.className ?? ''}`.trim(),
    x,
    y,
    'text-anchor': options.anchor ?? 'start',
    'font-size': options.sizePx ?? LABEL_PX,
  }
  return textNode('text', attributes, text)
}

/** The room a label in half-bold letters takes; others take less. */
export function labelBox(text: string, x: number, y: number, anchor: Anchor, sizePx = LABEL_PX): Box {
  const width = textWidth(text, sizePx) * BOLD
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2
  return { left, right: left + width, top: y - sizePx * 0.8, bottom: y + sizePx * 0.25 }
}

export const overlaps = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom
