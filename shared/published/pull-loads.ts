import type { PublishedCheck } from './shape.ts'

const F1804 = { source: 'AstmF1804', standing: 'second hand' } as const
const COLUMNS = [
  ['pe2708', '1 h'],
  ['pe2708', '12 h'],
  ['pe2708', '24 h'],
  ['pe3608', '1 h'],
  ['pe4710', '1 h'],
  ['pe4710', '12 h'],
] as const

/** Pipe, outside diameter in inches, ratio, wall area in square inches, loads in pounds by column, MDPE 1 h in newtons. */
const WORKED = [
  ['1/2 CTS 0.090', '0.625', '6.9444444', '0.1513', [157, 149, 143, 194, 212, 201], '700'],
  ['1 CTS 0.099', '1.125', '11.3636364', '0.3191', [332, 315, 302, 408, 447, 424], '1476'],
  ['3/4 IPS DR 11', '1.05', '11', '0.2862', [298, 283, 271, 366, 401, 381], '1324'],
  ['1 IPS DR 11', '1.315', '11', '0.4490', [467, 444, 425, 575, 629, 597], '2077'],
  ['1-1/4 IPS DR 10', '1.66', '10', '0.7791', [810, 770, 737, 997, 1091, 1036], '3604'],
  ['2 IPS DR 11', '2.375', '11', '1.4645', [1523, 1447, 1386, 1875, 2050, 1948], '6775'],
  ['3 IPS DR 11.5', '3.5', '11.5', '3.0555', [3178, 3019, 2892, 3911, 4278, 4064], '14135'],
  ['4 IPS DR 11.5', '4.5', '11.5', '5.0509', [5253, 4990, 4780, 6465, 7071, 6718], '23366'],
  ['6 IPS DR 11.5', '6.625', '11.5', '10.9475', [11385, 10816, 10361, 14013, 15327, 14560], '50645'],
] as const

/** Published 12 h loads of duct on a basis of 1,100 psi: size, outside diameter, ratio, pounds. */
const DUCT = [
  ['1-1/4 in SDR 11', '1.66', '11', '787'],
  ['1-1/2 in SDR 11', '1.9', '11', '1030'],
  ['2 in SDR 9', '2.375', '9', '1924'],
  ['2 in SDR 11', '2.375', '11', '1610'],
  ['2 in SDR 13.5', '2.375', '13.5', '1336'],
  ['3 in SDR 11', '3.5', '11', '3497'],
  ['4 in SDR 9', '4.5', '9', '6908'],
  ['4 in SDR 13.5', '4.5', '13.5', '4797'],
  ['6 in SDR 11', '6.625', '11', '12529'],
] as const

/** Metric pipe at 1,330 psi: diameter and wall in millimetres, newtons. */
const METRIC = [
  [25, 2.3, '1504'],
  [32, 3, '2506'],
  [63, 5.8, '9558'],
  [110, 6.6, '19660'],
] as const

export const checks: readonly PublishedCheck[] = [
  ...WORKED.flatMap(([pipe, od, dimensionRatio, area, loads, newtons]): PublishedCheck[] => [
    ...COLUMNS.map(
      ([material, duration], column): PublishedCheck => ({
        relation: 'pull-in-limit',
        name: `${pipe}, ${material}, ${duration}`,
        given: { outsideDiameter: `${od} in`, dimensionRatio, material, duration },
        expected: { forceN: { printed: String(loads[column]), unit: 'lbf' } },
        ...F1804,
      }),
    ),
    {
      relation: 'pull-in-limit',
      name: `${pipe}, pe2708, 1 h, in newtons`,
      given: { outsideDiameter: `${od} in`, dimensionRatio, material: 'pe2708', duration: '1 h' },
      expected: { forceN: { printed: newtons, unit: 'N' } },
      ...F1804,
    },
    {
      relation: 'pull-stress-load',
      name: `${pipe}, wall area`,
      given: { outsideDiameter: `${od} in`, dimensionRatio, stress: '1040 psi' },
      expected: {
        areaM2: { printed: area, unit: 'in2' },
        forceN: { printed: String(loads[0]), unit: 'lbf' },
      },
      ...F1804,
    },
  ]),
  ...DUCT.map(
    ([size, od, dimensionRatio, pounds]): PublishedCheck => ({
      relation: 'pull-stress-load',
      name: `${size} duct, 12 h, 1,100 psi`,
      given: { outsideDiameter: `${od} in`, dimensionRatio, stress: '1100 psi' },
      expected: {
        forceN: {
          printed: pounds,
          unit: 'lbf',
          tolerance: { fraction: 0.001 },
          why: 'the table was worked from walls rounded to a thousandth of an inch',
        },
      },
      source: 'DuctPullLoads',
      standing: 'second hand',
    }),
  ),
  ...METRIC.map(
    ([diameterMm, wallMm, newtons]): PublishedCheck => ({
      relation: 'pull-stress-load',
      name: `${diameterMm} × ${wallMm.toFixed(1)} mm at 1,330 psi`,
      given: {
        outsideDiameter: `${diameterMm} mm`,
        dimensionRatio: (diameterMm / wallMm).toFixed(7),
        stress: '1330 psi',
      },
      expected: {
        forceN: {
          printed: newtons,
          unit: 'N',
          ...(newtons === '19660' ? { tolerance: { absolute: 5 }, why: 'printed to the nearest ten' } : {}),
        },
      },
      source: 'PipeArithmetic',
      standing: 'our judgement',
    }),
  ),
  {
    relation: 'pull-stress-load',
    name: '12 in DR 17 at 1,150 psi, textbook',
    given: { outsideDiameter: '12.75 in', dimensionRatio: '17', stress: '1150 psi' },
    expected: {
      forceN: {
        printed: '32500',
        unit: 'lbf',
        tolerance: { absolute: 50 },
        why: 'printed to the nearest hundred',
      },
    },
    source: 'Najafi2010',
    standing: 'second hand',
  },
  {
    relation: 'pull-stress-load',
    name: '4 in DR 11 at 1,350 psi, textbook, 6 % high',
    given: { outsideDiameter: '4.5 in', dimensionRatio: '11', stress: '1350 psi' },
    expected: { forceN: { printed: '7524', unit: 'lbf' } },
    source: 'Najafi2010',
    standing: 'second hand',
    knownWrong: true,
  },
  {
    relation: 'pull-stress-load',
    name: '2 in SDR 13.5 duct at 1,100 psi, nearly double',
    given: { outsideDiameter: '2.375 in', dimensionRatio: '13.5', stress: '1100 psi' },
    expected: { forceN: { printed: '2580', unit: 'lbf' } },
    source: 'DuctPullLoadsHigh',
    standing: 'second hand',
    knownWrong: true,
  },
]
