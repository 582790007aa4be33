import { CONE_HALF_ANGLE_RAD } from './tip-pressure.ts'

/** Section of the body, m². */
export const tipAreaM2 = (diameterM: number): number => (Math.PI / 4) * diameterM * diameterM

/** Length of the nose cone, half-angle 30°: (D/2) cot 30°, m. */
export const noseLengthM = (diameterM: number): number => diameterM / 2 / Math.tan(CONE_HALF_ANGLE_RAD)

/** Side of the body less the nose, m². */
export const shaftAreaM2 = (diameterM: number, lengthM: number): number =>
  Math.PI * diameterM * Math.max(0, lengthM - noseLengthM(diameterM))
