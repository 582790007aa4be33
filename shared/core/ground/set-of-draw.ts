/**
 * The penetration of one draw, without allocation. The reading of the spread that gives back the published-with-the-model table:
 * the model's own uncertainty multiplies the whole slow resistance (nose and body together); the rate factor varies in what it
 * adds above 1; shaft friction, quake, energy and efficiency vary each by themselves.
 */

/** k = 1 + (k0 − 1) s: only what the rate of loading adds is uncertain. */
export const rateFactorOfDraw = (rateFactor: number, scale: number): number => 1 + (rateFactor - 1) * scale

/** R = M k (q A_tip + fs A_shaft), N. */
export const resistanceOfDraw = (
  tipPa: number,
  shaftPa: number,
  tipAreaM2: number,
  shaftAreaM2: number,
  rateFactor: number,
  modelScale: number,
): number => modelScale * rateFactor * (tipPa * tipAreaM2 + shaftPa * shaftAreaM2)

/** s = max(0, η E/R − quake/2), m. */
export const setPerBlowOfDraw = (
  efficiency: number,
  blowEnergyJ: number,
  resistanceN: number,
  quakeM: number,
): number => Math.max(0, (efficiency * blowEnergyJ) / resistanceN - quakeM / 2)

const PLANNING_CAP_M_PER_S = 1.5 / 60
export const LEAST_SET_M = 0.15e-3
export const LEAST_RATE_M_PER_S = 0.05 / 60

/** Planning rate cap (1 − e^(−r0/cap)), r0 = s f, cap 1.5 m/min; m/s. */
export const planningRateMPerS = (setM: number, blowRateHz: number): number =>
  -PLANNING_CAP_M_PER_S * Math.expm1((-setM * blowRateHz) / PLANNING_CAP_M_PER_S)

/** The tool stalls where a blow gives under 0.15 mm or the rate falls under 0.05 m/min. */
export const stalls = (setM: number, rateMPerS: number): boolean =>
  setM < LEAST_SET_M || rateMPerS < LEAST_RATE_M_PER_S

/** σ of the logarithm for a stated coefficient of variation, the listed value being the median. */
export const logSigma = (cov: number): number => Math.sqrt(Math.log1p(cov * cov))

/** Coefficients of variation of the draws that do not depend on the soil. */
export const DRAW_COV = {
  rigidityIndex: 0.5,
  blowEnergy: 0.15,
  efficiency: 0.1,
  shaft: 0.35,
  quake: 0.35,
  rateFactor: 0.5,
} as const
