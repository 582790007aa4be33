import { relation } from '../relation.ts'

/** K on the hose's bore of a coupling whose bore is β times the hose's: in with a contraction, out with an expansion. */
export const couplingCoefficient = (boreRatio: number): number =>
  (0.5 * (1 - boreRatio ** 2) + (1 - boreRatio ** 2) ** 2) / boreRatio ** 4

/**
 * What a coupling narrower than its hose costs.
 *
 * K = [ 0.5 (1 − β²) + (1 − β²)² ] / β⁴,  β = bore of the coupling over that of the hose; K in velocity heads in the hose
 * Error: a sharp-edged contraction and a sudden expansion; a rounded one loses less. The hose guides' "5 % of 100 ft" is K 0.98
 * at 1 in, β 0.78.
 */
export const couplingLoss = relation({
  id: 'coupling-loss',
  title: 'Loss of a narrow hose coupling',
  formula: 'K = [0.5·(1 − β²) + (1 − β²)²]/β⁴',
  sources: ['CraneTp410', 'HoseGuide'],
  inputs: {
    boreRatio: {
      kind: 'ratio',
      words: 'bore of the coupling over bore of the hose',
      range: { min: 0.4, max: 1, hardMin: 0.05, hardMax: 1 },
    },
  },
  outputs: { coefficient: { kind: 'ratio', words: 'velocity heads lost, in the hose' } },
  fn: ({ boreRatio }) => ({ coefficient: couplingCoefficient(boreRatio) }),
  checks: ['air-components'],
})
