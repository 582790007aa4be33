import type { PublishedCheck } from './shape.ts'

const OSHA = { source: 'OshaSubpartPAppendixB', standing: 'published' } as const
const PRISMOID = { source: 'PrismoidalFormula', standing: 'published' } as const

/** Class, run per rise, whole degrees as the appendix prints them, top widths in feet of a 4 ft floor. */
const SLOPES = [
  ['A-short', '0.5', '63', ['8.9', '10.0', '12.0', '16.0']],
  ['A', '0.75', '53', ['11.35', '13.0', '16.0', '22.0']],
  ['B', '1', '45', ['13.8', '16.0', '20.0', '28.0']],
  ['C', '1.5', '34', ['18.7', '22.0', '28.0', '40.0']],
] as const
const DEPTHS_FT = ['4.9', '6', '8', '12'] as const

const METRIC_PIT = { length: '2 m', width: '1 m', depth: '1.5 m', slope: '1' } as const

export const checks: readonly PublishedCheck[] = [
  {
    relation: 'pit-slope',
    name: 'stable rock',
    given: { soilType: 'rock' },
    expected: { angleRad: { printed: '90', unit: 'deg' }, runPerRise: { printed: '0' } },
    ...OSHA,
  },
  ...SLOPES.map(
    ([soilType, run, angle]): PublishedCheck => ({
      relation: 'pit-slope',
      name: `class ${soilType}`,
      given: { soilType },
      expected: {
        angleRad: { printed: angle, unit: 'deg' },
        runPerRise: {
          printed: run,
          tolerance: { absolute: 0.005 },
          why: 'printed as a fraction, which is exact',
        },
      },
      ...OSHA,
    }),
  ),
  ...SLOPES.flatMap(([soilType, slope, , tops]) =>
    DEPTHS_FT.map(
      (depth, index): PublishedCheck => ({
        relation: 'pit-volume',
        name: `class ${soilType}, ${depth} ft deep, floor 4 ft wide`,
        given: { length: '6 ft', width: '4 ft', depth: `${depth} ft`, slope },
        expected: { topWidthM: { printed: tops[index] ?? '', unit: 'ft' } },
        source: 'OshaSubpartPAppendixB',
        standing: 'published',
      }),
    ),
  ),
  {
    relation: 'pit-volume',
    name: '2.0 × 1.0 × 1.5 m, sides 1:1',
    given: METRIC_PIT,
    expected: { volumeM3: { printed: '14.25', unit: 'm3' } },
    ...PRISMOID,
  },
  {
    relation: 'pit-volume',
    name: '6 × 3 × 4.5 ft, sides 3/4:1',
    given: { length: '6 ft', width: '3 ft', depth: '4.5 ft', slope: '0.75' },
    expected: { volumeM3: { printed: '286.03', unit: 'ft3' } },
    ...PRISMOID,
  },
  {
    relation: 'pit-volume',
    name: '6 × 3 × 4.5 ft, sides 3/4:1, in cubic yards',
    given: { length: '6 ft', width: '3 ft', depth: '4.5 ft', slope: '0.75' },
    expected: { volumeM3: { printed: '10.594', unit: 'yd3' } },
    ...PRISMOID,
  },
  {
    relation: 'pit-volume',
    name: '8 × 4 × 5 ft, sides 1-1/2:1',
    given: { length: '8 ft', width: '4 ft', depth: '5 ft', slope: '1.5' },
    expected: {
      volumeM3: { printed: '985', unit: 'ft3' },
      topLengthM: { printed: '23', unit: 'ft', tolerance: { absolute: 0.05 }, why: 'exact by hand' },
      topWidthM: { printed: '19', unit: 'ft', tolerance: { absolute: 0.05 }, why: 'exact by hand' },
    },
    ...PRISMOID,
  },
  {
    relation: 'pit-volume',
    name: 'average end area, which overstates',
    given: METRIC_PIT,
    expected: { volumeM3: { printed: '16.5', unit: 'm3' } },
    ...PRISMOID,
    knownWrong: true,
  },
  {
    relation: 'pit-volume',
    name: 'frustum of a cone or pyramid, whose faces are not similar',
    given: METRIC_PIT,
    expected: { volumeM3: { printed: '14.162', unit: 'm3' } },
    ...PRISMOID,
    knownWrong: true,
  },
]
