import { relation } from '../relation.ts'

/** Buried length whose wall friction holds the recoil, m: L = F/(fs π D). Before that the tail must be held by hand or frame. */
export const anchorageLength = relation({
  id: 'anchorage-length',
  title: 'Buried length that holds the recoil',
  formula: 'L = F/(fs π D)',
  sources: ['PenetrationModel'],
  inputs: {
    recoil: { kind: 'force', words: 'mean recoil', range: { min: 100, max: 5e3, hardMin: 0 } },
    friction: {
      kind: 'stress',
      words: 'friction on the body',
      range: { min: 500, max: 100e3, hardMin: 1e-3 },
    },
    diameter: { kind: 'diameter', words: 'body diameter', range: { min: 0.04, max: 0.2, hardMin: 1e-3 } },
  },
  outputs: { length: { kind: 'length', words: 'buried length needed' } },
  fn: ({ recoilN, frictionPa, diameterM }) => ({ lengthM: recoilN / (frictionPa * Math.PI * diameterM) }),
  checks: ['ground-penetration'],
})
