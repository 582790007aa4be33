import { relation } from '../relation.ts'

/**
 * Blow energy, recoil and blow rate of a tool at another gauge pressure than the one they were stated for:
 * energy and recoil in proportion to gauge pressure, rate to its square root (constant stroke).
 */
export const toolAtPressure = relation({
  id: 'tool-at-pressure',
  title: 'Blow of a tool at the pressure it gets',
  formula: 'E = E0 p/p0, F = F0 p/p0, f = f0 √(p/p0)',
  sources: ['PenetrationModel'],
  inputs: {
    blowEnergy: {
      kind: 'energy',
      words: 'stated energy of a blow',
      range: { min: 10, max: 600, hardMin: 0 },
    },
    blowRate: { kind: 'frequency', words: 'stated blows per second', range: { min: 3, max: 12, hardMin: 0 } },
    recoil: { kind: 'force', words: 'stated mean recoil', range: { min: 100, max: 5e3, hardMin: 0 } },
    statedPressure: {
      kind: 'gaugePressure',
      words: 'gauge pressure they were stated for',
      range: { min: 4e5, max: 9e5, hardMin: 1e3 },
      default: 6.5e5,
    },
    pressure: {
      kind: 'gaugePressure',
      words: 'gauge pressure at the tool',
      range: { min: 3e5, max: 9e5, hardMin: 0 },
    },
  },
  outputs: {
    energy: { kind: 'energy', words: 'energy of a blow at that pressure' },
    rate: { kind: 'frequency', words: 'blows per second at that pressure' },
    push: { kind: 'force', words: 'mean recoil at that pressure' },
  },
  fn: (given) => {
    const share = given.pressureGaugePa / given.statedPressureGaugePa
    return {
      energyJ: given.blowEnergyJ * share,
      rateHz: given.blowRateHz * Math.sqrt(share),
      pushN: given.recoilN * share,
    }
  },
  checks: ['ground-penetration'],
})
