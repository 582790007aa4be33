import { relation } from '../relation.ts'
import { HEAT_RATIO, SEA_LEVEL_PA } from './dry-air.ts'

/**
 * How cold a tool's exhaust gets.
 *
 * T2 = T1 − x T1 (κ−1)/κ (1 − p0/p1);   T K, p Pa absolute, κ = 1.4, x part of the ideal work of full-pressure filling that is
 * taken out as blows. An energy balance of a tool that fills at full pressure and dumps.
 * Error: x is not known, 0.15 to 0.5: with full expansion, which no tool reaches, it would be far colder. A warning, no forecast.
 */
export const exhaustTemperature = relation({
  id: 'exhaust-temperature',
  title: 'How cold the exhaust gets',
  formula: 'T2 = T1 − x·T1·(κ−1)/κ·(1 − p0/p1)',
  sources: ['AirSecondCalculation', 'OurJudgement'],
  inputs: {
    supply: {
      kind: 'temperature',
      words: 'temperature of the air at the tool',
      range: { min: 233.15, max: 343.15, hardMin: 200, hardMax: 400 },
    },
    pressure: {
      kind: 'gaugePressure',
      words: 'gauge pressure at the tool',
      range: { min: 100_000, max: 1.4e6, hardMin: 0, hardMax: 1e7 },
    },
    workShare: {
      kind: 'ratio',
      words: 'part of the ideal work taken out as blows',
      range: { min: 0.1, max: 0.6, hardMin: 0, hardMax: 1 },
      default: 0.3,
    },
    atmosphere: {
      kind: 'absolutePressure',
      words: 'barometer at the site',
      range: { min: 50_000, max: 107_000, hardMin: 30_000, hardMax: 115_000 },
      default: SEA_LEVEL_PA,
    },
  },
  outputs: { exhaust: { kind: 'temperature', words: 'temperature of the exhaust' } },
  fn: ({ supplyK, pressureGaugePa, workShare, atmospherePa }) => {
    const dropShare = ((HEAT_RATIO - 1) / HEAT_RATIO) * (1 - atmospherePa / (atmospherePa + pressureGaugePa))
    return { exhaustK: supplyK * (1 - workShare * dropShare) }
  },
  checks: ['moist-air'],
  remarks: 'With damp air ice forms from 0 °C down; crews look for it from 40 to 45 °F outside.',
})
