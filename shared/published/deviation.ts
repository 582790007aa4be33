import type { PublishedCheck } from './shape.ts'

const MODEL = { source: 'DeviationModel', standing: 'our judgement' } as const

/** Station in metres, σ in millimetres, median and P90 of |y| in per cent of the station. */
const WANDER = [
  ['1', '5.10', '0.344', '0.839'],
  ['5', '38.96', '0.526', '1.282'],
  ['10', '102.01', '0.688', '1.678'],
  ['15', '182.12', '0.819', '1.997'],
  ['30', '499.71', '1.124', '2.740'],
  ['45', '908.41', '1.362', '3.320'],
] as const

/** A per cent of the station as a length in millimetres: 1 % of 15 m is 150 mm. */
const allowance = (station: string, percent: string) => {
  const mmPerPercent = Number(station) * 10
  return {
    printed: String(Number((Number(percent) * mmPerPercent).toFixed(6))),
    unit: 'mm',
    tolerance: { absolute: 0.0005 * mmPerPercent },
    why: `printed as ${percent} % of the station`,
  }
}

export const checks: readonly PublishedCheck[] = [
  ...WANDER.map(
    ([station, sigma]): PublishedCheck => ({
      relation: 'deviation',
      name: `${station} m`,
      // The print takes 5 mm over 1.2 m unrounded; the default is rounded to 4.167 mrad.
      given: { station: `${station} m`, aim: '4.1666667 mrad' },
      expected: { sigmaM: { printed: sigma, unit: 'mm' } },
      ...MODEL,
    }),
  ),
  {
    relation: 'deviation',
    name: 'aim alone: 5 mm over 1.2 m, target at 15 m',
    given: { station: '15 m', aim: '4.1666667 mrad', drift: '0 mrad/m^0.5' },
    expected: { sigmaM: { printed: '62.5', unit: 'mm' } },
    source: 'ExactIdentity',
    standing: 'published',
  },
  ...WANDER.flatMap(([station, , median, p90]): PublishedCheck[] => [
    {
      relation: 'drift-allowance',
      name: `${station} m, middle value`,
      given: { station: `${station} m`, share: '0.5' },
      expected: { allowanceM: allowance(station, median) },
      ...MODEL,
    },
    {
      relation: 'drift-allowance',
      name: `${station} m, nine in ten`,
      given: { station: `${station} m` },
      expected: { allowanceM: allowance(station, p90) },
      ...MODEL,
    },
  ]),
  {
    relation: 'observed-deviation',
    name: '15 m after an exact sighting at 8 m',
    given: { station: '15 m', sighting: '8 m' },
    expected: { sigmaM: { printed: '75.45', unit: 'mm' } },
    ...MODEL,
  },
  {
    relation: 'observed-deviation',
    name: '15 m after a sighting at 8 m good to 10 mm',
    given: { station: '15 m', sighting: '8 m', sightingError: '10 mm' },
    expected: { sigmaM: { printed: '78.61', unit: 'mm' } },
    ...MODEL,
  },
]
