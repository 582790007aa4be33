import { relation } from '../relation.ts'

/** Volume in the ground of a pit with a rectangular floor and the same slope on all four sides; slope 0 is a shored pit. */
export const pitVolume = relation({
  id: 'pit-volume',
  title: 'Volume of a pit',
  formula: 'V = h·L·W + s·h²·(L + W) + 4/3·s²·h³; top = floor + 2·s·h',
  sources: ['PrismoidalFormula'],
  inputs: {
    length: {
      kind: 'length',
      words: 'length of the floor',
      range: { min: 0.3, max: 10, hardMin: 0, hardMax: 200 },
    },
    width: {
      kind: 'length',
      words: 'width of the floor',
      range: { min: 0.3, max: 5, hardMin: 0, hardMax: 200 },
    },
    depth: {
      kind: 'depth',
      words: 'depth of the floor',
      // Past 20 ft the slopes are an engineer's design.
      range: { min: 0.3, max: 6.096, hardMin: 0, hardMax: 50 },
    },
    slope: {
      kind: 'ratio',
      words: 'run of the sides per rise',
      range: { min: 0, max: 2, hardMin: 0, hardMax: 20 },
    },
  },
  outputs: {
    volume: { kind: 'volume', words: 'volume in the ground, before it swells' },
    topLength: { kind: 'length', words: 'length at the surface' },
    topWidth: { kind: 'length', words: 'width at the surface' },
  },
  fn: ({ lengthM, widthM, depthM, slope }) => {
    const spreadM = slope * depthM
    return {
      volumeM3: depthM * (lengthM * widthM + spreadM * (lengthM + widthM) + (4 / 3) * spreadM ** 2),
      topLengthM: lengthM + 2 * spreadM,
      topWidthM: widthM + 2 * spreadM,
    }
  },
  checks: ['pits'],
})
