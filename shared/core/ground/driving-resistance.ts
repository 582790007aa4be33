import { relation } from '../relation.ts'
import { shaftAreaM2, tipAreaM2 } from './tool-areas.ts'

/**
 * Resistance while driving, N: R = k (q A_tip + fs A_shaft). A_tip the section of the body; A_shaft the side of the body less the
 * nose, whose cone half-angle is 30°. k the factor of the rate of loading.
 */
export const drivingResistance = relation({
  id: 'driving-resistance',
  title: 'Resistance while driving',
  formula: 'R = k (q π D²/4 + fs π D (L − (D/2) cot 30°))',
  sources: ['PenetrationModel'],
  inputs: {
    tipPressure: {
      kind: 'stress',
      words: 'pressure on the nose',
      range: { min: 50e3, max: 15e6, hardMin: 0 },
    },
    friction: { kind: 'stress', words: 'friction on the body', range: { min: 1e3, max: 100e3, hardMin: 0 } },
    diameter: { kind: 'diameter', words: 'body diameter', range: { min: 0.04, max: 0.2, hardMin: 0.01 } },
    length: { kind: 'length', words: 'body length', range: { min: 0.8, max: 2.5, hardMin: 0.1 } },
    rateFactor: {
      kind: 'ratio',
      words: 'factor of the rate of loading',
      range: { min: 1, max: 2, hardMin: 0 },
      default: 1,
    },
  },
  outputs: {
    tipForce: { kind: 'force', words: 'on the nose, slowly' },
    shaftForce: { kind: 'force', words: 'on the body, slowly' },
    resistance: { kind: 'force', words: 'resistance while driving' },
  },
  fn: ({ tipPressurePa, frictionPa, diameterM, lengthM, rateFactor }) => {
    const tipForceN = tipPressurePa * tipAreaM2(diameterM)
    const shaftForceN = frictionPa * shaftAreaM2(diameterM, lengthM)
    return { tipForceN, shaftForceN, resistanceN: rateFactor * (tipForceN + shaftForceN) }
  },
  checks: ['ground-penetration'],
})
