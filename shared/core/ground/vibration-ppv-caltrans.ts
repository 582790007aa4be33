import { relation } from '../relation.ts'

const M_PER_FT = 0.3048
const M_PER_IN = 0.0254
/** Exact: pound force times foot. */
const J_PER_FT_LB = 1.3558179483314

/**
 * Peak particle velocity by Caltrans' pile form, m/s: v = 0.65 in/s (25 ft/D)^n √(E/36,000 ft-lb).
 * n 1.4, 1.3, 1.1, 1.0 for soil classes I (weak) to IV (rock).
 */
export const vibrationPpvCaltrans = relation({
  id: 'vibration-ppv-caltrans',
  title: 'Vibration by the Caltrans pile form',
  formula: 'v = 0.65 in/s (25 ft/D)^n √(E/36 000 ft-lb)',
  sources: ['CaltransVibration2013'],
  inputs: {
    energy: { kind: 'energy', words: 'energy of a blow', range: { min: 1500, max: 200_000, hardMin: 0 } },
    distance: {
      kind: 'length',
      words: 'distance from the source',
      range: { min: 1.5, max: 100, hardMin: 0.01 },
    },
    exponent: {
      kind: 'ratio',
      words: 'n: 1.4, 1.3, 1.1, 1.0 for soil classes I to IV',
      range: { min: 1, max: 1.4, hardMin: 0.5, hardMax: 2 },
      default: 1.1,
    },
  },
  outputs: { ppv: { kind: 'particleVelocity', words: 'peak particle velocity' } },
  fn: ({ energyJ, distanceM, exponent }) => ({
    ppvMPerS:
      0.65 *
      M_PER_IN *
      ((25 * M_PER_FT) / distanceM) ** exponent *
      Math.sqrt(energyJ / (36_000 * J_PER_FT_LB)),
  }),
  checks: ['ground-vibration'],
})
