import type { PublishedCheck } from './shape.ts'

const FORECAST = {
  relation: 'degradation-forecast',
  source: 'WearIncrementsModel',
  standing: 'our judgement',
} as const
const ROUNDING_ONLY = 'worked from exact fractions with fifteen digits; only rounding may differ'

export const checks: readonly PublishedCheck[] = [
  {
    relation: 'archard-wear',
    name: 'mild steel on itself, 100 N over 1 m, form with 3H',
    given: { coefficient: '7e-3', load: '100 N', distance: '1 m', hardness: '1.176e9 Pa', form: 'kfs3h' },
    expected: { volumeM3: { printed: '1.98413e-10', unit: 'm3' } },
    source: 'ArchardLaw',
    standing: 'second hand',
  },
  {
    relation: 'archard-wear',
    name: 'ring face of 1 m², 0.2 MPa, 6480 m of sliding in an hour: 0.648 µm',
    given: { coefficient: '1e-6', load: '200 kN', distance: '6480 m', hardness: '2e9 Pa' },
    expected: { volumeM3: { printed: '6.48e-7', unit: 'm3' } },
    source: 'ExactIdentity',
    standing: 'published',
  },
  {
    relation: 'equivalent-quartz',
    name: '60 % quartz, 25 % feldspar, 15 % mica',
    given: { shares: '0.6,0.25,0.15', mohs: '7,6,2.5' },
    expected: { content: { printed: '0.67975' } },
    source: 'MohsQuartzNote',
    standing: 'second hand',
  },
  {
    relation: 'ring-gap-wear',
    name: 'a feeler step of 0.05 mm is 0.008 mm of wear',
    given: { gap: '0.55 mm', newGap: '0.50 mm' },
    expected: { wearM: { printed: '0.00796', unit: 'mm' } },
    source: 'ExactIdentity',
    standing: 'published',
  },
  {
    relation: 'coin-feeler',
    name: 'a quarter is 1.75 mm thick',
    given: { coin: 'quarter', count: '1' },
    expected: { gapM: { printed: '1.75', unit: 'mm' } },
    source: 'UsMintCoins',
    standing: 'published',
  },
  {
    relation: 'coin-feeler',
    name: 'two quarters make 3.50 mm',
    given: { coin: 'quarter', count: '2' },
    expected: { gapM: { printed: '3.50', unit: 'mm' } },
    source: 'UsMintCoins',
    standing: 'published',
  },
  {
    ...FORECAST,
    name: 'three readings, 0.61 mm left',
    given: {
      priorRate: '0.010 mm/h',
      priorWeight: '10 h',
      readings: '20 h:0.25 mm,35 h:0.41 mm,25 h:0.33 mm',
      remaining: '0.61 mm',
    },
    expected: {
      p10S: { printed: '42.49953072375151', unit: 'h', tolerance: { fraction: 1e-12 }, why: ROUNDING_ONLY },
      p50S: { printed: '50.36697247706422', unit: 'h', tolerance: { fraction: 1e-12 }, why: ROUNDING_ONLY },
      p90S: { printed: '60.35422304820444', unit: 'h', tolerance: { fraction: 1e-12 }, why: ROUNDING_ONLY },
      bound: { printed: 'finite' },
    },
  },
]
