import { relation } from '../relation.ts'
import { GAS_CONSTANT_J_PER_KG_K, HEAT_RATIO, REFERENCE_TEMPERATURE_K } from './dry-air.ts'
import { sitePressureAbsPa } from './standard-atmosphere.ts'

const K = HEAT_RATIO
/** p2/p1 below which the throat runs at the speed of sound: 0.528. */
const CRITICAL_RATIO = (2 / (K + 1)) ** (K / (K - 1))

/** ψ of ṁ = C A ψ p1/√(R T): rises as the back pressure falls, to 0.6847 at the critical ratio. */
function flowFunction(pressureRatio: number): number {
  const ratio = Math.max(pressureRatio, CRITICAL_RATIO)
  return Math.sqrt(((2 * K) / (K - 1)) * (ratio ** (2 / K) - ratio ** ((K + 1) / K)))
}

/**
 * Free air blown off through a hole into the open.
 *
 * Q = C A ψ (p1/p0) √(R T),  ψ² = 2κ/(κ−1) [ r^(2/κ) − r^((κ+1)/κ) ],  r = max(p0/p1, 0.528)
 * Q m³/s of free air at p0 and T, A m², p Pa absolute, T K, κ = 1.4. C: 0.97 rounded edge, 0.65 sharp.
 * Error: 0.8 % against the printed table, which above 15 psi is Moss's formula, 0.3 % under this one.
 */
export const orificeDischarge = relation({
  id: 'orifice-discharge',
  title: 'Air blown off through an orifice',
  formula: 'Q = C·A·ψ·(p1/p0)·√(R·T)',
  sources: ['OrificeTable'],
  inputs: {
    diameter: {
      kind: 'diameter',
      words: 'diameter of the hole',
      range: { min: 0.0003, max: 0.026, hardMin: 0, hardMax: 0.5 },
    },
    pressure: {
      kind: 'gaugePressure',
      words: 'gauge pressure before the hole',
      range: { min: 6000, max: 900_000, hardMin: 0, hardMax: 1e7 },
    },
    coefficient: {
      kind: 'ratio',
      words: 'discharge coefficient',
      range: { min: 0.6, max: 1, hardMin: 0, hardMax: 1 },
      default: 0.97,
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
  },
  outputs: { freeAir: { kind: 'volumeFlow', words: 'free air lost' } },
  fn: ({ diameterM, pressureGaugePa, coefficient, altitudeM, temperatureK }) => {
    const siteAbsPa = sitePressureAbsPa(altitudeM)
    const pressureRatio = siteAbsPa / (siteAbsPa + pressureGaugePa)
    const areaM2 = (Math.PI * diameterM ** 2) / 4
    const soundlikeMPerS = Math.sqrt(GAS_CONSTANT_J_PER_KG_K * temperatureK)
    return {
      freeAirM3PerS: (coefficient * areaM2 * flowFunction(pressureRatio) * soundlikeMPerS) / pressureRatio,
    }
  },
  checks: ['orifice-table'],
  remarks:
    'Default coefficient 0.97 is a hole with a rounded edge; a cut or torn hole passes about two thirds of that.',
})
