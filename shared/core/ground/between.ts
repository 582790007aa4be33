/**
 * Straight lines through (x, y) nodes in rising x; beyond the ends the end value holds.
 * Core of every table of soil states: what rises from node to node rises in between.
 */
export function between(x: number, nodes: readonly (readonly [x: number, y: number])[]): number {
  let left = nodes[0]
  if (left === undefined) return Number.NaN
  if (x <= left[0]) return left[1]
  for (const right of nodes) {
    // Written so that a node gives back its own value to the last digit.
    if (x === right[0]) return right[1]
    if (x < right[0]) return left[1] + ((x - left[0]) / (right[0] - left[0])) * (right[1] - left[1])
    left = right
  }
  return left[1]
}

/** The same nodes read from y to x; y must rise with x. */
export function backwards(
  nodes: readonly (readonly [x: number, y: number])[],
): readonly (readonly [y: number, x: number])[] {
  return nodes.map(([x, y]) => [y, x] as const)
}
