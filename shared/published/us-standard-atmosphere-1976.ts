import type { SourceKey } from '../sources.ts'
import type { PublishedCheck } from './shape.ts'

/**
 * U.S. Standard Atmosphere 1976, metric, by GEOMETRIC altitude.
 * Columns: altitude [m], temperature [K], pressure [Pa], density [kg/m³].
 */
const READ = [
  ['0', '288.15', '101325', '1.225'],
  ['2000', '275.154', '79501', '1.0066'],
  ['4000', '262.17', '61660', '0.81935'],
  ['6000', '249.19', '47218', '0.66011'],
  ['8000', '236.22', '35652', '0.52579'],
  ['10000', '223.25', '26500', '0.41351'],
] as const
const RECALLED = [
  ['500', '284.900', '95461', '1.1673'],
  ['1000', '281.651', '89876', '1.1117'],
  ['1500', '278.402', '84559', '1.0581'],
  ['3000', '268.659', '70121', '0.90925'],
] as const

/** 84559 stands for 84559.68 at 1500 m. */
const RECALLED_PRESSURE = {
  tolerance: { absolute: 1 },
  why: 'from memory, where the last digit may have been cut off instead of rounded',
} as const

type Row = (typeof READ)[number] | (typeof RECALLED)[number]

const check =
  (source: SourceKey, standing: PublishedCheck['standing']) =>
  ([altitude, temperature, pressure, density]: Row): PublishedCheck => {
    const looser = source === 'UsStandardAtmosphere1976Recalled' ? RECALLED_PRESSURE : {}
    return {
      relation: 'standard-atmosphere',
      name: `${altitude} m`,
      given: { altitude: `${altitude} m` },
      expected: {
        temperatureK: { printed: temperature, unit: 'K' },
        pressurePa: { printed: pressure, unit: 'Pa', ...looser },
        densityKgPerM3: { printed: density, unit: 'kg/m3' },
      },
      source,
      standing,
    }
  }

export const checks: readonly PublishedCheck[] = [
  ...READ.map(check('UsStandardAtmosphere1976', 'published')),
  ...RECALLED.map(check('UsStandardAtmosphere1976Recalled', 'second hand')),
]
