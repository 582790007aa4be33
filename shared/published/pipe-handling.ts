import type { PublishedCheck } from './shape.ts'

const WORKED = { source: 'PipeArithmetic', standing: 'our judgement' } as const
const HANDBOOK = { source: 'PpiHandbook', standing: 'second hand' } as const
const EXPANSION = { source: 'PolyethyleneExpansion', standing: 'second hand' } as const
const GUIDELINE = { source: 'IsttImpactMoling', standing: 'published' } as const

/** Pipe, outside diameter, ratio, radius printed, unit. */
const RADII = [
  ['1 CTS SDR 9', '1.125 in', '9', '22.5', 'in'],
  ['1 IPS DR 11', '1.315 in', '11', '32.9', 'in'],
  ['2 IPS DR 11', '2.375 in', '11', '59.4', 'in'],
  ['2 IPS DR 11, metric', '2.375 in', '11', '1.508', 'm'],
  ['4 IPS DR 11', '4.5 in', '11', '112.5', 'in'],
  ['4 IPS DR 17', '4.5 in', '17', '121.5', 'in'],
  ['63 SDR 11', '63 mm', '11', '1.575', 'm'],
] as const

/** Pipe, and the bores 15 and 25 % larger, as printed. */
const BAND = [
  ['1.125', '1.294', '1.406', 'in'],
  ['1.315', '1.512', '1.644', 'in'],
  ['1.660', '1.909', '2.075', 'in'],
  ['2.375', '2.731', '2.969', 'in'],
  ['3.500', '4.025', '4.375', 'in'],
  ['50', '57.5', '62.5', 'mm'],
  ['63', '72.45', '78.75', 'mm'],
  ['110', '126.5', '137.5', 'mm'],
] as const

const EQUAL = [
  ['1', '1'],
  ['2', '2'],
  ['3', '2.155'],
  ['4', '2.414'],
  ['7', '3'],
] as const

export const checks: readonly PublishedCheck[] = [
  ...RADII.map(
    ([pipe, outsideDiameter, dimensionRatio, printed, unit]): PublishedCheck => ({
      relation: 'bend-radius',
      name: pipe,
      given: { outsideDiameter, dimensionRatio },
      expected: { radiusM: { printed, unit } },
      ...HANDBOOK,
    }),
  ),
  {
    relation: 'thermal-length-change',
    name: '100 ft of polyethylene, 10 °F',
    given: { length: '100 ft', temperatureDifference: '10 °F', expansion: '9e-5 1/°F' },
    expected: { changeM: { printed: '1.08', unit: 'in' } },
    ...EXPANSION,
  },
  {
    relation: 'thermal-length-change',
    name: '100 ft of polyethylene cooled by 40 °F',
    given: { length: '100 ft', temperatureDifference: '-40 °F', expansion: '9e-5 1/°F' },
    expected: { changeM: { printed: '-4.32', unit: 'in' } },
    ...EXPANSION,
  },
  {
    relation: 'thermal-length-change',
    name: '30 m of PE 100, 20 K',
    given: { length: '30 m', temperatureDifference: '20 K', expansion: '1.8e-4 1/K' },
    expected: { changeM: { printed: '108', unit: 'mm' } },
    ...EXPANSION,
  },
  {
    relation: 'thermal-length-change',
    name: '30 m of polyethylene, 20 K, at 1.5e-4',
    given: { length: '30 m', temperatureDifference: '20 K', expansion: '1.5e-4 1/K' },
    expected: { changeM: { printed: '90', unit: 'mm' } },
    ...EXPANSION,
  },
  {
    relation: 'thermal-length-change',
    name: 'the slip of a tenth of an inch per 10 °F per 100 ft',
    given: { length: '100 ft', temperatureDifference: '10 °F', expansion: '9e-5 1/°F' },
    expected: { changeM: { printed: '0.1', unit: 'in' } },
    ...EXPANSION,
    knownWrong: true,
  },
  {
    relation: 'pipe-lead-in',
    name: '2 in DR 11, 0.9 m deep, one arc',
    given: { radius: '1.508 m', depth: '0.9 m' },
    expected: { lengthM: { printed: '1.380', unit: 'm' }, angleRad: { printed: '66.2', unit: 'deg' } },
    ...WORKED,
  },
  {
    relation: 'pipe-lead-in',
    name: '2 in DR 11, 0.9 m deep, S-curve',
    given: { radius: '1.508 m', depth: '0.9 m', form: 's-curve' },
    expected: { lengthM: { printed: '2.149', unit: 'm' } },
    ...WORKED,
  },
  ...BAND.flatMap(([pipe, low, high, unit]): PublishedCheck[] =>
    [
      [low, '1.15'],
      [high, '1.25'],
    ].map(([bore, ratio]) => ({
      relation: 'oversize-ratio',
      name: `${pipe} ${unit} pipe, bore ${bore}`,
      given: { bore: `${bore} ${unit}`, pipe: `${pipe} ${unit}` },
      expected: { ratio: { printed: ratio ?? '' } },
      ...GUIDELINE,
    })),
  ),
  {
    relation: 'oversize-ratio',
    name: '55 mm tool, 25 mm cable',
    given: { bore: '55 mm', pipe: '25 mm' },
    expected: { ratio: { printed: '2.20' }, radialGapM: { printed: '15.0', unit: 'mm' } },
    source: 'ExactIdentity',
    standing: 'published',
  },
  {
    relation: 'oversize-ratio',
    name: '3.0 in tool, 2 in iron pipe size',
    given: { bore: '3.0 in', pipe: '2.375 in' },
    expected: { ratio: { printed: '1.263' }, radialGapM: { printed: '0.3125', unit: 'in' } },
    source: 'ExactIdentity',
    standing: 'published',
  },
  {
    relation: 'annulus-volume',
    name: '75 mm bore, 63 mm pipe, 1 m',
    given: { bore: '75 mm', pipe: '63 mm', length: '1 m' },
    expected: { areaM2: { printed: '1300.6', unit: 'mm2' }, volumeM3: { printed: '1.3006', unit: 'L' } },
    ...WORKED,
  },
  {
    relation: 'annulus-volume',
    name: '3 in bore, 2 in iron pipe size, 100 ft',
    given: { bore: '3 in', pipe: '2.375 in', length: '100 ft' },
    expected: { areaM2: { printed: '2.6384', unit: 'in2' }, volumeM3: { printed: '13.71', unit: 'gal' } },
    ...WORKED,
  },
  {
    relation: 'annulus-volume',
    name: '3 in bore, 2 in iron pipe size, 100 ft, in cubic feet',
    given: { bore: '3 in', pipe: '2.375 in', length: '100 ft' },
    expected: { volumeM3: { printed: '1.832', unit: 'ft3' } },
    ...WORKED,
  },
  {
    relation: 'pipe-mass',
    name: '2 IPS DR 11 polyethylene, a foot',
    given: { outsideDiameter: '2.375 in', wall: '0.216 in', length: '1 ft' },
    expected: { massKg: { printed: '0.639', unit: 'lb' } },
    ...WORKED,
  },
  {
    relation: 'pipe-mass',
    name: '3/4 K copper, a foot',
    given: {
      outsideDiameter: '0.875 in',
      wall: '0.065 in',
      length: '1 ft',
      density: '0.323 lb/in3',
      wallAllowance: '1',
    },
    expected: { massKg: { printed: '0.641', unit: 'lb' } },
    source: 'AstmB88',
    standing: 'second hand',
  },
  {
    relation: 'pipe-mass',
    name: '1/4 K copper, a foot, as one page misprints it',
    given: {
      outsideDiameter: '0.375 in',
      wall: '0.035 in',
      length: '1 ft',
      density: '0.323 lb/in3',
      wallAllowance: '1',
    },
    expected: { massKg: { printed: '0.133', unit: 'lb' } },
    source: 'PipeMisprints',
    standing: 'second hand',
    knownWrong: true,
  },
  {
    relation: 'dry-drag',
    name: '100 ft of 2 IPS DR 11',
    given: { mass: '63.9 lb' },
    expected: { forceN: { printed: '32', unit: 'lbf' } },
    ...WORKED,
  },
  ...EQUAL.map(
    ([count, printed]): PublishedCheck => ({
      relation: 'bundle-diameter',
      name: `${count} equal pipes of 1 in`,
      given: { outsideDiameter: '1 in', count },
      expected: {
        diameterM: {
          printed,
          unit: 'in',
          ...(printed.includes('.') ? {} : { tolerance: { absolute: 0.0005 }, why: 'exact' }),
        },
      },
      source: 'CirclePackings',
      standing: 'published',
    }),
  ),
  {
    relation: 'bundle-diameter',
    name: 'two 1-1/4 in ducts',
    given: { outsideDiameter: '1.66 in', count: '2' },
    expected: { diameterM: { printed: '3.32', unit: 'in' } },
    source: 'ExactIdentity',
    standing: 'published',
  },
]
