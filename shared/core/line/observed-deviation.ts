import { relation } from '../relation.ts'
import { WANDER_INPUTS } from './deviation.ts'
import { pathCovarianceM2 } from './path-covariance.ts'

/**
 * What doubt is left at a station after the tool has been seen at another: the path is Gaussian, so the variance falls by
 * Cov² / (Var of the path there + variance of the sighting). A sighting never makes it grow.
 */
export const observedDeviation = relation({
  id: 'observed-deviation',
  title: 'Deviation after the tool was seen',
  formula: 'σ² = Var(s) − Cov(s, c)² / (Var(c) + e²)',
  sources: ['DeviationModel'],
  inputs: {
    station: {
      kind: 'length',
      words: 'where the deviation is asked, from launch',
      range: { min: 0, max: 45.7, hardMin: 0, hardMax: 1000 },
    },
    sighting: {
      kind: 'length',
      words: 'where the tool was seen, from launch',
      range: { min: 0, max: 45.7, hardMin: 0, hardMax: 1000 },
    },
    sightingError: {
      kind: 'movement',
      words: 'error of the sighting, one standard deviation',
      range: { min: 0, max: 0.3, hardMin: 0, hardMax: 10 },
      default: 0,
    },
    ...WANDER_INPUTS,
  },
  outputs: { sigma: { kind: 'movement', words: 'offset in one plane, one standard deviation' } },
  fn: ({ stationM, sightingM, sightingErrorM, aimRad, driftRadPerSqrtM }) => {
    const wander = { aimRad, driftRadPerSqrtM }
    const beforeM2 = pathCovarianceM2(wander, stationM, stationM)
    const seenM2 = pathCovarianceM2(wander, sightingM, sightingM) + sightingErrorM ** 2
    // At the launch itself nothing is in doubt and nothing is learnt.
    if (seenM2 === 0) return { sigmaM: Math.sqrt(beforeM2) }
    const sharedM2 = pathCovarianceM2(wander, stationM, sightingM)
    return { sigmaM: Math.sqrt(Math.max(0, beforeM2 - sharedM2 ** 2 / seenM2)) }
  },
  checks: ['deviation'],
})
