import type { PublishedCheck } from './shape.ts'

/** kp, energy J, distance m, mm/s. */
const PILING = [
  ['1', '10000', '10', '5.0119'],
  ['3', '74', '2', '10.481'],
  ['1.5', '74', '0.5', '31.8'],
  ['1.5', '74', '1', '12.9'],
  ['1.5', '74', '5', '1.6'],
  ['1.5', '331', '1', '27.3'],
] as const

/** Reference at 25 ft in/s, limit in/s, distance ft as printed, and why it may be wider. */
const TRANSIT = [
  ['0.089', '0.3', '11', 'Fta2018', 'second hand'],
  ['0.089', '0.3', '11.12', 'SecondCalculation', 'our judgement'],
  ['0.076', '0.3', '10', 'Fta2018', 'second hand'],
  ['0.003', '0.3', '1', 'Fta2018', 'second hand'],
  ['0.035', '0.2', '7.82', 'SecondCalculation', 'our judgement'],
  ['0.035', '0.12', '11.0', 'SecondCalculation', 'our judgement'],
  ['0.035', '0.5', '4.25', 'SecondCalculation', 'our judgement'],
] as const

/** Distance ft, exponent, mm/s for 36,000 ft-lb. */
const CALTRANS = [
  ['25', '1.4', '16.51'],
  ['50', '1.1', '7.70'],
] as const

export const checks: readonly PublishedCheck[] = [
  ...PILING.map(
    ([groundFactor, energy, distance, velocity]): PublishedCheck => ({
      relation: 'vibration-ppv',
      name: `kp ${groundFactor}, ${energy} J at ${distance} m`,
      given: { energy: `${energy} J`, distance: `${distance} m`, groundFactor },
      expected: { ppvMPerS: { printed: velocity, unit: 'mm/s' } },
      source: 'Trl429',
      standing: 'second hand',
    }),
  ),
  {
    relation: 'vibration-ppv-attewell-farmer',
    name: '50 kJ at 15 m',
    given: { energy: '50000 J', distance: '15 m' },
    expected: { ppvMPerS: { printed: '22.361', unit: 'mm/s' } },
    source: 'AttewellFarmer1973',
    standing: 'second hand',
  },
  ...CALTRANS.map(
    ([distance, exponent, velocity]): PublishedCheck => ({
      relation: 'vibration-ppv-caltrans',
      name: `36,000 ft-lb at ${distance} ft`,
      given: { energy: '36000 ft-lb', distance: `${distance} ft`, exponent },
      expected: { ppvMPerS: { printed: velocity, unit: 'mm/s' } },
      source: 'CaltransVibration2013',
      standing: 'second hand',
    }),
  ),
  ...TRANSIT.map(
    ([reference, limit, distance, source, standing]): PublishedCheck => ({
      relation: 'vibration-distance',
      name: `${reference} in/s to ${limit} in/s, ${distance} ft`,
      given: { reference: `${reference} in/s`, limit: `${limit} in/s` },
      expected: { distanceM: { printed: distance, unit: 'ft' } },
      source,
      standing,
    }),
  ),
]
