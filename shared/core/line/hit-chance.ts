import { relation } from '../relation.ts'
import { normalCdf } from '../statistics/normal.ts'

/** Chance to arrive inside a square window of half width w, both planes alike and independent. */
export const hitChance = relation({
  id: 'hit-chance',
  title: 'Chance of arriving in the window',
  formula: 'P = (2·Φ(w/σ) − 1)²',
  sources: ['ContactModel', 'NormalAlgorithms'],
  inputs: {
    halfWindow: {
      kind: 'length',
      words: 'half the width of the window',
      range: { min: 0, max: 1, hardMin: 0, hardMax: 100 },
    },
    sigma: {
      kind: 'movement',
      words: 'offset in one plane, one standard deviation',
      range: { min: 0, max: 1, hardMin: 0, hardMax: 100 },
    },
  },
  outputs: { probability: { kind: 'ratio', words: 'chance of arriving in the window' } },
  fn: ({ halfWindowM, sigmaM }) => {
    if (sigmaM === 0) return { probability: 1 }
    return { probability: (2 * normalCdf(halfWindowM / sigmaM) - 1) ** 2 }
  },
  checks: ['contact'],
})
