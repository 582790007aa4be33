import type { PublishedCheck } from './shape.ts'

const EXACT = { source: 'ExactIdentity', standing: 'published' } as const

/** Bore mm, axis depth m, peak heave mm. */
const PEAKS = [
  ['100', '1.05', '2.381'],
  ['75', '0.75', '1.875'],
  ['130', '1.3', '3.250'],
] as const

/** Cover over diameter, bore mm, peak heave mm of the printed table: D²/(4h), h = C + D/2. */
const COVER_TABLE = [
  [3, 45, '3.2'],
  [3, 180, '12.9'],
  [5, 75, '3.4'],
  [8, 100, '2.9'],
  [10, 45, '1.1'],
  [10, 180, '4.3'],
  [12, 130, '2.6'],
] as const

/** Where along a 10 m bore 1.05 m deep, share of the endless bore's rise. */
const PROGRESS = [
  ['middle', '5', '0.9787'],
  ['over the pit face', '0', '0.4973'],
  ['one depth ahead of the tip', '11.05', '0.1442'],
] as const

/** d k0, share of the curvature. */
const CURVATURE = [
  ['0.5', '0.027'],
  ['1', '0.1164'],
  ['1.5', '0.237'],
  ['2', '0.361'],
  ['2.5', '0.474'],
  ['3', '0.572'],
  ['4', '0.7202'],
  ['5', '0.817'],
  ['8', '0.944'],
] as const

export const checks: readonly PublishedCheck[] = [
  ...PEAKS.map(
    ([diameter, axisDepth, heave]): PublishedCheck => ({
      relation: 'surface-heave',
      name: `peak, ${diameter} mm at ${axisDepth} m`,
      given: { diameter: `${diameter} mm`, axisDepth: `${axisDepth} m` },
      expected: { heaveM: { printed: heave, unit: 'mm' } },
      ...EXACT,
    }),
  ),
  ...COVER_TABLE.map(
    ([coverRatio, diameter, heave]): PublishedCheck => ({
      relation: 'surface-heave',
      name: `peak at ${coverRatio} D, ${diameter} mm`,
      given: { diameter: `${diameter} mm`, axisDepth: `${(coverRatio + 0.5) * diameter} mm` },
      expected: { heaveM: { printed: heave, unit: 'mm' } },
      source: 'SecondCalculation',
      standing: 'our judgement',
    }),
  ),
  {
    relation: 'surface-heave',
    name: 'half of the peak at one depth to the side',
    given: { diameter: '100 mm', axisDepth: '1 m', offset: '1 m' },
    expected: { heaveM: { printed: '1.250', unit: 'mm' } },
    ...EXACT,
  },
  {
    relation: 'surface-heave',
    name: 'compressible, 2(1−ν) of the peak',
    given: { diameter: '100 mm', axisDepth: '1 m', poissonRatio: '0.25', volumeFactor: '0.5' },
    expected: { heaveM: { printed: '1.875', unit: 'mm' } },
    ...EXACT,
  },
  {
    relation: 'ground-displacement',
    name: '0.3 m beside the axis',
    given: { diameter: '100 mm', axisDepth: '1 m', offset: '0.3 m', depth: '1 m' },
    expected: {
      horizontalM: { printed: '4.079', unit: 'mm' },
      verticalM: { printed: '-1.1956', unit: 'mm' },
    },
    source: 'SecondCalculation',
    standing: 'our judgement',
  },
  {
    relation: 'ground-displacement',
    name: 'far off at the surface, D²/4 · x/(x² + h²)',
    given: { diameter: '100 mm', axisDepth: '1 m', offset: '100 m', depth: '0 m' },
    expected: { horizontalM: { printed: '0.0249975', unit: 'mm' } },
    ...EXACT,
  },
  {
    relation: 'ground-displacement',
    name: '0.3 m above the axis',
    given: { diameter: '100 mm', axisDepth: '1 m', offset: '0 m', depth: '0.7 m' },
    expected: { verticalM: { printed: '-5.5', unit: 'mm' } },
    source: 'SecondCalculation',
    standing: 'our judgement',
  },
  {
    relation: 'ground-displacement',
    name: 'compressible, to the side and above',
    given: { diameter: '100 mm', axisDepth: '1.05 m', offset: '0.6 m', depth: '0.5 m', poissonRatio: '0.25' },
    expected: {
      horizontalM: { printed: '1.3704', unit: 'mm' },
      verticalM: { printed: '-2.7750', unit: 'mm' },
    },
    source: 'SecondCalculation',
    standing: 'our judgement',
  },
  {
    relation: 'ground-displacement',
    name: 'the surface rises by the heave',
    given: { diameter: '100 mm', axisDepth: '1.05 m', offset: '0 m', depth: '0 m' },
    expected: { horizontalM: { printed: '0.0', unit: 'mm' }, verticalM: { printed: '-2.381', unit: 'mm' } },
    ...EXACT,
  },
  ...PROGRESS.map(
    ([where, station, share]): PublishedCheck => ({
      relation: 'heave-progress',
      name: where,
      given: { diameter: '100 mm', axisDepth: '1.05 m', boreLength: '10 m', station: `${station} m` },
      expected: { share: { printed: share } },
      ...EXACT,
    }),
  ),
  {
    relation: 'heave-progress',
    name: 'a long bore rises as an endless one',
    given: { diameter: '100 mm', axisDepth: '1 m', boreLength: '100 m', station: '50 m' },
    expected: { heaveM: { printed: '2.50', unit: 'mm' }, share: { printed: '1.00' } },
    ...EXACT,
  },
  {
    relation: 'sideways-push',
    name: '75 mm bore, 300 mm from the axis',
    given: { diameter: '75 mm', distance: '300 mm' },
    expected: {
      pushM: {
        printed: '2.33',
        unit: 'mm',
        tolerance: { absolute: 0.01 },
        why: 'worked to 2.335 mm, which may be rounded either way',
      },
    },
    ...EXACT,
  },
  ...CURVATURE.map(
    ([reach, ratio]): PublishedCheck => ({
      relation: 'pipe-curvature-ratio',
      name: `d k0 = ${reach}`,
      given: { distance: '1 m', flexibility: `${reach} 1/m` },
      expected: { ratio: { printed: ratio } },
      source: 'SecondCalculation',
      standing: 'our judgement',
    }),
  ),
]
