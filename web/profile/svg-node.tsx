import { createElement, type VNode } from 'preact'
import type { SvgNode } from '../../shared/drawing/svg-tree.ts'

/** A drawing's tree as elements of the page. Names of attributes are SVG's own, and stay so. */
export function SvgDrawing({ tree }: { readonly tree: SvgNode }): VNode {
  return elementOf(tree)
}

function elementOf({ tag, attributes, text, children }: SvgNode): VNode {
  return createElement(tag, { ...attributes }, text, ...children.map(elementOf))
}
