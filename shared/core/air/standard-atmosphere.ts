import { relation } from '../relation.ts'
import { dryAirDensityKgPerM3, GAS_CONSTANT_J_PER_KG_K, SEA_LEVEL_PA } from './dry-air.ts'

/** r0, m: the radius the standard reduces geometric to geopotential altitude with. */
const EARTH_RADIUS_M = 6_356_766
const SEA_LEVEL_K = 288.15
/** K per geopotential metre. */
const LAPSE_K_PER_M = 0.0065
const GRAVITY_M_PER_S2 = 9.80665
/** g0 / (R L) = 5.2559. */
const PRESSURE_EXPONENT = GRAVITY_M_PER_S2 / (GAS_CONSTANT_J_PER_KG_K * LAPSE_K_PER_M)

/**
 * The standard's lowest layer.
 *
 * h = r0 z / (r0 + z);  T = 288.15 − 0.0065 h;  p = 101325 (T / 288.15)^5.2559;  ρ = p / (R T)
 * z geometric and h geopotential altitude in m, T in K, p in Pa absolute, ρ in kg/m³. Up to h = 11 km.
 * Error: reproduces the printed table to its last digit. A real barometer swings 3 % about it with the weather.
 */
export const standardAtmosphere = relation({
  id: 'standard-atmosphere',
  title: 'Standard atmosphere at an altitude',
  formula: 'h = r0·z/(r0 + z); T = 288.15 − 0.0065·h; p = 101325·(T/288.15)^5.2559; ρ = p/(R·T)',
  sources: ['UsStandardAtmosphere1976', 'UsbrAltitudeTable'],
  inputs: {
    altitude: {
      kind: 'altitude',
      words: 'geometric altitude above sea level',
      range: { min: -450, max: 11_000, hardMin: -5000, hardMax: 11_019 },
    },
  },
  outputs: {
    temperature: { kind: 'temperature', words: 'standard temperature' },
    pressure: { kind: 'absolutePressure', words: 'standard barometric pressure, absolute' },
    density: { kind: 'density', words: 'density of dry air in that state' },
  },
  fn: ({ altitudeM }) => {
    const geopotentialM = (EARTH_RADIUS_M * altitudeM) / (EARTH_RADIUS_M + altitudeM)
    const temperatureK = SEA_LEVEL_K - LAPSE_K_PER_M * geopotentialM
    const pressurePa = SEA_LEVEL_PA * (temperatureK / SEA_LEVEL_K) ** PRESSURE_EXPONENT
    return { temperatureK, pressurePa, densityKgPerM3: dryAirDensityKgPerM3(pressurePa, temperatureK) }
  },
  checks: ['us-standard-atmosphere-1976', 'usbr-altitude-table'],
  remarks:
    'Altitude is geometric, as on a map. Tables by geopotential altitude (ISO 2533) differ by 0.008 % in pressure at 2000 m. ' +
    'The pressure is the barometer used for a site; the standard temperature is not assumed for the air a compressor draws.',
})

/** The barometer of a site, Pa absolute, from its altitude alone. */
export const sitePressureAbsPa = (altitudeM: number): number =>
  standardAtmosphere.fn({ altitudeM }).pressurePa
