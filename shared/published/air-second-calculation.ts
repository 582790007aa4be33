import type { PublishedCheck } from './shape.ts'

/**
 * 1 in hose, 100 psi, 70 °F, by a second program; its cfm are standard air of 60 °F and 14.696 psia.
 * Columns: cfm, then psi lost: smooth wall, roughness 0.01 mm, 0.046 mm, smooth with K 4 per 50 ft.
 */
const LOSSES = {
  '50 ft': [
    '50 0.28 0.31 0.38 0.39',
    '75 0.59 0.66 0.83 0.82',
    '100 0.99 1.14 1.46 1.40',
    '125 1.49 1.74 2.26 2.13',
    '150 2.08 2.47 3.26 3.00',
    '175 2.76 3.34 4.44 4.03',
    '200 3.53 4.34 5.83 5.21',
    '225 4.39 5.48 7.43 6.55',
    '250 5.35 6.78 9.25 8.05',
  ],
  '100 ft': [
    '50 0.57 0.62 0.76 0.77',
    '100 1.99 2.29 2.93 2.82',
    '150 4.19 5.01 6.61 6.09',
    '200 7.17 8.86 12.0 10.7',
    '250 11.0 14.0 19.4 16.8',
  ],
} as const
/** What the second program rounded 0.01 and 0.046 mm to. */
const WALLS = ['0 in', '0.0004 in', '0.0018 in', '0 in'] as const

/** The relation takes free air at the hose's own temperature. */
const at70F = (standardCfm: string): string => `${((Number(standardCfm) * 529.67) / 519.67).toFixed(4)} cfm`

function hoseChecks(length: '50 ft' | '100 ft', line: string): PublishedCheck[] {
  const [cfm = '', ...losses] = line.split(' ')
  return losses.map((printed, column) => {
    const roughness = WALLS[column] ?? ''
    const couplings = column < 3 ? '0' : length === '50 ft' ? '4' : '8'
    const given = { bore: '1 in', length, freeAir: at70F(cfm), pressure: '100 psi', temperature: '70 °F' }
    return {
      relation: 'hose-friction-loss',
      name: `${length}, ${cfm} cfm, wall ${roughness}, ${couplings} couplings`,
      given: { ...given, roughness, couplings },
      expected: {
        lossPa: {
          printed,
          unit: 'psi',
          tolerance: { absolute: 0.5 * 10 ** -(printed.split('.')[1]?.length ?? 0) + 0.0002 },
          why: 'half a digit and a little: R 287.05 there against 287.0529 here carries one value over a rounding edge',
        },
      },
      source: 'AirSecondCalculation',
      standing: 'our judgement',
    }
  })
}

/** 185 cfm at 100 psi, 100 ft of hose with K 8, a tool rated 100 cfm at 90 psi, sea level, 20 °C: each point changes one thing. */
const COMMON = {
  freeAirDelivery: '185 cfm',
  pressure: '100 psi',
  bore: '1 in',
  length: '100 ft',
  toolAirDemand: '100 cfm',
  toolRatedPressure: '90 psi',
  couplings: '8',
  roughness: '0.0004 in',
}
type Change = Readonly<Record<string, string>>
/** Columns: name, change, tool [psi], compressor [psi], flow [cfm], limited by. */
const POINTS: readonly (readonly [string, Change, string, string, string, string])[] = [
  ['A: 1 in hose', {}, '96.61', '100.00', '106.3', 'tool'],
  ['B: with an oiler', { lubricator: 'fitted' }, '95.61', '100.00', '105.4', 'tool'],
  ['C: 3/4 in hose', { bore: '3/4 in' }, '88.00', '100.00', '98.1', 'hose'],
  ['D: exponent 1.5', { exponent: '1.5' }, '96.42', '100.00', '109.3', 'tool'],
  ['E: tool of 250 cfm', { toolAirDemand: '250 cfm' }, '62.78', '76.14', '185.0', 'compressor'],
  ['F: 2500 m, 30 °C', { altitude: '2500 m', temperature: '30 °C' }, '96.60', '100.00', '144.0', 'tool'],
]

const pointChecks = POINTS.map(
  ([name, change, tool, compressor, flow, limitedBy]): PublishedCheck => ({
    relation: 'air-operating-point',
    name,
    given: { ...COMMON, ...change },
    expected: {
      toolGaugePa: { printed: tool, unit: 'psi' },
      compressorGaugePa: { printed: compressor, unit: 'psi' },
      flowM3PerS: { printed: flow, unit: 'cfm' },
      limitedBy: { printed: limitedBy },
    },
    source: 'AirSecondCalculation',
    standing: 'our judgement',
  }),
)

/** Density at a site over that at sea level and 20 °C. Columns: altitude, temperature, ratio. */
const RATIOS = [
  ['1000 m', '20 °C', '0.887'],
  ['2000 m', '20 °C', '0.785'],
  ['2000 m', '30 °C', '0.759'],
  ['3000 m', '20 °C', '0.692'],
  ['0 m', '-10 °C', '1.114'],
  ['0 m', '40 °C', '0.936'],
] as const

const ratioChecks = RATIOS.map(
  ([altitude, temperature, ratio]): PublishedCheck => ({
    relation: 'air-density-ratio',
    name: `${altitude}, ${temperature}`,
    given: { altitude, temperature },
    expected: { ratio: { printed: ratio } },
    source: 'AirSecondCalculation',
    standing: 'our judgement',
  }),
)

export const checks: readonly PublishedCheck[] = [
  ...LOSSES['50 ft'].flatMap((line) => hoseChecks('50 ft', line)),
  ...LOSSES['100 ft'].flatMap((line) => hoseChecks('100 ft', line)),
  ...pointChecks,
  ...ratioChecks,
]
