/**
 * Exact definitions behind the unit table: the international foot 0.3048 m, the avoirdupois pound 0.45359237 kg,
 * standard gravity 9.80665 m/s², the US gallon 231 in³, the standard atmosphere 101325 Pa (NIST Special Publication
 * 811, 2008 edition, appendix B). Nothing here is measured; the columns of mercury and water are conventional.
 */
export const FOOT_M = 0.3048
export const INCH_M = 0.0254
export const YARD_M = 0.9144
export const MILE_M = 1609.344
export const POUND_KG = 0.45359237
export const GRAVITY_M_PER_S2 = 9.80665
export const POUND_FORCE_N = POUND_KG * GRAVITY_M_PER_S2
export const GALLON_M3 = 231 * INCH_M ** 3
export const FOOT_POUND_J = POUND_FORCE_N * FOOT_M
export const PSI_PA = POUND_FORCE_N / INCH_M ** 2
export const PSF_PA = POUND_FORCE_N / FOOT_M ** 2
export const ATMOSPHERE_PA = 101_325
/** Conventional mercury, 13 595.1 kg/m³, and conventional water, 1000 kg/m³, under standard gravity. */
export const MERCURY_PA_PER_M = 13_595.1 * GRAVITY_M_PER_S2
export const WATER_PA_PER_M = 1000 * GRAVITY_M_PER_S2
export const MINUTE_S = 60
export const HOUR_S = 3600
export const DAY_S = 86_400
export const DEGREE_RAD = Math.PI / 180
export const RANKINE_K = 5 / 9
