import type { PublishedCheck } from './shape.ts'

export const checks: readonly PublishedCheck[] = [
  {
    relation: 'engine-power',
    name: '225 hp at 4500 ft, naturally aspirated',
    given: { ratedPower: '225 hp', altitude: '4500 ft', engine: 'aspirated' },
    expected: { powerW: { printed: '198.0', unit: 'hp' } },
    source: 'EngineDerateRule',
    standing: 'published',
  },
  {
    relation: 'engine-power',
    name: 'turbocharged: all of it',
    given: { ratedPower: '225 hp', altitude: '4500 ft', engine: 'turbo' },
    expected: { powerW: { printed: '225.0', unit: 'hp' } },
    source: 'EngineDerateRule',
    standing: 'published',
  },
  {
    relation: 'compressor-power',
    name: 'Example 13-8: 100 scfm from 14.7 to 114.7 psia, 75 %',
    given: { freeAir: '100 cfm', pressure: '100 psi', efficiency: '0.75', atmosphere: '14.7 psia' },
    expected: {
      powerW: {
        printed: '23.96',
        unit: 'hp',
        tolerance: { absolute: 0.08 },
        why: 'its two-figure exponent and constant 65.4: exact the isentropic power is 23.90',
      },
    },
    source: 'EspositoFluidPower',
    standing: 'second hand',
  },
  ...(
    [
      ['100 psi', '8.7', 0.3],
      ['125 psi', '9.8', 0.4],
    ] as const
  ).map(
    ([pressure, printed, absolute]): PublishedCheck => ({
      relation: 'compressor-fuel',
      name: `185 cfm at ${pressure}, full load`,
      given: { freeAir: '185 cfm', pressure, load: '1' },
      expected: {
        fuelM3PerS: {
          printed,
          unit: 'L/h',
          tolerance: { absolute },
          why: 'a range is given, 8.4 to 9.0 and 9.5 to 10.1 L/h, for the curve and the least efficient package allowed: we take the latter, and the ends are rounded',
        },
      },
      source: 'AirSecondCalculation',
      standing: 'our judgement',
    }),
  ),
]
