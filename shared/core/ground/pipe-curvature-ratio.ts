import { relation } from '../relation.ts'

/** e^(−60) is far below the last digit kept. */
const END = 60
const PANELS = 3000

/**
 * How much of the ground's curvature a crossing pipe takes: R = ½ ∫₀^∞ t² e^(−t)/(1 + (t/(d k0))⁴) dt, d the clear axis distance,
 * k0 = (K/EI)^(1/4), K subgrade reaction per metre of pipe, EI its bending stiffness. Pipe on springs in the far field of a bore.
 */
export const pipeCurvatureRatio = relation({
  id: 'pipe-curvature-ratio',
  title: "Share of the ground's curvature a crossing pipe takes",
  formula: 'R = ½ ∫ t² e^(−t)/(1 + (t/(d k0))⁴) dt, k0 = (K/EI)^(1/4)',
  sources: ['ExactIdentity'],
  inputs: {
    distance: {
      kind: 'length',
      words: 'distance between the axes',
      range: { min: 0.1, max: 5, hardMin: 1e-3 },
    },
    flexibility: {
      kind: 'perLength',
      words: 'k0 = (K/EI)^(1/4)',
      range: { min: 0.3, max: 30, hardMin: 1e-3 },
    },
  },
  outputs: { ratio: { kind: 'ratio', words: 'curvature of the pipe over that of the ground' } },
  fn: ({ distanceM, flexibilityPerM }) => {
    const reach = distanceM * flexibilityPerM
    const step = END / PANELS
    let sum = 0
    // Simpson's rule: the integrand is smooth and vanishes at both ends.
    for (let i = 1; i < PANELS; i += 1) {
      const t = i * step
      sum += ((i % 2 === 1 ? 4 : 2) * t * t * Math.exp(-t)) / (1 + (t / reach) ** 4)
    }
    return { ratio: (sum * step) / 6 }
  },
  checks: ['ground-movement'],
})
