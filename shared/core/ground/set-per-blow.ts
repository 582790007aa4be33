import { relation } from '../relation.ts'

/**
 * Set of one blow, m: what the energy kept in the impact drives the tool forward, less half the elastic give of the soil.
 * s = η E/R − q/2; η efficiency, E energy of the blow, R resistance while driving, q quake. A blow that only springs back gives 0.
 */
export const setPerBlow = relation({
  id: 'set-per-blow',
  title: 'Set per blow',
  formula: 's = max(0, η E/R − q/2)',
  sources: ['Hiley1925', 'PenetrationModel'],
  inputs: {
    blowEnergy: { kind: 'energy', words: 'energy of a blow', range: { min: 10, max: 600, hardMin: 0 } },
    efficiency: {
      kind: 'ratio',
      words: 'share of the energy kept in the impact',
      range: { min: 0.2, max: 1, hardMin: 0, hardMax: 1 },
    },
    resistance: {
      kind: 'force',
      words: 'resistance while driving',
      range: { min: 500, max: 500e3, hardMin: 1e-3 },
    },
    quake: {
      kind: 'movement',
      words: 'elastic give of the soil (quake)',
      range: { min: 0, max: 0.005, hardMin: 0 },
    },
  },
  outputs: { set: { kind: 'movement', words: 'set per blow' } },
  fn: ({ blowEnergyJ, efficiency, resistanceN, quakeM }) => ({
    setM: Math.max(0, (efficiency * blowEnergyJ) / resistanceN - quakeM / 2),
  }),
  checks: ['ground-penetration'],
})
