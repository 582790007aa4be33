import { relation } from '../relation.ts'
import { SEA_LEVEL_PA } from './dry-air.ts'

/** The formula's own units: pounds per square inch, feet, cubic feet a minute, inches. */
const PSI_PA = 6894.757_293_168_361
const FOOT_M = 0.3048
const INCH_M = 0.0254
const CFM_M3_PER_S = FOOT_M ** 3 / 60
const MINUTE_S = 60

/**
 * Harris's formula for air in iron pipe: a cross-check, not what plans use.
 *
 * Δp = c L q²/(r d⁵),  c = 0.1025 d^−0.31;   Δp psi, L ft, q standard cubic feet a second, r = p/p0, d in
 * Error: 24 % above the schedule 40 table; its friction is that of rough iron of the 1910s. Not for hose.
 */
export const airLossHarris = relation({
  id: 'air-loss-harris',
  title: 'Pressure loss of an air pipe by Harris’s formula',
  formula: 'Δp = 0.1025·L·q²/(r·d^5.31)',
  sources: ['EspositoFluidPower'],
  inputs: {
    bore: {
      kind: 'diameter',
      words: 'inside diameter',
      range: { min: 0.012, max: 0.3, hardMin: 0.002, hardMax: 1 },
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
      range: { min: 0, max: 1.1e6, hardMin: 0, hardMax: 1e7 },
    },
  },
  outputs: { loss: { kind: 'pressureDifference', words: 'pressure lost, by Harris' } },
  fn: ({ boreM, lengthM, freeAirM3PerS, pressureGaugePa }) => {
    const ratio = (SEA_LEVEL_PA + pressureGaugePa) / SEA_LEVEL_PA
    const cubicFeetPerS = freeAirM3PerS / CFM_M3_PER_S / MINUTE_S
    const lossPsi = (0.1025 * (lengthM / FOOT_M) * cubicFeetPerS ** 2) / (ratio * (boreM / INCH_M) ** 5.31)
    return { lossPa: lossPsi * PSI_PA }
  },
  checks: ['air-components'],
  remarks:
    'A quarter more than measured pipe tables give. It is here because many shops still reckon with it.',
})
