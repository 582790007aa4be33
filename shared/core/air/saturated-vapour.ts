import { relation } from '../relation.ts'

/** Gas constant of water vapour, J/(kg K). */
const VAPOUR_CONSTANT_J_PER_KG_K = 461.5
const ICE_POINT_K = 273.15
/** Hyland and Wexler's coefficients of ln p over liquid water, as ASHRAE Fundamentals prints them for SI (p in Pa, T in K). */
const OVER_WATER = [-5.8002206e3, 1.3914993, -4.8640239e-2, 4.1764768e-5, -1.4452093e-8, 6.5459673] as const
/** Over ice. */
const OVER_ICE = [
  -5.6745359e3, 6.3925247, -9.677843e-3, 6.2215701e-7, 2.0747825e-9, -9.484024e-13, 4.1635019,
] as const

/** Pressure of saturated water vapour, Pa; over ice below the ice point. */
export function saturationPressurePa(temperatureK: number): number {
  const t = temperatureK
  if (t < ICE_POINT_K) {
    const [c1, c2, c3, c4, c5, c6, c7] = OVER_ICE
    return Math.exp(c1 / t + c2 + c3 * t + c4 * t ** 2 + c5 * t ** 3 + c6 * t ** 4 + c7 * Math.log(t))
  }
  const [c8, c9, c10, c11, c12, c13] = OVER_WATER
  return Math.exp(c8 / t + c9 + c10 * t + c11 * t ** 2 + c12 * t ** 3 + c13 * Math.log(t))
}

/** Water to dry air by mass, w = 0.621945 φ p_ws/(p − φ p_ws); all the vapour there is room for at most. */
export function humidityRatio(pressureAbsPa: number, temperatureK: number, relativeHumidity: number): number {
  const vapourPa = Math.min(0.99 * pressureAbsPa, relativeHumidity * saturationPressurePa(temperatureK))
  return (0.621945 * vapourPa) / (pressureAbsPa - vapourPa)
}

/**
 * The most water vapour air can hold.
 *
 * ln p_ws = C8/T + C9 + C10 T + C11 T² + C12 T³ + C13 ln T  (over water; over ice another row);  ρ_v = p_ws/(R_v T)
 * p_ws Pa, T K, ρ_v kg/m³, R_v = 461.5 J/(kg K). −100 to 200 °C.
 * Error: 0.05 % of the ASHRAE tables.
 */
export const saturatedVapour = relation({
  id: 'saturated-vapour',
  title: 'Water vapour in saturated air',
  formula: 'ln p_ws = C8/T + C9 + C10·T + C11·T² + C12·T³ + C13·ln T; ρ_v = p_ws/(R_v·T)',
  sources: ['AshraeFundamentals'],
  inputs: {
    temperature: {
      kind: 'temperature',
      words: 'air temperature',
      range: { min: 233.15, max: 373.15, hardMin: 173.15, hardMax: 473.15 },
    },
  },
  outputs: {
    saturation: { kind: 'absolutePressure', words: 'pressure of saturated vapour' },
    vapour: { kind: 'density', words: 'vapour held by saturated air' },
  },
  fn: ({ temperatureK }) => {
    const saturationPa = saturationPressurePa(temperatureK)
    return { saturationPa, vapourKgPerM3: saturationPa / (VAPOUR_CONSTANT_J_PER_KG_K * temperatureK) }
  },
  checks: ['moist-air'],
})
