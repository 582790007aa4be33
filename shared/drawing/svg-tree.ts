import { PreconditionError } from '../core/outcome.ts'

/** A drawing as plain data: attribute names as SVG has them. The page, the PDF and the command line render the same tree. */
export type SvgNode = {
  readonly tag: string
  readonly attributes: Readonly<Record<string, string | number>>
  readonly children: readonly SvgNode[]
  /** Stands before the children. */
  readonly text?: string
}
export type Attributes = SvgNode['attributes']
export type Point = readonly [x: number, y: number]

/** Hundredths of a pixel: finer shows on no screen and no paper, and keeps the text short and the same everywhere. */
export function rounded(value: number): number {
  if (!Number.isFinite(value)) throw new PreconditionError(`a drawing has no place for ${value}`)
  const hundredths = Math.round(value * 100)
  return hundredths === 0 ? 0 : hundredths / 100
}

export function node(tag: string, attributes: Attributes = {}, children: readonly SvgNode[] = []): SvgNode {
  const clean = Object.fromEntries(
    Object.entries(attributes).map(([name, value]) => [
      name,
      typeof value === 'number' ? rounded(value) : value,
    ]),
  )
  return { tag, attributes: clean, children }
}

export const textNode = (tag: string, attributes: Attributes, text: string): SvgNode => ({
  ...node(tag, attributes),
  text,
})

export const group = (className: string, children: readonly SvgNode[], more: Attributes = {}): SvgNode =>
  node('g', { class: className, ...more }, children)

export const lineBetween = (className: string, from: Point, to: Point): SvgNode =>
  node('line', { class: className, x1: from[0], y1: from[1], x2: to[0], y2: to[1] })

export const rect = (className: string, x: number, y: number, width: number, height: number): SvgNode =>
  node('rect', { class: className, x, y, width: Math.max(0, width), height: Math.max(0, height) })

const pointsText = (points: readonly Point[]): string =>
  points.map(([x, y]) => `${rounded(x)},${rounded(y)}`).join(' ')

export const polyline = (className: string, points: readonly Point[]): SvgNode =>
  node('polyline', { class: className, points: pointsText(points) })

export const polygon = (className: string, points: readonly Point[], more: Attributes = {}): SvgNode =>
  node('polygon', { class: className, points: pointsText(points), ...more })

/** Every node of a tree, itself first. */
export const allNodes = (tree: SvgNode): readonly SvgNode[] => [tree, ...tree.children.flatMap(allNodes)]
