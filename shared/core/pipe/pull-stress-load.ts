import { relation } from '../relation.ts'

/** Load that puts a given stress into the wall of a pipe: π·t·(D − t) times the stress, with t = D/DR. */
export const pullStressLoad = relation({
  id: 'pull-stress-load',
  title: 'Load of a pipe at a given stress',
  formula: 'F = stress·π·D²·(1/DR − 1/DR²)',
  sources: ['PpiHandbook', 'PipeArithmetic'],
  inputs: {
    outsideDiameter: {
      kind: 'diameter',
      words: 'outside diameter of the pipe',
      range: { min: 0.002, max: 0.4, hardMin: 0, hardMax: 3 },
    },
    dimensionRatio: {
      kind: 'ratio',
      words: 'outside diameter over wall',
      range: { min: 3, max: 45, hardMin: 2, hardMax: 1000 },
    },
    stress: {
      kind: 'stress',
      words: 'pull stress in the wall',
      range: { min: 0, max: 70e6, hardMin: 0, hardMax: 1e9 },
    },
  },
  outputs: {
    force: { kind: 'force', words: 'load along the pipe' },
    area: { kind: 'area', words: 'area of the wall' },
  },
  fn: ({ outsideDiameterM, dimensionRatio, stressPa }) => {
    const areaM2 = Math.PI * outsideDiameterM ** 2 * (1 / dimensionRatio - 1 / dimensionRatio ** 2)
    return { forceN: stressPa * areaM2, areaM2 }
  },
  checks: ['pull-loads'],
})
