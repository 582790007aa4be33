import { relation } from '../relation.ts'

/** Room between a bore and the pipe in it: what grout must fill, or what may settle under a road. */
export const annulusVolume = relation({
  id: 'annulus-volume',
  title: 'Room round the pipe',
  formula: 'A = π/4·(B² − D²); V = A·L',
  sources: ['PipeArithmetic'],
  inputs: {
    bore: {
      kind: 'diameter',
      words: 'diameter of the bore',
      range: { min: 0.03, max: 0.3, hardMin: 0, hardMax: 3 },
    },
    pipe: {
      kind: 'diameter',
      words: 'outside diameter of the pipe',
      range: { min: 0, max: 0.3, hardMin: 0, hardMax: 3 },
    },
    length: {
      kind: 'length',
      words: 'length of the bore',
      range: { min: 0, max: 100, hardMin: 0, hardMax: 1e4 },
    },
  },
  outputs: {
    area: { kind: 'area', words: 'area round the pipe' },
    volume: { kind: 'volume', words: 'volume round the pipe' },
  },
  fn: ({ boreM, pipeM, lengthM }) => {
    // A pipe larger than its bore leaves no room; that it does not pass is said by the ratio.
    const areaM2 = Math.max(0, (Math.PI / 4) * (boreM ** 2 - pipeM ** 2))
    return { areaM2, volumeM3: areaM2 * lengthM }
  },
  checks: ['pipe-handling'],
})
