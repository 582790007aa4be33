import { relation } from '../relation.ts'
import { GAS_CONSTANT_J_PER_KG_K, SEA_LEVEL_PA } from './dry-air.ts'
import { humidityRatio, saturationPressurePa } from './saturated-vapour.ts'

/** Dry part of the air drawn in, kg/m³ of inlet volume. */
export const dryPartKgPerM3 = (
  pressureAbsPa: number,
  temperatureK: number,
  relativeHumidity: number,
): number =>
  (pressureAbsPa - relativeHumidity * saturationPressurePa(temperatureK)) /
  (GAS_CONSTANT_J_PER_KG_K * temperatureK)

/**
 * Water that falls out of compressed air.
 *
 * ṁ_w = ṁ_dry [ w(p_a, T_a, φ) − w(p_a + p_g, T_a + ΔT, 1) ], not below zero;  w = 0.621945 φ p_ws/(p − φ p_ws)
 * ṁ kg/s, p Pa, T K, φ relative humidity of the air drawn in; ΔT by how much the air leaves the machine warmer than the
 * air outside. With ΔT = 0 it is all that falls out down to the tool; the rest goes to the tool as vapour.
 * Error: that of the humidity given; vapour as an ideal gas, 0.05 %.
 */
export const condensateRate = relation({
  id: 'condensate-rate',
  title: 'Water that falls out of compressed air',
  formula: 'ṁ_w = ṁ_dry·[w(p_a, T_a, φ) − w(p_a + p_g, T_a + ΔT, 1)]',
  sources: ['AshraeFundamentals', 'EspositoFluidPower'],
  inputs: {
    freeAir: {
      kind: 'volumeFlow',
      words: 'free air drawn in, inlet volume',
      range: { min: 0, max: 1, hardMin: 0, hardMax: 100 },
    },
    pressure: {
      kind: 'gaugePressure',
      words: 'gauge pressure of the compressed air',
      range: { min: 0, max: 1.4e6, hardMin: 0, hardMax: 1e7 },
    },
    temperature: {
      kind: 'temperature',
      words: 'temperature of the air drawn in',
      range: { min: 233.15, max: 328.15, hardMin: 200, hardMax: 373 },
    },
    relativeHumidity: {
      kind: 'ratio',
      words: 'relative humidity of the air drawn in',
      range: { min: 0, max: 1, hardMin: 0, hardMax: 1 },
    },
    outletRise: {
      kind: 'temperatureDifference',
      words: 'compressed air over the air outside',
      range: { min: 0, max: 100, hardMin: 0, hardMax: 150 },
      default: 10,
    },
    atmosphere: {
      kind: 'absolutePressure',
      words: 'barometer at the site',
      range: { min: 50_000, max: 107_000, hardMin: 30_000, hardMax: 115_000 },
      default: SEA_LEVEL_PA,
    },
  },
  outputs: { rate: { kind: 'massFlow', words: 'water that falls out' } },
  fn: ({ freeAirM3PerS, pressureGaugePa, temperatureK, relativeHumidity, outletRiseK, atmospherePa }) => {
    const drawnIn = humidityRatio(atmospherePa, temperatureK, relativeHumidity)
    const held = humidityRatio(atmospherePa + pressureGaugePa, temperatureK + outletRiseK, 1)
    const dryKgPerS = freeAirM3PerS * dryPartKgPerM3(atmospherePa, temperatureK, relativeHumidity)
    return { rateKgPerS: dryKgPerS * Math.max(0, drawnIn - held) }
  },
  checks: ['moist-air'],
  remarks:
    'A portable without an aftercooler sends it all down the hose; a separator takes out what falls before it.',
})
