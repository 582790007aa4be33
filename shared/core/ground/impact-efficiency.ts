import { relation } from '../relation.ts'

/**
 * Share of the striker's kinetic energy left in striker and body after the impact: η = (m1 + e² m2)/(m1 + m2),
 * m1 striker, m2 the struck rest, e restitution. Exact for two free bodies; soil holding the body during the impact is left out.
 */
export const impactEfficiency = relation({
  id: 'impact-efficiency',
  title: 'Energy kept in the impact',
  formula: 'η = (m1 + e² m2)/(m1 + m2)',
  sources: ['Hiley1925'],
  inputs: {
    strikerMass: { kind: 'mass', words: 'mass of the striker', range: { min: 1, max: 100, hardMin: 1e-3 } },
    struckMass: {
      kind: 'mass',
      words: 'mass of the rest of the tool',
      range: { min: 3, max: 400, hardMin: 0 },
    },
    restitution: {
      kind: 'ratio',
      words: 'coefficient of restitution',
      range: { min: 0.3, max: 0.8, hardMin: 0, hardMax: 1 },
      default: 0.55,
    },
  },
  outputs: { efficiency: { kind: 'ratio', words: 'share of the energy kept' } },
  fn: ({ strikerMassKg, struckMassKg, restitution }) => ({
    efficiency: (strikerMassKg + restitution * restitution * struckMassKg) / (strikerMassKg + struckMassKg),
  }),
  checks: ['ground-penetration'],
})
