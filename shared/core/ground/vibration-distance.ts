import { relation } from '../relation.ts'

const REFERENCE_M = 25 * 0.3048

/**
 * Distance at which a source known at 25 ft falls to a limit, m: D = 25 ft (PPVref/limit)^(1/1.5), from PPV = PPVref (25/D)^1.5.
 * FTA 2018 eq. 7-2; for sources at the surface, so for a tool in the ground a lower bound.
 */
export const vibrationDistance = relation({
  id: 'vibration-distance',
  title: 'Distance at which vibration falls to a limit',
  formula: 'D = 25 ft (PPVref/limit)^(2/3)',
  sources: ['Fta2018'],
  inputs: {
    reference: {
      kind: 'particleVelocity',
      words: 'peak particle velocity at 25 ft',
      range: { min: 5e-5, max: 0.05, hardMin: 0 },
    },
    limit: { kind: 'particleVelocity', words: 'limit', range: { min: 1e-3, max: 0.1, hardMin: 1e-6 } },
  },
  outputs: { distance: { kind: 'length', words: 'distance' } },
  fn: ({ referenceMPerS, limitMPerS }) => ({
    distanceM: REFERENCE_M * (referenceMPerS / limitMPerS) ** (2 / 3),
  }),
  checks: ['ground-vibration'],
})
