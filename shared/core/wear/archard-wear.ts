import { relation } from '../relation.ts'

/**
 * Volume worn off by sliding. Two conventions differ by a factor of 3: a coefficient belongs to the form it was
 * published with. Coefficients scatter by an order of magnitude between tests of one pair, so a result is a prior only.
 */
export const archardWear = relation({
  id: 'archard-wear',
  title: 'Wear of a sliding pair (Archard)',
  formula: 'V = K F s / H, or V = K F s / (3 H)',
  sources: ['ArchardLaw'],
  inputs: {
    coefficient: {
      kind: 'ratio',
      words: 'wear coefficient K, of the form it was published with',
      range: { min: 1e-8, max: 0.1, hardMin: 0, hardMax: 1 },
    },
    load: { kind: 'force', words: 'load pressing the two together', range: { hardMin: 0, hardMax: 1e9 } },
    distance: { kind: 'length', words: 'distance slid', range: { hardMin: 0, hardMax: 1e12 } },
    hardness: {
      kind: 'stress',
      words: 'indentation hardness of the softer one',
      range: { min: 1e7, max: 1.2e10, hardMin: 1, hardMax: 1e12 },
    },
    form: { choices: ['kfsh', 'kfs3h'], words: 'form of the law: K F s / H or K F s / 3H', default: 'kfsh' },
  },
  outputs: { volume: { kind: 'volume', words: 'volume worn off' } },
  fn: ({ coefficient, loadN, distanceM, hardnessPa, form }) => ({
    volumeM3: (coefficient * loadN * distanceM) / (hardnessPa * (form === 'kfs3h' ? 3 : 1)),
  }),
  checks: ['wear'],
  remarks: 'A coefficient is good to an order of magnitude at best; readings of your own tool must rule.',
})
