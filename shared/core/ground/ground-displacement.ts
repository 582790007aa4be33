import { relation } from '../relation.ts'

/**
 * Movement of a point beside a finished bore, m. x to the side, z down from the surface, h axis depth; A = k V/(2π), V = π D²/4,
 * z1 = z − h, z2 = z + h, r1² = x² + z1², r2² = x² + z2², m = 1/(1 − 2ν). Horizontal is positive away from the bore;
 * vertical is positive downwards, so that a rise is negative (at the surface: minus the heave).
 * Exact for an elastic half-space and a line source: equilibrium and free surface hold. Not within a few diameters of the axis.
 */
export const groundDisplacement = relation({
  id: 'ground-displacement',
  title: 'Movement of the ground beside a bore',
  formula:
    'ux = A(x/r1² + x/r2²) + (2Ax/m)(1/r2² − 2m z z2/r2⁴); uz = A(z1/r1² + z2/r2²) − (2A/m)((m+1)z2/r2² − m z(x² − z2²)/r2⁴)',
  sources: ['Sagaseta1987', 'VerruijtBooker1996'],
  inputs: {
    diameter: { kind: 'diameter', words: 'bore diameter', range: { min: 0.04, max: 0.3, hardMin: 0 } },
    axisDepth: { kind: 'depth', words: 'depth of the bore axis', range: { min: 0.3, max: 5, hardMin: 1e-3 } },
    offset: { kind: 'length', words: 'distance to the side of the bore', range: { min: -20, max: 20 } },
    depth: { kind: 'depth', words: 'depth of the point', range: { min: 0, max: 10, hardMin: 0 } },
    poissonRatio: {
      kind: 'ratio',
      words: "Poisson's ratio",
      range: { min: 0.1, max: 0.5, hardMin: 0, hardMax: 0.5 },
      default: 0.5,
    },
    volumeFactor: {
      kind: 'ratio',
      words: 'share of the bore volume that moves the ground',
      range: { min: -0.3, max: 1.5, hardMin: -2, hardMax: 4 },
      default: 1,
    },
  },
  outputs: {
    horizontal: { kind: 'movement', words: 'movement away from the bore' },
    vertical: { kind: 'movement', words: 'movement downwards; a rise is negative' },
  },
  fn: ({ diameterM, axisDepthM, offsetM, depthM, poissonRatio, volumeFactor }) => {
    const a = (volumeFactor * diameterM * diameterM) / 8
    const x = offsetM
    const z = depthM
    const z1 = z - axisDepthM
    const z2 = z + axisDepthM
    // Inside the bore there is no ground: the wall's own movement is the most there is.
    const r1 = Math.max(x * x + z1 * z1, (diameterM * diameterM) / 4, Number.MIN_VALUE)
    const r2 = x * x + z2 * z2
    const inverse = 1 - 2 * poissonRatio
    // 1/m = 1 − 2ν taken in, so that ν = 0.5 needs no limit.
    const horizontalM = a * (x / r1 + x / r2) + 2 * a * x * (inverse / r2 - (2 * z * z2) / (r2 * r2))
    const verticalM =
      a * (z1 / r1 + z2 / r2) - 2 * a * (((1 + inverse) * z2) / r2 - (z * (x * x - z2 * z2)) / (r2 * r2))
    return { horizontalM, verticalM }
  },
  checks: ['ground-movement'],
})
