import { relation } from '../relation.ts'

const DEGREE_RAD = Math.PI / 180

/**
 * Bearing factors of a pile tip from spherical cavity expansion: tip pressure = c N*c + q N*σ, q the mean stress in the ground.
 * N*σ = 3/(3−sin φ) e^((π/2−φ)tan φ) tan²(45°+φ/2) Irr^(4 sin φ/(3(1+sin φ))); φ = 0: N*c = (4/3)(ln Irr + 1) + π/2 + 1. Vesic 1977.
 */
export const pileTipFactors = relation({
  id: 'pile-tip-factors',
  title: "Vesic's bearing factors of a pile tip",
  formula:
    'N*σ = 3/(3−sin φ) e^((π/2−φ)tan φ) tan²(45°+φ/2) Irr^(4 sin φ/(3(1+sin φ))); N*c = (N*σ−1) cot φ; φ = 0: N*c = (4/3)(ln Irr + 1) + π/2 + 1',
  sources: ['Vesic1977'],
  inputs: {
    frictionAngle: {
      kind: 'angle',
      words: 'friction angle',
      range: { min: 0, max: 50 * DEGREE_RAD, hardMin: 0, hardMax: 60 * DEGREE_RAD },
    },
    rigidityIndex: {
      kind: 'ratio',
      words: 'rigidity index, reduced for volume change',
      range: { min: 10, max: 500, hardMin: 1 },
    },
  },
  outputs: {
    nc: { kind: 'ratio', words: 'factor on cohesion' },
    nSigma: { kind: 'ratio', words: 'factor on the mean stress in the ground' },
  },
  fn: ({ frictionAngleRad, rigidityIndex }) => {
    // As in cavity-expansion-factors: the cotangent form loses digits here, the limit does not.
    if (frictionAngleRad < DEGREE_RAD / 100) {
      return { nc: (4 / 3) * (Math.log(rigidityIndex) + 1) + Math.PI / 2 + 1, nSigma: 1 }
    }
    const sine = Math.sin(frictionAngleRad)
    const tangent = Math.tan(frictionAngleRad)
    const nSigma =
      (3 / (3 - sine)) *
      Math.exp((Math.PI / 2 - frictionAngleRad) * tangent) *
      Math.tan(Math.PI / 4 + frictionAngleRad / 2) ** 2 *
      rigidityIndex ** ((4 * sine) / (3 * (1 + sine)))
    return { nc: (nSigma - 1) / tangent, nSigma }
  },
  checks: ['ground-cavity'],
})
