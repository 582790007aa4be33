import { expansionRatio, pressureOfRatio } from './dilatant-limit.ts'

const DEGREE_RAD = Math.PI / 180
const PA_PER_KPA = 1e3
/** Bolton: peak angle above critical, per unit of the dilatancy index, for stress from all sides. */
const FRICTION_PER_INDEX_RAD = 3 * DEGREE_RAD
/** Bolton: φ − φcv = 0.8 ψ. */
const DILATION_SHARE = 0.8
const CRUSHING = 10
export const MOST_INDEX = 4
const POISSON = 0.25
/** Modulus at working strain over the one at smallest strain. */
const WORKING_SHARE = 0.3
const HARDIN_KPA = 625
const ATMOSPHERE_KPA = 101.3
const MOST_STEPS = 60

export type SandLimit = {
  readonly dilatancyIndex: number
  readonly frictionAngleRad: number
  readonly dilationAngleRad: number
  readonly shearModulusPa: number
  readonly limitPressurePa: number
}

/** G = 0.3 Gmax, Gmax = 625 √(101.3 p0)/(0.3 + 0.7 e²) kPa, e = 0.95 − 0.45 Dr. */
export function sandShearModulusPa(relativeDensity: number, meanPa: number): number {
  const voidRatio = 0.95 - 0.45 * relativeDensity
  const largestKpa =
    (HARDIN_KPA * Math.sqrt((ATMOSPHERE_KPA * meanPa) / PA_PER_KPA)) / (0.3 + 0.7 * voidRatio * voidRatio)
  return WORKING_SHARE * largestKpa * PA_PER_KPA
}

/** Sphere limit pressure of sand with a given dilatancy index. */
export function limitAtIndexPa(
  index: number,
  criticalAngleRad: number,
  shearModulusPa: number,
  meanPa: number,
): number {
  const friction = criticalAngleRad + FRICTION_PER_INDEX_RAD * index
  const dilation = (FRICTION_PER_INDEX_RAD * index) / DILATION_SHARE
  const youngsPa = 2 * (1 + POISSON) * shearModulusPa
  const ratio = expansionRatio(friction, dilation, 0, youngsPa, POISSON, meanPa, 2)
  return pressureOfRatio(ratio, friction, 0, meanPa, 2)
}

/** Bolton's index from density and the stress the sand fails at, √(p p0): Dr (10 − ln p') − 1, p' in kPa. */
export const indexFromStress = (relativeDensity: number, limitPa: number, meanPa: number): number =>
  relativeDensity * (CRUSHING - Math.log(Math.sqrt(limitPa * meanPa) / PA_PER_KPA)) - 1

/**
 * Limit pressure of sand whose strength depends on that very pressure: the index and the pressure are solved together.
 * The wanted index falls as the assumed one rises, so the root in 0…4 is single; at the ends the index is held.
 */
export function sandLimit(relativeDensity: number, criticalAngleRad: number, meanPa: number): SandLimit {
  const shearModulusPa = sandShearModulusPa(relativeDensity, meanPa)
  const pressure = (index: number): number => limitAtIndexPa(index, criticalAngleRad, shearModulusPa, meanPa)
  const excess = (index: number): number => indexFromStress(relativeDensity, pressure(index), meanPa) - index
  const index = heldRoot(excess)
  return {
    dilatancyIndex: index,
    frictionAngleRad: criticalAngleRad + FRICTION_PER_INDEX_RAD * index,
    dilationAngleRad: (FRICTION_PER_INDEX_RAD * index) / DILATION_SHARE,
    shearModulusPa,
    limitPressurePa: pressure(index),
  }
}

/** Root of a falling function on 0…4, or the end nearest to it: regula falsi with the Illinois halving. */
function heldRoot(excess: (index: number) => number): number {
  let low = 0
  let atLow = excess(low)
  if (atLow <= 0) return low
  let high = MOST_INDEX
  let atHigh = excess(high)
  if (atHigh >= 0) return high
  let lastSide = 0
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const middle = (low * atHigh - high * atLow) / (atHigh - atLow)
    const atMiddle = excess(middle)
    if (Math.abs(atMiddle) < 1e-13 || high - low < 1e-13) return middle
    if (atMiddle > 0) {
      low = middle
      atLow = atMiddle
      if (lastSide === 1) atHigh /= 2
      lastSide = 1
    } else {
      high = middle
      atHigh = atMiddle
      if (lastSide === -1) atLow /= 2
      lastSide = -1
    }
  }
  return (low + high) / 2
}
