import { relation } from '../relation.ts'

/** Movement of the ground away from a bore far from any surface, constant volume, m: u = √(r² + R²) − r, r from the axis, R = D/2. */
export const sidewaysPush = relation({
  id: 'sideways-push',
  title: 'Push of the ground away from the bore, deep',
  formula: 'u = √(r² + (D/2)²) − r',
  sources: ['ExactIdentity'],
  inputs: {
    diameter: { kind: 'diameter', words: 'bore diameter', range: { min: 0.04, max: 0.3, hardMin: 0 } },
    distance: {
      kind: 'length',
      words: 'distance from the axis, before',
      range: { min: 0.05, max: 10, hardMin: 0 },
    },
  },
  outputs: { push: { kind: 'movement', words: 'movement away from the axis' } },
  fn: ({ diameterM, distanceM }) => ({ pushM: Math.hypot(distanceM, diameterM / 2) - distanceM }),
  checks: ['ground-movement'],
})
