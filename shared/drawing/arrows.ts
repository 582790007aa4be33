import { group, lineBetween, type Point, polygon, type SvgNode } from './svg-tree.ts'

const HEAD_PX = 6
const HALF_PX = 2.5
/** Shorter than this, heads would meet: a plain line does. */
const LEAST_WITH_HEADS_PX = 14

function head(tip: Point, towards: Point): SvgNode {
  const length = Math.hypot(tip[0] - towards[0], tip[1] - towards[1])
  const ux = (towards[0] - tip[0]) / length
  const uy = (towards[1] - tip[1]) / length
  const foot: Point = [tip[0] + ux * HEAD_PX, tip[1] + uy * HEAD_PX]
  return polygon('arrow', [
    tip,
    [foot[0] - uy * HALF_PX, foot[1] + ux * HALF_PX],
    [foot[0] + uy * HALF_PX, foot[1] - ux * HALF_PX],
  ])
}

/** A dimension: a line with a head at each end. */
export function dimensionArrow(className: string, from: Point, to: Point): SvgNode {
  const isLong = Math.hypot(to[0] - from[0], to[1] - from[1]) >= LEAST_WITH_HEADS_PX
  const heads = isLong ? [head(from, to), head(to, from)] : []
  return group(className, [lineBetween('dimension', from, to), ...heads])
}
