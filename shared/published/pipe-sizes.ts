import type { PublishedCheck } from './shape.ts'

const read = (source: PublishedCheck['source']) => ({ source, standing: 'second hand' }) as const

/** System, size, wall named, outside diameter, wall, both as printed; '' where the print gives none. */
const INCHES = [
  ['hdpe-ips', '1/2', '11', '0.840', '', 'AstmD3035'],
  ['hdpe-ips', '3/4', '11', '1.050', '', 'AstmD3035'],
  ['hdpe-ips', '1', '11', '1.315', '', 'AstmD3035'],
  ['hdpe-ips', '1-1/4', '11', '1.660', '', 'AstmD3035'],
  ['hdpe-ips', '1-1/2', '11', '1.900', '', 'AstmD3035'],
  ['hdpe-ips', '2', 'DR 11', '2.375', '0.216', 'AstmD3035'],
  ['hdpe-ips', '4', 'DR 11', '4.500', '0.409', 'AstmD3035'],
  ['pe-cts', '3/4', '9', '0.875', '', 'AstmD2737'],
  ['pe-cts', '1', 'SDR 9', '1.125', '0.125', 'AstmD2737'],
  ['pe-cts', '2', '9', '2.125', '', 'AstmD2737'],
  ['pe-dips', '3', '11', '3.96', '', 'AwwaC906'],
  ['pe-dips', '4', '11', '4.80', '', 'AwwaC906'],
  ['pe-dips', '6', '11', '6.90', '', 'AwwaC906'],
  ['pe-dips', '8', '11', '9.05', '', 'AwwaC906'],
  ['hdpe-conduit', '1', 'SDR 13.5', '1.315', '0.097', 'AstmF2160'],
  ['hdpe-conduit', '2', 'SDR 13.5', '2.375', '0.176', 'AstmF2160'],
  ['hdpe-conduit', '3', 'SDR 13.5', '3.500', '0.259', 'AstmF2160'],
  ['pe-gas', '1/2 CTS', '', '', '0.090', 'AstmD2513'],
  ['pe-gas', '1 CTS', '', '', '0.099', 'AstmD2513'],
  ['pex-cts', '1/2', '9', '', '0.070', 'AstmF876'],
  ['pex-cts', '3/4', '9', '', '0.097', 'AstmF876'],
  ['pex-cts', '1', '9', '', '0.125', 'AstmF876'],
  ['copper-b88', '3/4', 'K', '', '0.065', 'AstmB88'],
  ['copper-b88', '3/4', 'L', '', '0.045', 'AstmB88'],
  ['copper-b88', '1', 'K', '', '0.065', 'AstmB88'],
  ['copper-b88', '1', 'L', '', '0.050', 'AstmB88'],
  ['copper-b88', '2', 'K', '', '0.083', 'AstmB88'],
  ['copper-b88', '2', 'L', '', '0.070', 'AstmB88'],
  ['pvc-pressure', '2', 'SCH 40', '2.375', '0.154', 'AstmD1785'],
  ['pvc-pressure', '2', 'SCH 80', '2.375', '0.218', 'AstmD1785'],
  ['pvc-pressure', '4', 'SCH 40', '4.500', '0.237', 'AstmD1785'],
  ['pvc-pressure', '4', 'SCH 80', '4.500', '0.337', 'AstmD1785'],
  ['pvc-pressure', '6', 'SCH 40', '6.625', '', 'AstmD1785'],
  ['metal-conduit', '1/2', 'EMT', '0.706', '0.042', 'SteelConduit'],
  ['metal-conduit', '1', 'EMT', '1.163', '0.057', 'SteelConduit'],
  ['metal-conduit', '2', 'EMT', '2.197', '0.065', 'SteelConduit'],
  ['metal-conduit', '2-1/2', 'EMT', '2.875', '', 'SteelConduit'],
  ['metal-conduit', '1', 'IMC', '1.290', '', 'SteelConduit'],
  ['pvc-sewer', '4', 'SDR 35', '4.215', '0.120', 'AstmD3034'],
  ['pvc-sewer', '6', 'SDR 35', '6.275', '0.180', 'AstmD3034'],
] as const

const MILLIMETRES = [
  ['pe-iso', '63', 'SDR 9', '63.0', '7.1', 'Iso4427'],
  ['pe-iso', '110', 'SDR 17', '110.0', '6.6', 'Iso4427'],
  ['pe-iso', '160', 'SDR 6', '160.0', '26.6', 'Iso4427'],
  ['pe-iso', '180', 'SDR 9', '180.0', '20.1', 'Iso4427'],
  ['pe-iso', '25', 'SDR 11', '25.0', '2.3', 'Iso4427'],
  ['microduct', '14/10', '', '14', '2.0', 'En50411'],
] as const

/** Walls met in print that are wrong for the standard they name. */
const WRONG = [
  ['copper-b88', '3/4', 'K', '0.045', 'in', 'type L printed as K'],
  ['copper-b88', '1', 'K', '0.050', 'in', 'type L printed as K'],
  ['pe-iso', '160 mm', 'SDR 6', '26.5', 'mm', 'misprint'],
  ['pe-iso', '180 mm', 'SDR 9', '20.6', 'mm', 'misprint'],
  ['pe-iso', '110 mm', 'SDR 17', '6.47', 'mm', 'diameter over ratio'],
  ['pe-iso', '63 mm', 'SDR 9', '7.00', 'mm', 'diameter over ratio'],
  ['metal-conduit', '2-1/2', 'EMT', '0.203', 'in', 'bore of rigid conduit, 2.469 in, printed for EMT'],
] as const

const exact = (printed: string, unit: string) => ({
  printed,
  unit,
  ...(printed.includes('.')
    ? {}
    : { tolerance: { absolute: 0.05 }, why: 'the size is its outside diameter' }),
})

const sized =
  (unit: 'in' | 'mm') =>
  ([system, size, sdr, od, wall, source]:
    | (typeof INCHES)[number]
    | (typeof MILLIMETRES)[number]): PublishedCheck => ({
    relation: 'pipe-size',
    name: `${system} ${size} ${sdr}`.trim(),
    given: { system, size: size.includes('TS') || size.includes('/10') ? size : `${size} ${unit}`, sdr },
    expected: {
      ...(od === '' ? {} : { outsideDiameterM: exact(od, unit) }),
      ...(wall === '' ? {} : { wallM: exact(wall, unit) }),
    },
    ...read(source),
  })

export const checks: readonly PublishedCheck[] = [
  ...INCHES.map(sized('in')),
  ...MILLIMETRES.map(sized('mm')),
  ...WRONG.map(
    ([system, size, sdr, wall, unit, what]): PublishedCheck => ({
      relation: 'pipe-size',
      name: `${system} ${size} ${sdr}: ${what}`,
      given: { system, size, sdr },
      expected: {
        wallM: { printed: wall, unit },
      },
      ...read('PipeMisprints'),
      knownWrong: true,
    }),
  ),
]
