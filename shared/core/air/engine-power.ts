import { relation } from '../relation.ts'

export const ENGINES = ['aspirated', 'turbo'] as const

/** Part of the power lost per metre: 3 % per 1000 ft. */
const LOST_PER_M = 0.03 / 304.8
/** Where the loss begins: 500 ft. */
const LOSS_FROM_M = 152.4

/**
 * What a diesel engine keeps of its power at altitude.
 *
 * P = P_r [1 − 0.03 (z − 500 ft)/1000 ft]  naturally aspirated;  P = P_r  with a turbo, up to its rated altitude
 * P W, z m. Error: a rule of thumb, 2–3 % of power to 10 000 ft; never below zero.
 */
export const enginePower = relation({
  id: 'engine-power',
  title: 'Engine power at altitude',
  formula: 'P = P_r·[1 − 0.03·(z − 500 ft)/1000 ft] without a turbo',
  sources: ['EngineDerateRule'],
  inputs: {
    ratedPower: {
      kind: 'power',
      words: 'rated power',
      range: { min: 5000, max: 500_000, hardMin: 0, hardMax: 1e8 },
    },
    altitude: {
      kind: 'altitude',
      words: 'altitude of the site',
      range: { min: -450, max: 3657.6, hardMin: -1000, hardMax: 9000 },
    },
    engine: { choices: ENGINES, words: 'how the engine breathes', default: 'aspirated' },
  },
  outputs: { power: { kind: 'power', words: 'power it has there' } },
  fn: ({ ratedPowerW, altitudeM, engine }) => {
    const lost = engine === 'turbo' ? 0 : LOST_PER_M * Math.max(0, altitudeM - LOSS_FROM_M)
    return { powerW: ratedPowerW * Math.max(0, 1 - lost) }
  },
  checks: ['engine-and-power'],
  remarks: 'A turbo holds its power to the altitude it is rated for, which is on the engine’s plate.',
})
