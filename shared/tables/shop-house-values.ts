/**
 * What the shop takes for granted until its own readings say otherwise. All of it is our own judgement unless a line says
 * more, and every figure made with it is marked so.
 */

/** Outer wear by class of the LCPC test, 1 (not abrasive) to 6 (extremely): middle of the class over 354 g/t. */
export const SOIL_FACTORS: readonly number[] = [0.1, 0.2, 0.45, 1, 2.2, 4.5]
/** The same for a hose that is dragged. */
export const HOSE_SOIL_FACTORS: readonly number[] = [0.5, 0.6, 0.8, 1, 1.2, 1.5]
/** Class taken where nobody said. */
export const USUAL_ABRASIVITY = 4
/** Sliding parts: like metals, well oiled to dry, spread over lubrication classes; rounded and our own. */
export const SLIDING_OIL_FACTORS = { good: 1, poor: 10, none: 50 } as const
export const VALVE_OIL_FACTORS = { good: 1, poor: 5, none: 20 } as const
export const AIR_FACTORS = { dry: 1, wet: 2.5 } as const

/** Of the tool that a figure without its own is reckoned for. */
export const USUAL_BLOW_RATE_HZ = 6
export const USUAL_STROKE_M = 0.15
/** Two feet a minute: with it a metre of bore becomes time of use. */
export const USUAL_ADVANCE_M_PER_S = 0.01016

const HOUR_S = 3600
/** Use a part lasts in usual service, by what wears it. */
export const USUAL_LIFE_S = {
  ground: 1000 / USUAL_ADVANCE_M_PER_S,
  sliding: 150 * HOUR_S,
  valve: 250 * HOUR_S,
  blows: 600 * HOUR_S,
  hose: 400 * HOUR_S,
} as const
/** Use the expectation of a part's rate is worth, and its spread from tool to tool. */
export const PRIOR_WEIGHT_S = 10 * HOUR_S
export const PRIOR_SPREAD = 0.3872983346207417
/** Wear to the limit where the template names none; only the rate before any reading hangs on it. */
export const USUAL_ALLOWANCE_M = 0.001
/** Shape of lives where too few have ended to find one. */
export const USUAL_SHAPE = 2
/** A failure in the ground against a part changed on the bench. */
export const USUAL_COST_RATIO = 5
/** Common practice, no source: a strip-down about every hundred hours, and once a year. */
export const STRIP_EVERY_S = 100 * HOUR_S
export const STRIP_EVERY_DAYS = 365
/** Below this share of the advance a plan expected, in known ground at normal pressure, the rings are worth a look. */
export const SLOW_SHARE = 0.7
