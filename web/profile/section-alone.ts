import { allNodes, type SvgNode } from '../../shared/drawing/svg-tree.ts'

const named = (tree: SvgNode, name: string): SvgNode | undefined =>
  tree.children.find((child) => child.attributes.class === name)

const BELOW_PX = 8

/** How high the section alone is: down to its lengths, without the strip from above and the signs. */
export function sectionFootPx(tree: SvgNode): number {
  const lengths = named(tree, 'lengths')
  const feet = lengths === undefined ? [] : allNodes(lengths).map(({ attributes }) => Number(attributes.y2))
  return Math.max(0, ...feet.filter(Number.isFinite)) + BELOW_PX
}

/** What the drawing says at its foot: who was asked, what is short, the scale. Never folded away. */
export const notesOf = (tree: SvgNode): string =>
  (named(tree, 'notes')?.children ?? []).map(({ text }) => text ?? '').join(' ')
