import type { PublishedCheck } from './shape.ts'

const NIST = { source: 'NistReliability', standing: 'published' } as const
const NIST_LIVES = {
  failures: '54,187,216,240,244,335,361,373,375,386',
  suspensions: '500,500,500,500,500,500,500,500,500,500',
} as const
const LOOSE =
  'the printed scale is 0.0004 h above the exact maximum, confirmed with forty digits: loose convergence in print'

const SHOCK_FAILURES = '6700,9120,12200,13150,14300,17520,20100,20900,22700,26510,27490'
const SHOCK_WHOLE =
  '6950,7820,8790,9660,9820,11310,11690,11850,11880,12140,12870,13330,13470,14040,17540,17890,18420,18960,18980,19410,20100,20150,20320,23490,27410,27890,28100'
const BEARINGS =
  '17.88,28.92,33.00,41.52,42.12,45.60,48.48,51.84,51.96,54.12,55.56,67.80,68.64,68.64,68.88,84.12,93.12,98.64,105.12,105.84,127.92,128.04,173.40'

const MIL_REPAIRS =
  '2.6,16.5,16.5,17,21.4,29.1,33.3,56.5,63.1,70.6,73,77.7,93.9,95.5,98.1,101.1,132,142.2,147.7,149,167.2,190.7,193,198.7,251.9,282.5,286.1'
const MEMORY = { source: 'AgeReplacement', standing: 'second hand' } as const

/** Share of the scale to replace at, and of the cost of running to failure, by shape and cost ratio. */
const SHARES = [
  ['2', '3', '0.74', '0.87'],
  ['2', '5', '0.51', '0.72'],
  ['2', '10', '0.34', '0.54'],
  ['2', '20', '0.23', '0.39'],
  ['3', '3', '0.64', '0.72'],
  ['3', '5', '0.50', '0.54'],
  ['3', '10', '0.38', '0.35'],
  ['3', '20', '0.30', '0.23'],
] as const

export const checks: readonly PublishedCheck[] = [
  {
    relation: 'weibull-fit',
    name: 'ten failures among twenty units, the rest taken out at 500 h',
    given: NIST_LIVES,
    expected: {
      shape: { printed: '1.7208' },
      scale: { printed: '606.5280', tolerance: { fraction: 2e-6 }, why: LOOSE },
    },
    ...NIST,
  },
  {
    relation: 'weibull-fit',
    name: 'shock absorbers, 11 failures among 38',
    given: { failures: SHOCK_FAILURES, suspensions: SHOCK_WHOLE },
    expected: {
      shape: { printed: '3.16' },
      scale: {
        printed: '27718.72',
        tolerance: { fraction: 1e-4 },
        why: 'the exact maximiser, 27717.362, was confirmed with forty digits: loose convergence in print',
      },
    },
    source: 'WeibullLikelihood',
    standing: 'second hand',
  },
  {
    relation: 'weibull-fit',
    name: 'ball bearings, 23 complete lives',
    given: { failures: BEARINGS },
    expected: { shape: { printed: '2.102' }, scale: { printed: '81.88' } },
    source: 'LiebleinZelen',
    standing: 'second hand',
  },
  {
    relation: 'weibull-scale',
    name: 'the twenty units with the shape they gave',
    given: { ...NIST_LIVES, shape: '1.7208' },
    expected: { scale: { printed: '606.5273' } },
    ...NIST,
    standing: 'second hand',
  },
  {
    relation: 'weibull-scale',
    name: 'the twenty units with shape 2',
    given: { ...NIST_LIVES, shape: '2' },
    expected: { scale: { printed: '580.7730' } },
    ...NIST,
    standing: 'second hand',
  },
  {
    relation: 'repair-trend',
    name: '27 failures in 300 h',
    given: { repairs: MIL_REPAIRS, observed: '300' },
    expected: {
      shape: { printed: '0.716339' },
      correctedShape: { printed: '0.689808' },
      rate: { printed: '0.453842' },
      timeBetween: { printed: '15.51096' },
    },
    source: 'MilHdbk189',
    standing: 'second hand',
  },
  {
    relation: 'repair-trend',
    name: 'ten repairs in 1500 h',
    given: { repairs: '5,40,43,175,389,712,747,795,1299,1478', observed: '1500' },
    expected: { correctedShape: { printed: '0.483506' } },
    ...NIST,
  },
  {
    relation: 'age-replacement',
    name: 'shape 2.5, scale 1000 h, a failure costs five',
    given: { shape: '2.5', scale: '1000', costRatio: '5' },
    expected: {
      age: { printed: '493.047' },
      costShare: { printed: '0.61435' },
      reason: { printed: 'replace-at-age' },
    },
    ...MEMORY,
  },
  {
    relation: 'age-replacement',
    name: 'lives by chance alone',
    given: { shape: '1', scale: '1000', costRatio: '5' },
    expected: { reason: { printed: 'does-not-wear-out' } },
    source: 'ExactIdentity',
    standing: 'published',
  },
  ...SHARES.map(
    ([shape, costRatio, age, costShare]): PublishedCheck => ({
      relation: 'age-replacement',
      name: `shape ${shape}, cost ratio ${costRatio}`,
      given: { shape, scale: '1', costRatio },
      expected: { age: { printed: age }, costShare: { printed: costShare } },
      ...MEMORY,
    }),
  ),
]
