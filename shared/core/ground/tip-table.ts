import { expansionRatio } from './dilatant-limit.ts'
import type { GroundState } from './ground-state.ts'
import { indexFromStress, limitAtIndexPa, MOST_INDEX, sandLimit, sandShearModulusPa } from './sand-limit.ts'
import { effectiveStressPa, meanStressPa, POISSON } from './tip-pressure.ts'

/** Relative density is kept within these in the draws. */
export const LEAST_DENSITY = 0.05
export const MOST_DENSITY = 0.98
/** Friction angles the table spans to each side of the state's own: four standard deviations where only a word is known, six else. */
const ANGLE_SPAN_RAD = (12 * Math.PI) / 180
export const LEAST_ANGLE_RAD = (12 * Math.PI) / 180
export const MOST_ANGLE_RAD = (50 * Math.PI) / 180
export const LEAST_COHESION_PA = 0
export const MOST_COHESION_PA = 500e3
/** Degree of each polynomial piece. */
const DEGREE = 6
const MOST_BISECTIONS = 60

/** Limit pressure of a sphere by the soil's drawn strength, without solving anything. */
export type TipTable = {
  /** Sand: x relative density, y ignored. Cohesion and friction: x cohesion Pa, y friction angle rad. Pa. */
  evaluate(x: number, y: number): number
}

/** Powers of the scaled variable t = (2x − a − b)/(b − a) that pass through `of` at the Chebyshev nodes of [a, b]. */
function polynomial(a: number, b: number, of: (x: number) => number): Float64Array {
  const n = DEGREE + 1
  const nodes = Array.from({ length: n }, (_, k) => Math.cos((Math.PI * (2 * k + 1)) / (2 * n)))
  const values = nodes.map((t) => of((a + b + (b - a) * t) / 2))
  const powers = new Float64Array(n)
  // Chebyshev coefficients, then T_j written out in powers of t by its recurrence.
  let before = new Float64Array(n)
  let current = new Float64Array(n)
  before[0] = 1
  current[1] = 1
  for (let j = 0; j < n; j += 1) {
    let sum = 0
    values.forEach((value, k) => {
      sum += value * Math.cos((Math.PI * j * (2 * k + 1)) / (2 * n))
    })
    const coefficient = (sum * (j === 0 ? 1 : 2)) / n
    for (let i = 0; i < n; i += 1) powers[i] = (powers[i] ?? 0) + coefficient * (before[i] ?? 0)
    const next = new Float64Array(n)
    for (let i = 0; i < n; i += 1) next[i] = (i > 0 ? 2 * (current[i - 1] ?? 0) : 0) - (before[i] ?? 0)
    before = current
    current = next
  }
  return powers
}

function horner(powers: Float64Array, t: number): number {
  let sum = 0
  for (let i = DEGREE; i >= 0; i -= 1) sum = sum * t + (powers[i] as number)
  return sum
}

/** Where a rising function crosses zero in [a, b]; an end where it does not. */
function crossing(a: number, b: number, of: (x: number) => number): number {
  let low = a
  let high = b
  if (of(low) >= 0) return low
  if (of(high) <= 0) return high
  for (let step = 0; step < MOST_BISECTIONS && high - low > 1e-13; step += 1) {
    const middle = (low + high) / 2
    if (of(middle) < 0) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/** Sand: ln p over density, one polynomial below, between and above the densities where Bolton's index is held at 0 and at 4. */
function sandTable(criticalAngleRad: number, meanPa: number): TipTable {
  const heldAt = (index: number): number =>
    crossing(LEAST_DENSITY, MOST_DENSITY, (density) => {
      const held = limitAtIndexPa(index, criticalAngleRad, sandShearModulusPa(density, meanPa), meanPa)
      return indexFromStress(density, held, meanPa) - index
    })
  const logPressure = (density: number): number =>
    Math.log(sandLimit(density, criticalAngleRad, meanPa).limitPressurePa)
  const first = heldAt(0)
  const second = heldAt(MOST_INDEX)
  const piece = (a: number, b: number): Float64Array =>
    b - a > 1e-9 ? polynomial(a, b, logPressure) : polynomial(a, a + 1e-9, logPressure)
  const low = piece(LEAST_DENSITY, first)
  const middle = piece(first, second)
  const high = piece(second, MOST_DENSITY)
  const slope = (a: number, b: number): number => 2 / Math.max(b - a, 1e-9)
  const lowSlope = slope(LEAST_DENSITY, first)
  const middleSlope = slope(first, second)
  const highSlope = slope(second, MOST_DENSITY)
  return {
    evaluate(x) {
      const density = Math.min(MOST_DENSITY, Math.max(LEAST_DENSITY, x))
      if (density < first) return Math.exp(horner(low, (density - LEAST_DENSITY) * lowSlope - 1))
      if (density <= second) return Math.exp(horner(middle, (density - first) * middleSlope - 1))
      return Math.exp(horner(high, (density - second) * highSlope - 1))
    },
  }
}

/**
 * Cohesion and friction with G = Gr (c + p0 tan φ): every stress in Yu & Houlsby's constants is then a multiple of c + p0 tan φ, so R depends
 * on φ alone and p = p0 A(φ) + c B(φ) exactly. Only A and B need a table.
 */
function frictionalTable(state: GroundState, meanPa: number): TipTable {
  const lowest = Math.max(LEAST_ANGLE_RAD, state.frictionAngleRad - ANGLE_SPAN_RAD)
  const highest = Math.min(MOST_ANGLE_RAD, state.frictionAngleRad + ANGLE_SPAN_RAD)
  const stiffness = state.stiffnessRatio ?? 1
  const growth = (angle: number): number => {
    const youngs = 2 * (1 + POISSON) * stiffness * Math.tan(angle)
    const alpha = (1 + Math.sin(angle)) / (1 - Math.sin(angle))
    return (3 * alpha * expansionRatio(angle, state.dilationAngleRad, 0, youngs, POISSON, 1, 2)) / (2 + alpha)
  }
  const onStress = polynomial(lowest, highest, growth)
  const onCohesion = polynomial(lowest, highest, (angle) => (growth(angle) - 1) / Math.tan(angle))
  const slope = 2 / (highest - lowest)
  return {
    evaluate(x, y) {
      const cohesion = Math.min(MOST_COHESION_PA, Math.max(LEAST_COHESION_PA, x))
      const angle = Math.min(highest, Math.max(lowest, y))
      const t = (angle - lowest) * slope - 1
      return meanPa * horner(onStress, t) + cohesion * horner(onCohesion, t)
    },
  }
}

/** The table of one stretch: made once, read in every draw. Clay needs none: its formula is as quick. */
export function tipTable(state: GroundState, depthM: number, waterTableM: number | null): TipTable {
  const meanPa = meanStressPa(effectiveStressPa(state.unitWeightNPerM3, depthM, waterTableM))
  return state.family === 'sand'
    ? sandTable(state.criticalAngleRad ?? 0, meanPa)
    : frictionalTable(state, meanPa)
}
