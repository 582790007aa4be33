import { relation } from '../relation.ts'
import { AIM_DEFAULT_RAD, DRIFT_DEFAULT_RAD_PER_SQRT_M, pathCovarianceM2 } from './path-covariance.ts'

/** The two inputs every relation on a wandering path takes. */
export const WANDER_INPUTS = {
  aim: {
    kind: 'angle',
    words: 'aiming error, one standard deviation',
    range: { min: 0.0005, max: 0.03, hardMin: 0, hardMax: 0.5 },
    default: AIM_DEFAULT_RAD,
  },
  drift: {
    kind: 'drift',
    words: 'drift of the heading',
    range: { min: 0.001, max: 0.02, hardMin: 0, hardMax: 0.5 },
    default: DRIFT_DEFAULT_RAD_PER_SQRT_M,
  },
} as const

/**
 * Standard deviation of an unguided tool's offset in one plane (sideways or up and down), `station` from launch or from
 * the last pit. Fitted to what crews say, not to measured bores: good to perhaps a factor of two either way.
 */
export const deviation = relation({
  id: 'deviation',
  title: 'Deviation of an unguided tool',
  formula: 'σ = √(aim²·s² + drift²·s³/3)',
  sources: ['DeviationModel'],
  inputs: {
    station: {
      kind: 'length',
      words: 'distance bored since launch',
      range: { min: 0, max: 45.7, hardMin: 0, hardMax: 1000 },
    },
    ...WANDER_INPUTS,
  },
  outputs: { sigma: { kind: 'movement', words: 'offset in one plane, one standard deviation' } },
  fn: ({ stationM, aimRad, driftRadPerSqrtM }) => ({
    sigmaM: Math.sqrt(pathCovarianceM2({ aimRad, driftRadPerSqrtM }, stationM, stationM)),
  }),
  checks: ['deviation'],
  remarks: 'One plane at a time: sideways and up and down each have it.',
})
