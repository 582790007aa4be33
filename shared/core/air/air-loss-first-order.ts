import { relation } from '../relation.ts'
import { dryAirDensityKgPerM3, REFERENCE_TEMPERATURE_K, SEA_LEVEL_PA } from './dry-air.ts'
import { firstOrderLossPa } from './hose-outlet.ts'

/** ε, m: commercial steel pipe, 0.0018 in, as Crane has it. */
const STEEL_ROUGHNESS_M = 4.572e-5

/**
 * Loss by Darcy's formula with the density at the inlet, the form printed pipe tables are made with.
 *
 * Δp = f (L/D) ρ1 v1²/2
 * Δp Pa, L and D m, ρ1 kg/m³ and v1 m/s at the inlet; free air at sea level and the given temperature.
 * Error: within 2 % of the printed schedule 40 table; against the full isothermal form 1 % low at a loss of 2 % of the
 * absolute pressure, 6 % low at 10 %. Above that it is no real end-to-end loss.
 */
export const airLossFirstOrder = relation({
  id: 'air-loss-first-order',
  title: 'Pressure loss of an air pipe, first order',
  formula: 'Δp = f·(L/D)·ρ1·v1²/2',
  sources: ['CraneTp410', 'Colebrook1939'],
  inputs: {
    bore: {
      kind: 'diameter',
      words: 'inside diameter',
      range: { min: 0.006, max: 0.3, hardMin: 0.002, hardMax: 1 },
    },
    length: {
      kind: 'length',
      words: 'pipe length',
      range: { min: 0, max: 1000, hardMin: 0, hardMax: 10_000 },
    },
    freeAir: {
      kind: 'volumeFlow',
      words: 'free air at sea level',
      range: { min: 0, max: 1, hardMin: 0, hardMax: 100 },
    },
    pressure: {
      kind: 'gaugePressure',
      words: 'gauge pressure at the inlet',
      range: { min: 0, max: 1e6, hardMin: 0, hardMax: 1e7 },
    },
    temperature: {
      kind: 'temperature',
      words: 'air temperature',
      range: { min: 233.15, max: 343.15, hardMin: 200, hardMax: 400 },
      default: REFERENCE_TEMPERATURE_K,
    },
    roughness: {
      kind: 'movement',
      words: 'roughness of the inside wall',
      range: { min: 0, max: 3e-4, hardMin: 0, hardMax: 5e-4 },
      default: STEEL_ROUGHNESS_M,
    },
  },
  outputs: { loss: { kind: 'pressureDifference', words: 'pressure lost, first order' } },
  fn: ({ boreM, lengthM, freeAirM3PerS, pressureGaugePa, temperatureK, roughnessM }) => ({
    lossPa: firstOrderLossPa({
      boreM,
      lengthM,
      roughnessM,
      couplings: 0,
      massFlowKgPerS: freeAirM3PerS * dryAirDensityKgPerM3(SEA_LEVEL_PA, temperatureK),
      inletAbsPa: SEA_LEVEL_PA + pressureGaugePa,
      temperatureK,
    }),
  }),
  checks: ['schedule-40-air-table'],
  remarks: 'A cross-check against printed tables; plans use the isothermal form of hose-friction-loss.',
})
