import { relation } from '../relation.ts'

/** How much a pipe grows (or, for a negative difference, shortens) when its temperature changes. */
export const thermalLengthChange = relation({
  id: 'thermal-length-change',
  title: 'Change of length with temperature',
  formula: 'ΔL = α·L·ΔT',
  sources: ['PolyethyleneExpansion'],
  inputs: {
    length: {
      kind: 'length',
      words: 'length of the pipe',
      range: { min: 0, max: 300, hardMin: 0, hardMax: 1e5 },
    },
    temperatureDifference: {
      kind: 'temperatureDifference',
      words: 'change of its temperature; negative when it cools',
      range: { min: -60, max: 60, hardMin: -400, hardMax: 2000 },
    },
    expansion: {
      kind: 'expansion',
      words: 'expansion of the material; polyethylene about 9e-5 per °F',
      range: { min: 1e-6, max: 2.2e-4, hardMin: 0, hardMax: 0.01 },
    },
  },
  outputs: { change: { kind: 'movement', words: 'change of length' } },
  fn: ({ lengthM, temperatureDifferenceK, expansionPerK }) => ({
    changeM: expansionPerK * lengthM * temperatureDifferenceK,
  }),
  checks: ['pipe-handling'],
  remarks:
    'Sources for polyethylene run from 8e-5 to 1.2e-4 per °F. Pulled pipe also springs back overnight.',
})
