import type { PublishedCheck } from './shape.ts'

const OWN = { relation: 'rate-learning', source: 'RateLearningModel', standing: 'our judgement' } as const

export const checks: readonly PublishedCheck[] = [
  {
    ...OWN,
    name: 'four bores at twice the planned rate, both spreads 0.4: by hand',
    // m = (4/5) ln 2, s² = 0.16/5.
    given: { ratios: '2,2,2,2', priorSpread: '0.4', boreSpread: '0.4' },
    expected: {
      multiplierP10: { printed: '1.384400' },
      multiplierP50: { printed: '1.741101' },
      multiplierP90: { printed: '2.189709' },
      spread: { printed: '0.178885' },
    },
  },
  {
    ...OWN,
    name: 'one stall below a tenth of the planned rate: integrated on a grid',
    given: { stalledBelow: '0.1' },
    expected: { multiplierP50: { printed: '0.232720' }, spread: { printed: '0.280325' } },
  },
  {
    ...OWN,
    name: 'three bores and a stall: integrated on a grid',
    given: { ratios: '1.3,0.8,1.1', stalledBelow: '0.2' },
    expected: { multiplierP50: { printed: '0.715485' }, spread: { printed: '0.163057' } },
  },
  {
    ...OWN,
    name: 'nothing seen: the prior',
    given: {},
    expected: { multiplierP50: { printed: '1.000' }, spread: { printed: '0.430' } },
  },
]
