import type { PublishedCheck } from './shape.ts'

/**
 * Free air, cfm, through an orifice of coefficient 1 at 70 °F and 14.7 psia: hole diameters in inches, then psi and a cell a hole.
 * Trailing zeros the copy had dropped are put back.
 */
const DIAMETERS_IN = '1/64 1/32 1/16 1/8 1/4 3/8 1/2 5/8 3/4 7/8 1'.split(' ')
const ROWS = [
  ['1', '0.028 0.112 0.450 1.80 7.18 16.2 28.7 45.0 64.7 88.1 115'],
  ['3', '0.048 0.194 0.775 3.10 12.4 27.8 49.5 77.5 111 152 198'],
  ['4', '0.056 0.223 0.892 3.56 14.3 32.1 57.0 89.2 128 175 228'],
  ['6', '0.068 0.272 1.09 4.34 17.4 39.1 69.5 109 156 213 278'],
  ['7', '0.073 0.293 1.17 4.68 18.7 42.2 75.0 117 168 230 300'],
  ['12', '0.095 0.379 1.52 6.07 24.3 54.6 97.0 152 218 297 388'],
  ['15', '0.105 0.420 1.68 6.72 26.9 60.5 108 168 242 329 430'],
  ['25', '0.140 0.562 2.25 8.98 35.9 80.9 144 225 323 440 575'],
  ['30', '0.158 0.633 2.53 10.1 40.5 91.1 162 253 365 496 648'],
  ['40', '0.194 0.774 3.10 12.4 49.6 112 198 310 446 607 793'],
  ['45', '0.211 0.845 3.38 13.5 54.1 122 216 338 487 662 865'],
  ['60', '0.264 1.06 4.23 16.9 67.6 152 271 423 609 828 1082'],
  ['70', '0.300 1.20 4.79 19.2 76.7 173 307 479 690 939 1227'],
  ['90', '0.370 1.48 5.92 23.7 94.8 213 379 592 853 1161 1516'],
  ['100', '0.406 1.62 6.49 26.0 104 234 415 649 934 1272 1661'],
  ['120', '0.476 1.91 7.62 30.5 122 274 488 762 1097 1494 1951'],
  ['125', '0.494 1.98 7.90 31.6 126 284 506 790 1138 1549 2023'],
] as const

/** Half a thousandth is 1.8 % of the smallest cell: there the rounding decides, elsewhere 0.8 %. */
const toleranceCfm = (printed: string): number => Math.max(0.008 * Number(printed), 0.0005)

export const checks: readonly PublishedCheck[] = ROWS.flatMap(([pressure, cells]) =>
  cells.split(' ').map((printed, hole): PublishedCheck => {
    const diameter = `${DIAMETERS_IN[hole] ?? ''} in`
    return {
      relation: 'orifice-discharge',
      name: `${diameter}, ${pressure} psi`,
      given: { diameter, pressure: `${pressure} psi`, coefficient: '1', temperature: '70 °F' },
      expected: {
        freeAirM3PerS: {
          printed,
          unit: 'cfm',
          tolerance: { absolute: toleranceCfm(printed) },
          why: 'above 15 psi the table is Moss’s rounded formula, 0.3 % under the isentropic one, worked with a slide rule’s three digits',
        },
      },
      source: 'OrificeTable',
      standing: 'published',
    }
  }),
)
