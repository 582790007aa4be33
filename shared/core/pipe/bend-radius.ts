import { relation } from '../relation.ts'

/** Least radius over outside diameter, by the largest dimension ratio it holds for: cold bend of polyethylene. */
const MULTIPLES = [
  { upTo: 9, multiple: 20 },
  { upTo: 13.5, multiple: 25 },
  { upTo: 21, multiple: 27 },
  { upTo: 26, multiple: 34 },
  { upTo: 32.5, multiple: 42 },
  { upTo: 41, multiple: 52 },
] as const
const THINNEST = 52

/** Least bend radius of polyethylene pipe. Between two printed ratios the larger radius is taken. A joint in the bend: 100 times. */
export const bendRadius = relation({
  id: 'bend-radius',
  title: 'Least bend radius',
  formula: 'R = k(DR)·D, k = 20 to DR 9, 25 to 13.5, 27 to 21, 34 to 26, 42 to 32.5, 52 to 41',
  sources: ['PpiHandbook'],
  inputs: {
    outsideDiameter: {
      kind: 'diameter',
      words: 'outside diameter of the pipe',
      range: { min: 0.01, max: 0.4, hardMin: 0, hardMax: 3 },
    },
    dimensionRatio: {
      kind: 'ratio',
      words: 'outside diameter over wall',
      range: { min: 7, max: 41, hardMin: 2, hardMax: 200 },
    },
  },
  outputs: { radius: { kind: 'length', words: 'radius not to bend under' } },
  fn: ({ outsideDiameterM, dimensionRatio }) => ({
    radiusM: (MULTIPLES.find((row) => dimensionRatio <= row.upTo)?.multiple ?? THINNEST) * outsideDiameterM,
  }),
  checks: ['pipe-handling'],
  remarks: 'For polyethylene. PEX about 8, microduct 10 to 12 times the diameter.',
})
