import { relation } from '../relation.ts'

/**
 * Rise of the surface over a bore of finite length, m, constant volume: an exact integral of point sources from y = 0 to L.
 * S = k (V/2π) h/(x²+h²) [y/√(x²+y²+h²) + (L−y)/√(x²+(L−y)²+h²)]. y measured from the start of the bore; pits are not modelled.
 */
export const heaveProgress = relation({
  id: 'heave-progress',
  title: 'Rise of the surface as the bore goes on',
  formula: 'S = k (V/2π) h/(x²+h²) [y/√(x²+y²+h²) + (L−y)/√(x²+(L−y)²+h²)]',
  sources: ['Sagaseta1987'],
  inputs: {
    diameter: { kind: 'diameter', words: 'bore diameter', range: { min: 0.04, max: 0.3, hardMin: 0 } },
    axisDepth: { kind: 'depth', words: 'depth of the bore axis', range: { min: 0.3, max: 5, hardMin: 1e-3 } },
    boreLength: { kind: 'length', words: 'length bored so far', range: { min: 0, max: 100, hardMin: 0 } },
    station: {
      kind: 'length',
      words: 'distance along the bore from its start',
      range: { min: -20, max: 120 },
    },
    offset: {
      kind: 'length',
      words: 'distance to the side of the bore',
      range: { min: -20, max: 20 },
      default: 0,
    },
    volumeFactor: {
      kind: 'ratio',
      words: 'share of the bore volume that reaches the surface',
      range: { min: -0.3, max: 1.5, hardMin: -2, hardMax: 4 },
      default: 1,
    },
  },
  outputs: {
    heave: { kind: 'movement', words: 'rise of the surface' },
    share: { kind: 'ratio', words: 'share of the rise over an endless bore' },
  },
  fn: ({ diameterM, axisDepthM, boreLengthM, stationM, offsetM, volumeFactor }) => {
    const across = offsetM * offsetM + axisDepthM * axisDepthM
    const behind = stationM / Math.sqrt(across + stationM * stationM)
    const rest = boreLengthM - stationM
    const share = (behind + rest / Math.sqrt(across + rest * rest)) / 2
    const endless = (volumeFactor * (diameterM * diameterM * axisDepthM)) / (4 * across)
    return { heaveM: endless * share, share }
  },
  checks: ['ground-movement'],
})
