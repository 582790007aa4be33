import { relation } from '../relation.ts'
import { normalQuantile } from '../statistics/normal.ts'
import { deviation, WANDER_INPUTS } from './deviation.ts'

/**
 * Offset in one plane that is not passed in the given share of bores: the p-quantile of |y|, y normal with the standard
 * deviation of `deviation`. Nine in ten is the allowance taken in a clearance; one in two is the middle value.
 */
export const driftAllowance = relation({
  id: 'drift-allowance',
  title: 'Allowance for drift',
  formula: 'a = σ(s)·Φ⁻¹((1 + p)/2)',
  sources: ['DeviationModel', 'NormalAlgorithms'],
  inputs: {
    station: {
      kind: 'length',
      words: 'distance bored since launch or since the last sighting',
      range: { min: 0, max: 45.7, hardMin: 0, hardMax: 1000 },
    },
    share: {
      kind: 'ratio',
      words: 'share of bores that stay within it',
      range: { min: 0.5, max: 0.99, hardMin: 0, hardMax: 0.9999999 },
      default: 0.9,
    },
    ...WANDER_INPUTS,
  },
  outputs: { allowance: { kind: 'movement', words: 'allowance in one plane' } },
  fn: ({ stationM, share, aimRad, driftRadPerSqrtM }) => {
    const { sigmaM } = deviation.fn({ stationM, aimRad, driftRadPerSqrtM })
    return { allowanceM: sigmaM * normalQuantile((1 + share) / 2) }
  },
  checks: ['deviation'],
})
