import { relation } from '../relation.ts'
import { dryAirDensityKgPerM3, REFERENCE_TEMPERATURE_K } from './dry-air.ts'
import { HOSE_ROUGHNESS_M, hoseOutlet } from './hose-outlet.ts'
import { sitePressureAbsPa } from './standard-atmosphere.ts'

/**
 * Pressure lost along one hose.
 *
 * p1² − p2² = G² R T [ f L/D + ΣK + 2 ln(p1/p2) ],  G = ρ_a Q / A,  f by Colebrook, K = 1.0 a coupling
 * p Pa absolute, G kg/(s m²), R = 287.05 J/(kg K), T K, L and D m; Q m³/s of free air, measured at the site's own
 * pressure and temperature, with density ρ_a. p1 is the site's barometer plus the gauge pressure given.
 * Error: the friction law reproduces a printed pipe table to 2 %; published figures for one and the same hose span a
 * factor of two, mostly by real bore, wall and couplings.
 *
 * A flow the hose cannot pass even into the open air has no outlet pressure. Then all of the gauge pressure counts as
 * lost, the outlet stands at zero gauge, and `delivery` says choked.
 */
export const hoseFrictionLoss = relation({
  id: 'hose-friction-loss',
  title: 'Pressure loss of an air hose',
  formula: 'p1² − p2² = G²·R·T·[f·L/D + ΣK + 2·ln(p1/p2)]',
  sources: ['CraneTp410', 'Colebrook1939', 'HoseGuide', 'OurJudgement'],
  inputs: {
    bore: {
      kind: 'diameter',
      words: 'inside diameter',
      range: { min: 0.006, max: 0.1, hardMin: 0.002, hardMax: 1 },
    },
    length: {
      kind: 'length',
      words: 'hose length',
      range: { min: 0, max: 500, hardMin: 0, hardMax: 10_000 },
    },
    freeAir: {
      kind: 'volumeFlow',
      words: 'free air at the site, inlet volume',
      range: { min: 0, max: 1, hardMin: 0, hardMax: 100 },
    },
    pressure: {
      kind: 'gaugePressure',
      words: 'gauge pressure at the inlet of the hose',
      range: { min: 0, max: 1e6, hardMin: 0, hardMax: 1e7 },
    },
    altitude: {
      kind: 'altitude',
      words: 'altitude of the site',
      range: { min: -450, max: 5000, hardMin: -1000, hardMax: 9000 },
      default: 0,
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
      range: { min: 0, max: 1e-4, hardMin: 0, hardMax: 5e-4 },
      default: HOSE_ROUGHNESS_M,
    },
    couplings: {
      kind: 'count',
      words: 'couplings, K 1.0 each',
      range: { min: 0, max: 40, hardMin: 0, hardMax: 1000 },
      default: 0,
    },
  },
  outputs: {
    loss: { kind: 'pressureDifference', words: 'pressure lost' },
    outlet: { kind: 'gaugePressure', words: 'gauge pressure at the end' },
    delivery: { choices: ['delivered', 'choked'], words: 'whether the hose passes the flow at all' },
  },
  fn: (given) => {
    const siteAbsPa = sitePressureAbsPa(given.altitudeM)
    const found = hoseOutlet({
      boreM: given.boreM,
      lengthM: given.lengthM,
      roughnessM: given.roughnessM,
      couplings: given.couplings,
      massFlowKgPerS: given.freeAirM3PerS * dryAirDensityKgPerM3(siteAbsPa, given.temperatureK),
      inletAbsPa: siteAbsPa + given.pressureGaugePa,
      temperatureK: given.temperatureK,
    })
    if (!found.ok || found.outletAbsPa < siteAbsPa) {
      return { lossPa: given.pressureGaugePa, outletGaugePa: 0, delivery: 'choked' }
    }
    const outletGaugePa = found.outletAbsPa - siteAbsPa
    return { lossPa: given.pressureGaugePa - outletGaugePa, outletGaugePa, delivery: 'delivered' }
  },
  checks: ['crane-air-examples', 'open-library-air-points', 'air-second-calculation'],
  remarks:
    'Isothermal at the temperature given: the first metres behind a hot outlet lose up to 16 % more. The bore decides: ' +
    '24 mm for 25.4 mm costs 32 %. Wall roughness is from memory; give 0 for the low and 0.046 mm for the high estimate.',
})
