import { REFERENCE_TEMPERATURE_K } from './dry-air.ts'
import type { Outlet } from './isothermal-outlet.ts'

/** C, m³/(s·Pa): 40 dm³/(s·bar), a 1 in in-line oiler. Our judgement: no published curve was found. */
export const LUBRICATOR_CONDUCTANCE = 4e-7
/** b: critical pressure ratio that goes with it. */
export const LUBRICATOR_CRITICAL_RATIO = 0.3
/** ρ0 of the reference state of ISO 8778, kg/m³: 100 kPa, 20 °C, 65 % humidity. */
const REFERENCE_DENSITY_KG_PER_M3 = 1.185

export type LubricatorFlow = {
  readonly massFlowKgPerS: number
  readonly inletAbsPa: number
  readonly temperatureK: number
}

/**
 * Pressure behind an oiler, ISO 6358 turned round:
 *
 * ṁ = C p1 ρ0 √(T0/T) ω,  ω = √( 1 − ((r − b)/(1 − b))² ),  r = p2/p1 ≥ b
 * A flow that needs ω above 1 chokes.
 */
export function lubricatorOutlet({ massFlowKgPerS, inletAbsPa, temperatureK }: LubricatorFlow): Outlet {
  const chokedKgPerS =
    LUBRICATOR_CONDUCTANCE *
    inletAbsPa *
    REFERENCE_DENSITY_KG_PER_M3 *
    Math.sqrt(REFERENCE_TEMPERATURE_K / temperatureK)
  const share = massFlowKgPerS / chokedKgPerS
  if (!(share <= 1)) return { ok: false, reason: 'choked' }
  const b = LUBRICATOR_CRITICAL_RATIO
  return { ok: true, outletAbsPa: inletAbsPa * (b + (1 - b) * Math.sqrt(1 - share ** 2)) }
}
