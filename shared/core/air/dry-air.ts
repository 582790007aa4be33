/**
 * Dry air as an ideal gas: good to 0.3 % up to 10 bar at working temperatures.
 * Constants of the U.S. Standard Atmosphere 1976.
 */

/** R, J/(kg K): 8314.32 J/(kmol K) over 28.9644 kg/kmol. */
export const GAS_CONSTANT_J_PER_KG_K = 8314.32 / 28.9644
/** Ratio of specific heats, κ. */
export const HEAT_RATIO = 1.4
/** One standard atmosphere: the sea-level barometer, and the state tool air demands are rated at. */
export const SEA_LEVEL_PA = 101_325
/** 20 °C: the temperature tool air demands are rated at, and ours when none is given. */
export const REFERENCE_TEMPERATURE_K = 293.15

/** ρ = p / (R T), kg/m³; p absolute. */
export const dryAirDensityKgPerM3 = (pressureAbsPa: number, temperatureK: number): number =>
  pressureAbsPa / (GAS_CONSTANT_J_PER_KG_K * temperatureK)

/** Sutherland's viscosity, Pa·s: μ = 1.458e-6 T^1.5 / (T + 110.4), T in K, 100–1900 K; free of pressure to about 20 bar. */
export const airViscosityPaS = (temperatureK: number): number =>
  (1.458e-6 * temperatureK ** 1.5) / (temperatureK + 110.4)
