import { relation } from '../relation.ts'

const M_PER_S_PER_MM_PER_S = 1e-3

/**
 * Peak particle velocity beside the tool, m/s: v = kp √W/r^1.3 mm/s, W energy of a blow in J, r slope distance from the nose in m.
 * kp 1 soft or loose, 1.5 stiff or medium dense, 3 very stiff, dense or obstructed, 5 at refusal. An upper estimate for piles of
 * 1.5–85 kJ at several metres: carried over, a factor 2 either way, below 1 m an order of magnitude. TRL 429 eq. 19.
 */
export const vibrationPpv = relation({
  id: 'vibration-ppv',
  title: 'Vibration beside the tool',
  formula: 'v = kp √W/r^1.3 (mm/s, J, m)',
  sources: ['Trl429'],
  inputs: {
    energy: { kind: 'energy', words: 'energy of a blow', range: { min: 1500, max: 85_000, hardMin: 0 } },
    distance: { kind: 'length', words: 'distance from the nose', range: { min: 1, max: 110, hardMin: 0.01 } },
    groundFactor: {
      kind: 'ratio',
      words: 'kp: 1 soft, 1.5 stiff, 3 very stiff or dense, 5 refusal',
      range: { min: 1, max: 5, hardMin: 0 },
    },
  },
  outputs: { ppv: { kind: 'particleVelocity', words: 'peak particle velocity' } },
  fn: ({ energyJ, distanceM, groundFactor }) => ({
    ppvMPerS: ((groundFactor * Math.sqrt(energyJ)) / distanceM ** 1.3) * M_PER_S_PER_MM_PER_S,
  }),
  checks: ['ground-vibration'],
  remarks: 'Never a proof that a neighbour is safe: over the limit, or not shown to be over.',
})
