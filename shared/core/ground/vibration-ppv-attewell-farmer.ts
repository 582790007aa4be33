import { relation } from '../relation.ts'

const M_PER_S_PER_MM_PER_S = 1e-3

/** Peak particle velocity by Attewell & Farmer 1973, m/s: v = 1.5 √W/r mm/s (J, m). A second opinion beside vibration-ppv. */
export const vibrationPpvAttewellFarmer = relation({
  id: 'vibration-ppv-attewell-farmer',
  title: 'Vibration by Attewell & Farmer',
  formula: 'v = 1.5 √W/r (mm/s, J, m)',
  sources: ['AttewellFarmer1973'],
  inputs: {
    energy: { kind: 'energy', words: 'energy of a blow', range: { min: 1500, max: 85_000, hardMin: 0 } },
    distance: {
      kind: 'length',
      words: 'distance from the source',
      range: { min: 1, max: 100, hardMin: 0.01 },
    },
  },
  outputs: { ppv: { kind: 'particleVelocity', words: 'peak particle velocity' } },
  fn: ({ energyJ, distanceM }) => ({
    ppvMPerS: ((1.5 * Math.sqrt(energyJ)) / distanceM) * M_PER_S_PER_MM_PER_S,
  }),
  checks: ['ground-vibration'],
})
