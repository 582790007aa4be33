import type { PublishedCheck } from './shape.ts'

/** Rotary column: altitude [ft], volumetric efficiency [%]. */
const ROWS = [
  ['2000', '100.0'],
  ['5000', '100.0'],
  ['7000', '100.0'],
  ['8000', '99.9'],
  ['12000', '98.6'],
] as const

export const checks: readonly PublishedCheck[] = ROWS.map(
  ([altitude, percent]): PublishedCheck => ({
    relation: 'compressor-delivery',
    name: `${altitude} ft`,
    given: { freeAirDelivery: '100 cfm', altitude: `${altitude} ft` },
    expected: {
      volumetricEfficiency: { printed: percent, unit: '%' },
      freeAirM3PerS: { printed: percent, unit: 'cfm' },
    },
    source: 'Fm5434',
    standing: 'published',
  }),
)
