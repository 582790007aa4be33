import { relation } from '../relation.ts'
import { componentOutlet, REFERENCE_DENSITY_KG_PER_M3 } from './component-outlet.ts'
import { REFERENCE_TEMPERATURE_K, SEA_LEVEL_PA } from './dry-air.ts'

/**
 * Pressure lost in an oiler, separator or valve.
 *
 * ṁ = C p1 ρ0 √(T0/T) ω,  ω = √(1 − ((r − b)/(1 − b))²),  r = p2/p1;  choked at ω = 1
 * C m³/(s Pa), p Pa absolute, ρ0 = 1.185 kg/m³, T0 = 293.15 K; free air of that reference state (ANR).
 * Error: that of C and b. A flow past the choke has no outlet pressure: all of it counts as lost, `delivery` says choked.
 */
export const componentLoss = relation({
  id: 'component-loss',
  title: 'Pressure loss of an oiler, separator or valve',
  formula: 'ṁ = C·p1·ρ0·√(T0/T)·√(1 − ((p2/p1 − b)/(1 − b))²)',
  sources: ['Iso6358'],
  inputs: {
    conductance: {
      kind: 'conductance',
      words: 'sonic conductance C',
      range: { min: 1e-9, max: 1e-5, hardMin: 1e-12, hardMax: 1e-2 },
    },
    criticalRatio: {
      kind: 'ratio',
      words: 'critical pressure ratio b',
      range: { min: 0, max: 0.6, hardMin: 0, hardMax: 0.99 },
    },
    freeAir: {
      kind: 'volumeFlow',
      words: 'free air, 20 °C and 100 kPa',
      range: { min: 0, max: 1, hardMin: 0, hardMax: 100 },
    },
    pressure: {
      kind: 'gaugePressure',
      words: 'gauge pressure before it',
      range: { min: 0, max: 1.4e6, hardMin: 0, hardMax: 1e7 },
    },
    temperature: {
      kind: 'temperature',
      words: 'air temperature',
      range: { min: 233.15, max: 343.15, hardMin: 200, hardMax: 400 },
      default: REFERENCE_TEMPERATURE_K,
    },
  },
  outputs: {
    loss: { kind: 'pressureDifference', words: 'pressure lost' },
    choked: { kind: 'massFlow', words: 'most it can pass at that pressure' },
    delivery: { choices: ['delivered', 'choked'], words: 'whether it passes the flow at all' },
  },
  fn: ({ conductanceM3PerSPa, criticalRatio, freeAirM3PerS, pressureGaugePa, temperatureK }) => {
    const inletAbsPa = SEA_LEVEL_PA + pressureGaugePa
    const atReference = REFERENCE_DENSITY_KG_PER_M3 * Math.sqrt(REFERENCE_TEMPERATURE_K / temperatureK)
    const chokedKgPerS = conductanceM3PerSPa * inletAbsPa * atReference
    const massFlowKgPerS = freeAirM3PerS * REFERENCE_DENSITY_KG_PER_M3
    const found = componentOutlet(
      { conductanceM3PerSPa, criticalRatio },
      { massFlowKgPerS, inletAbsPa, temperatureK },
    )
    if (!found.ok) return { lossPa: pressureGaugePa, chokedKgPerS, delivery: 'choked' }
    return { lossPa: inletAbsPa - found.outletAbsPa, chokedKgPerS, delivery: 'delivered' }
  },
  checks: ['air-components'],
})
