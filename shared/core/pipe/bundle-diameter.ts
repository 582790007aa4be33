import { PreconditionError } from '../outcome.ts'
import { relation } from '../relation.ts'

/** Smallest circle around n equal circles, over one circle's diameter, for n = 1, 2, 3 … Proved to 13, best known beyond. */
const RATIOS = [
  1,
  2,
  1 + 2 / Math.sqrt(3),
  1 + Math.SQRT2,
  1 + Math.sqrt(2 * (1 + 1 / Math.sqrt(5))),
  3,
  3,
  1 + 1 / Math.sin(Math.PI / 7),
  1 + Math.sqrt(2 * (2 + Math.SQRT2)),
  3.814,
  3.924,
  4.03,
  2 + Math.sqrt(5),
  4.329,
  4.522,
  4.616,
  4.793,
  4.864,
  4.864,
] as const

/** Circle around n equal pipes lying together. A part of a pipe takes the room of a whole one. */
export const bundleDiameter = relation({
  id: 'bundle-diameter',
  title: 'Bundle of equal pipes',
  formula: 'B = k(n)·D, k = 1, 2, 2.155, 2.414, 2.701, 3, 3 …',
  sources: ['CirclePackings'],
  inputs: {
    outsideDiameter: {
      kind: 'diameter',
      words: 'outside diameter of one pipe',
      range: { min: 0.002, max: 0.3, hardMin: 0, hardMax: 3 },
    },
    count: {
      kind: 'count',
      words: 'how many lie together',
      range: { min: 1, max: 12, hardMin: 1, hardMax: RATIOS.length },
    },
  },
  outputs: { diameter: { kind: 'diameter', words: 'circle around them' } },
  fn: ({ outsideDiameterM, count }) => {
    const ratio = RATIOS[Math.ceil(count) - 1]
    if (ratio === undefined) throw new PreconditionError(`no bundle of ${count} pipes`)
    return { diameterM: ratio * outsideDiameterM }
  },
  checks: ['pipe-handling'],
  remarks: 'Add couplings, grip and tracer wire: the largest thing that goes through decides.',
})
