import { relation } from '../relation.ts'

const DEGREE_RAD = Math.PI / 180

/**
 * Vesic's expansion factors: limit pressure = c Fc + q Fq, with q the mean stress in the ground.
 * Irr is the reduced rigidity index, Ir/(1 + Ir Δ) (sphere) or Ir/(1 + Ir Δ sec φ) (cylinder), Δ the mean plastic volume change.
 * cylinder: Fq = (1+sin φ)(Irr sec φ)^(sin φ/(1+sin φ)); sphere: Fq = 3(1+sin φ)/(3−sin φ) Irr^(4 sin φ/(3(1+sin φ))).
 * The sphere drops a factor 3 cos φ/(3−sin φ) on the plastic radius, Vesic's own simplification. Vesic 1972.
 */
export const cavityExpansionFactors = relation({
  id: 'cavity-expansion-factors',
  title: "Vesic's cavity expansion factors",
  formula:
    'cylinder: Fq = (1+sin φ)(Irr sec φ)^(sin φ/(1+sin φ)); sphere: Fq = 3(1+sin φ)/(3−sin φ) Irr^(4 sin φ/(3(1+sin φ))); Fc = (Fq−1) cot φ; φ = 0: Fc = ln Irr + 1, sphere (4/3)(ln Irr + 1), Fq = 1',
  sources: ['Vesic1972'],
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
    shape: { choices: ['cylinder', 'sphere'], words: 'shape of the cavity', default: 'cylinder' },
  },
  outputs: {
    fc: { kind: 'ratio', words: 'factor on cohesion' },
    fq: { kind: 'ratio', words: 'factor on the stress in the ground' },
  },
  fn: ({ frictionAngleRad, rigidityIndex, shape }) => {
    const sphere = shape === 'sphere'
    // Below a hundredth of a degree (Fq − 1) cot φ loses its digits; the limit differs by less than 0.1 %.
    if (frictionAngleRad < DEGREE_RAD / 100) {
      return { fc: (sphere ? 4 / 3 : 1) * (Math.log(rigidityIndex) + 1), fq: 1 }
    }
    const sine = Math.sin(frictionAngleRad)
    const fq = sphere
      ? ((3 * (1 + sine)) / (3 - sine)) * rigidityIndex ** ((4 * sine) / (3 * (1 + sine)))
      : (1 + sine) * (rigidityIndex / Math.cos(frictionAngleRad)) ** (sine / (1 + sine))
    return { fc: (fq - 1) / Math.tan(frictionAngleRad), fq }
  },
  checks: ['ground-cavity'],
})
