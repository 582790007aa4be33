import { relation } from '../relation.ts'
import { dryAirDensityKgPerM3, REFERENCE_TEMPERATURE_K, SEA_LEVEL_PA } from './dry-air.ts'
import { sitePressureAbsPa } from './standard-atmosphere.ts'

/**
 * Density of the air at a site over that at sea level and 20 °C: what a machine with a fixed inlet volume keeps of its
 * mass flow.
 *
 * ratio = [p(z)/p0] · [T0/T],  p(z) standard barometer, p0 = 101325 Pa, T0 = 293.15 K
 * Error: 0.1 % in the altitude part against print; dry air, where 35 °C and 80 % humidity take another 2 %.
 */
export const airDensityRatio = relation({
  id: 'air-density-ratio',
  title: 'Air density at a site',
  formula: 'ratio = (p(z)/p0)·(T0/T)',
  sources: ['UsStandardAtmosphere1976', 'UsbrAltitudeTable', 'TemperatureAltitudeRow'],
  inputs: {
    altitude: {
      kind: 'altitude',
      words: 'altitude of the site',
      range: { min: -450, max: 5000, hardMin: -1000, hardMax: 9000 },
    },
    temperature: {
      kind: 'temperature',
      words: 'air temperature',
      range: { min: 233.15, max: 328.15, hardMin: 200, hardMax: 400 },
    },
  },
  outputs: { ratio: { kind: 'ratio', words: 'density over that at sea level and 20 °C' } },
  fn: ({ altitudeM, temperatureK }) => ({
    ratio:
      dryAirDensityKgPerM3(sitePressureAbsPa(altitudeM), temperatureK) /
      dryAirDensityKgPerM3(SEA_LEVEL_PA, REFERENCE_TEMPERATURE_K),
  }),
  checks: ['usbr-altitude-table', 'temperature-altitude-row', 'air-second-calculation'],
})
