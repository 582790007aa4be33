import { expansionRatio, pressureOfRatio } from './dilatant-limit.ts'
import { sandLimit } from './sand-limit.ts'

/** Half-angle of the nose cone the model is calibrated for; a sharper or blunter one is an artefact of the formula. */
export const CONE_HALF_ANGLE_RAD = Math.PI / 6
const COT_CONE = 1 / Math.tan(CONE_HALF_ANGLE_RAD)
/** Stress sideways over stress downwards, at rest. */
export const AT_REST = 0.5
export const POISSON = 0.25
const WATER_N_PER_M3 = 9_806.65
/** Friction on the body over unit shaft friction of a pile: the hole is a little wider than the body behind the shoulder. */
export const BODY_SHARE = 0.6

/** Total vertical stress at a depth, Pa. */
export const verticalStressPa = (unitWeightNPerM3: number, depthM: number): number =>
  unitWeightNPerM3 * depthM

/** Effective vertical stress at a depth, Pa; the water table's depth, or null where there is none. */
export function effectiveStressPa(
  unitWeightNPerM3: number,
  depthM: number,
  waterTableM: number | null,
): number {
  const submergedM = waterTableM === null ? 0 : Math.max(0, depthM - waterTableM)
  return unitWeightNPerM3 * depthM - WATER_N_PER_M3 * submergedM
}

/** Mean stress p0 = σ'(1 + 2 K0)/3 with K0 = 0.5, Pa. */
export const meanStressPa = (verticalPa: number): number => (verticalPa * (1 + 2 * AT_REST)) / 3

/** q = σv + k su [(4/3)(1 + ln Ir) + a cot 30°], Pa. */
export const clayTipPa = (
  undrainedStrengthPa: number,
  rigidityIndex: number,
  verticalPa: number,
  adhesion: number,
  tipFactor: number,
): number =>
  verticalPa +
  tipFactor * undrainedStrengthPa * ((4 / 3) * (1 + Math.log(rigidityIndex)) + adhesion * COT_CONE)

/** What a sphere's limit pressure is multiplied by to give the pressure on the nose. */
export const granularTipFactor = (
  interfaceAngleRad: number,
  tipFactor: number,
  gravelFactor: number,
): number => tipFactor * gravelFactor * (1 + Math.tan(interfaceAngleRad) * COT_CONE)

/**
 * Sphere limit pressure of a soil with cohesion and friction whose shear modulus is G = Gr (c + p0 tan φ), Pa.
 * With that modulus R does not depend on c or p0, and the pressure is a straight line in c: tip-table.ts rests on it.
 */
export function frictionalLimitPa(
  cohesionPa: number,
  frictionAngleRad: number,
  dilationAngleRad: number,
  stiffnessRatio: number,
  meanPa: number,
): number {
  const shearPa = stiffnessRatio * (cohesionPa + meanPa * Math.tan(frictionAngleRad))
  const youngsPa = 2 * (1 + POISSON) * shearPa
  const ratio = expansionRatio(frictionAngleRad, dilationAngleRad, cohesionPa, youngsPa, POISSON, meanPa, 2)
  return pressureOfRatio(ratio, frictionAngleRad, cohesionPa, meanPa, 2)
}

/** Sphere limit pressure of sand by relative density, Pa. */
export const sandLimitPa = (relativeDensity: number, criticalAngleRad: number, meanPa: number): number =>
  sandLimit(relativeDensity, criticalAngleRad, meanPa).limitPressurePa
