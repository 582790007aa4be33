import { relation } from '../relation.ts'

/**
 * A split ring that wears by δ all round opens its end gap by 2πδ, so a feeler in the gap reads wear about six times
 * finer than a straight edge on the rim. Taken in the tool body the gap holds the wear of ring and body bore together.
 */
export const ringGapWear = relation({
  id: 'ring-gap-wear',
  title: 'Wear of a split ring from its end gap',
  formula: 'δ = (g − g₀)/(2π)',
  sources: ['ExactIdentity'],
  inputs: {
    gap: { kind: 'movement', words: 'end gap now', range: { min: 0, max: 0.02, hardMin: 0, hardMax: 1 } },
    newGap: {
      kind: 'movement',
      words: 'end gap when new, in the same place',
      range: { min: 0, max: 0.01, hardMin: 0, hardMax: 1 },
    },
  },
  outputs: { wear: { kind: 'movement', words: 'radial wear' } },
  fn: ({ gapM, newGapM }) => ({ wearM: (gapM - newGapM) / (2 * Math.PI) }),
  checks: ['wear'],
})
