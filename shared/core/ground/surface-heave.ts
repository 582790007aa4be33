import { relation } from '../relation.ts'

/**
 * Rise of the ground surface over a finished bore, m, at a distance to the side:
 * s = k (2(1−ν)V/π) h/(x² + h²), V = π D²/4, h axis depth, k the volume factor of the soil. ν = 0.5 and k = 1: peak D²/(4h).
 * Exact for an elastic half-space; troughs seen are narrower, so a planning band is wide. Sagaseta 1987, Verruijt & Booker 1996.
 */
export const surfaceHeave = relation({
  id: 'surface-heave',
  title: 'Rise of the surface over the bore',
  formula: 's = k (2(1−ν)V/π) h/(x² + h²), V = π D²/4',
  sources: ['Sagaseta1987', 'VerruijtBooker1996'],
  inputs: {
    diameter: { kind: 'diameter', words: 'bore diameter', range: { min: 0.04, max: 0.3, hardMin: 0 } },
    axisDepth: { kind: 'depth', words: 'depth of the bore axis', range: { min: 0.3, max: 5, hardMin: 1e-3 } },
    offset: {
      kind: 'length',
      words: 'distance to the side of the bore',
      range: { min: -20, max: 20 },
      default: 0,
    },
    poissonRatio: {
      kind: 'ratio',
      words: "Poisson's ratio",
      range: { min: 0.1, max: 0.5, hardMin: 0, hardMax: 0.5 },
      default: 0.5,
    },
    volumeFactor: {
      kind: 'ratio',
      words: 'share of the bore volume that reaches the surface',
      range: { min: -0.3, max: 1.5, hardMin: -2, hardMax: 4 },
      default: 1,
    },
  },
  outputs: { heave: { kind: 'movement', words: 'rise of the surface' } },
  fn: ({ diameterM, axisDepthM, offsetM, poissonRatio, volumeFactor }) => {
    const areaM2 = (Math.PI / 4) * diameterM * diameterM
    const strength = (volumeFactor * 2 * (1 - poissonRatio) * areaM2) / Math.PI
    return { heaveM: (strength * axisDepthM) / (offsetM * offsetM + axisDepthM * axisDepthM) }
  },
  checks: ['ground-movement'],
})
