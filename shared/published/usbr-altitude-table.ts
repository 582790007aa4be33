import type { PublishedCheck } from './shape.ts'

/** Columns: altitude [ft], density relative to sea level, specific volume of dry air at 70 °F [ft³/lb]. */
const ROWS = [
  ['5900', '0.804', '16.575'],
  ['6000', '0.801', '16.637'],
  ['6500', '0.786', '16.954'],
  ['7000', '0.772', '17.279'],
  ['7500', '0.757', '17.610'],
  ['8000', '0.743', '17.950'],
  ['8500', '0.729', '18.297'],
  ['8700', '0.723', '18.438'],
] as const

/** Up to here a rotary machine keeps its whole inlet volume, so a specific volume a minute is a pound a minute. */
const FULL_VOLUME_TO_FT = 7000

const ratio = ([altitude, relativeDensity]: (typeof ROWS)[number]): PublishedCheck => ({
  relation: 'air-density-ratio',
  name: `${altitude} ft`,
  given: { altitude: `${altitude} ft`, temperature: '20 °C' },
  expected: {
    ratio: {
      printed: relativeDensity,
      tolerance: { absolute: 0.001 },
      why: 'the printed barometer is itself rounded to 0.01 psi; the ratio is that of two airs of one temperature',
    },
  },
  source: 'UsbrAltitudeTable',
  standing: 'published',
})

const mass = ([altitude, , specificVolume]: (typeof ROWS)[number]): PublishedCheck => ({
  relation: 'compressor-delivery',
  name: `one pound a minute at ${altitude} ft`,
  given: { freeAirDelivery: `${specificVolume} cfm`, altitude: `${altitude} ft`, temperature: '70 °F' },
  expected: {
    massFlowKgPerS: {
      printed: '1',
      unit: 'lb/min',
      tolerance: { fraction: 0.002 },
      why: 'one pound by the meaning of the printed specific volume, which starts from the rounded standard air of 0.075 lb/ft3, 0.15 % light of volume',
    },
  },
  source: 'UsbrAltitudeTable',
  standing: 'published',
})

/** The barometer itself: altitude [ft], psia. */
const BAROMETER = [
  ['5900', '11.82'],
  ['6000', '11.78'],
  ['6500', '11.56'],
  ['7000', '11.34'],
  ['7500', '11.13'],
  ['8000', '10.92'],
  ['8500', '10.71'],
  ['8700', '10.63'],
] as const

const barometer = ([altitude, printed]: (typeof BAROMETER)[number]): PublishedCheck => ({
  relation: 'standard-atmosphere',
  name: `barometer at ${altitude} ft`,
  given: { altitude: `${altitude} ft` },
  expected: { pressurePa: { printed, unit: 'psia' } },
  source: 'UsbrAltitudeTable',
  standing: 'published',
})

export const checks: readonly PublishedCheck[] = [
  ...BAROMETER.map(barometer),
  ...ROWS.map(ratio),
  ...ROWS.filter(([altitude]) => Number(altitude) <= FULL_VOLUME_TO_FT).map(mass),
]
