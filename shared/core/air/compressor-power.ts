import { relation } from '../relation.ts'
import { HEAT_RATIO, SEA_LEVEL_PA } from './dry-air.ts'

const EXPONENT = (HEAT_RATIO - 1) / HEAT_RATIO

/** P = p_a V̇ κ/(κ−1) [(p2/p_a)^((κ−1)/κ) − 1]: the least work that compresses a stream without cooling it. */
export const isentropicPowerW = (inletAbsPa: number, outletAbsPa: number, inletM3PerS: number): number =>
  ((inletAbsPa * inletM3PerS) / EXPONENT) * ((outletAbsPa / inletAbsPa) ** EXPONENT - 1)

/**
 * Power a compressor takes.
 *
 * P = p_a V̇ κ/(κ−1) [(p2/p_a)^((κ−1)/κ) − 1] / η
 * P W, p Pa absolute, V̇ m³/s inlet volume, κ = 1.4, η overall efficiency against the isentropic.
 * Error: exact for an ideal gas; η of oil-flooded portables 0.66–0.71 is from a regression on stationary packages.
 */
export const compressorPower = relation({
  id: 'compressor-power',
  title: 'Power a compressor takes',
  formula: 'P = p_a·V̇·κ/(κ−1)·[(p2/p_a)^((κ−1)/κ) − 1]/η',
  sources: ['EspositoFluidPower', 'Cfr431'],
  inputs: {
    freeAir: {
      kind: 'volumeFlow',
      words: 'free air, inlet volume',
      range: { min: 0, max: 1, hardMin: 0, hardMax: 100 },
    },
    pressure: {
      kind: 'gaugePressure',
      words: 'gauge pressure delivered',
      range: { min: 0, max: 1.4e6, hardMin: 0, hardMax: 1e7 },
    },
    efficiency: {
      kind: 'ratio',
      words: 'efficiency against the isentropic',
      range: { min: 0.5, max: 1, hardMin: 0.05, hardMax: 1 },
      default: 0.7,
    },
    atmosphere: {
      kind: 'absolutePressure',
      words: 'barometer at the site',
      range: { min: 50_000, max: 107_000, hardMin: 30_000, hardMax: 115_000 },
      default: SEA_LEVEL_PA,
    },
  },
  outputs: { power: { kind: 'power', words: 'power at the shaft' } },
  fn: ({ freeAirM3PerS, pressureGaugePa, efficiency, atmospherePa }) => ({
    powerW: isentropicPowerW(atmospherePa, atmospherePa + pressureGaugePa, freeAirM3PerS) / efficiency,
  }),
  checks: ['engine-and-power'],
})
