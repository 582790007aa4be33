import type { PublishedCheck } from './shape.ts'

/** Factor on a hammer's free air volume at −40 °F, by altitude in thousands of feet from 0. */
const FACTORS = [
  '0.805',
  '0.835',
  '0.866',
  '0.898',
  '0.932',
  '0.968',
  '1.004',
  '1.043',
  '1.084',
  '1.127',
  '1.170',
  '1.217',
  '1.266',
  '1.317',
  '1.371',
  '1.426',
] as const
/** The factor is 1 for air of 60 °F at sea level; the ratio is taken to air of 20 °C. */
const RATIO_OF_60_F = 293.15 / 288.706

export const checks: readonly PublishedCheck[] = FACTORS.map((factor, thousands) => ({
  relation: 'air-density-ratio',
  name: `${thousands * 1000} ft, -40 °F, factor ${factor}`,
  given: { altitude: `${thousands * 1000} ft`, temperature: '-40 °F' },
  expected: {
    ratio: {
      printed: (RATIO_OF_60_F / Number(factor)).toFixed(4),
      tolerance: { fraction: 0.005 },
      why: 'the reciprocal of a factor of three digits whose reference air is not named: taken as 60 °F, the whole row lies 0.3 % off, its altitude part 0.1 %',
    },
  },
  source: 'TemperatureAltitudeRow',
  standing: 'second hand',
}))
