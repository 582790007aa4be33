import { relation } from '../relation.ts'
import { normalCdf } from '../statistics/normal.ts'

/**
 * Chance that two bodies whose axes cross `separation` apart, known to σ, come within `reach` (sum of the radii). The bare
 * formula: what may be shown to a user (a measured depth only, nothing below 1 in 1,000) is decided elsewhere.
 */
export const contactChance = relation({
  id: 'contact-chance',
  title: 'Chance of contact, the bare formula',
  formula: 'P = Φ((R − h)/σ) − Φ((−R − h)/σ)',
  sources: ['ContactModel', 'NormalAlgorithms'],
  inputs: {
    separation: {
      kind: 'depth',
      words: 'distance between the two axes',
      range: { min: 0, max: 5, hardMin: -100, hardMax: 100 },
    },
    reach: {
      kind: 'diameter',
      words: 'sum of the two radii',
      range: { min: 0, max: 1, hardMin: 0, hardMax: 100 },
    },
    sigma: {
      kind: 'movement',
      words: 'combined position error, one standard deviation',
      range: { min: 0, max: 1, hardMin: 0, hardMax: 100 },
    },
  },
  outputs: { probability: { kind: 'ratio', words: 'chance of contact' } },
  fn: ({ separationM, reachM, sigmaM }) => {
    const apartM = Math.abs(separationM)
    if (sigmaM === 0) return { probability: apartM < reachM ? 1 : 0 }
    // With the distance taken positive both terms lie in the lower tail, where Φ keeps all its digits.
    const chance = normalCdf((reachM - apartM) / sigmaM) - normalCdf((-reachM - apartM) / sigmaM)
    return { probability: Math.max(0, chance) }
  },
  checks: ['contact'],
  remarks: 'Says nothing about lines that are not listed, nor about one whose depth has only been guessed.',
})
