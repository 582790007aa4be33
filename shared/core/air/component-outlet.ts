import { REFERENCE_TEMPERATURE_K } from './dry-air.ts'
import type { Outlet } from './isothermal-outlet.ts'

/** What ISO 6358 describes a valve, filter or oiler with. */
export type Component = {
  /** C, m³/(s·Pa). */
  readonly conductanceM3PerSPa: number
  /** b: p2/p1 below which it chokes. */
  readonly criticalRatio: number
}

/** A 1 in in-line oiler, 40 dm³/(s·bar). Our judgement: no published curve was found. */
export const LUBRICATOR: Component = { conductanceM3PerSPa: 4e-7, criticalRatio: 0.3 }

/** ρ0 of the reference state of ISO 8778, kg/m³: 100 kPa, 20 °C, 65 % humidity. */
export const REFERENCE_DENSITY_KG_PER_M3 = 1.185

export type ComponentFlow = {
  readonly massFlowKgPerS: number
  readonly inletAbsPa: number
  readonly temperatureK: number
}

/**
 * Pressure behind a component, ISO 6358 turned round:
 *
 * ṁ = C p1 ρ0 √(T0/T) ω,  ω = √( 1 − ((r − b)/(1 − b))² ),  r = p2/p1 ≥ b
 * ṁ kg/s, p Pa absolute, T K with T0 = 293.15 K. A flow that needs ω above 1 chokes.
 */
export function componentOutlet(
  { conductanceM3PerSPa, criticalRatio }: Component,
  flow: ComponentFlow,
): Outlet {
  const chokedKgPerS =
    conductanceM3PerSPa *
    flow.inletAbsPa *
    REFERENCE_DENSITY_KG_PER_M3 *
    Math.sqrt(REFERENCE_TEMPERATURE_K / flow.temperatureK)
  if (!(flow.massFlowKgPerS <= chokedKgPerS)) return { ok: false, reason: 'choked' }
  const share = flow.massFlowKgPerS / chokedKgPerS
  const ratio = criticalRatio + (1 - criticalRatio) * Math.sqrt(1 - share ** 2)
  return { ok: true, outletAbsPa: flow.inletAbsPa * ratio }
}

/**
 * A component known by what it loses at one flow: ISO 6358 with b = 0, where p1² − p2² goes with ṁ². Taken at 20 °C.
 */
export function componentOfLoss({
  lossPa,
  massFlowKgPerS,
  inletAbsPa,
}: {
  readonly lossPa: number
  readonly massFlowKgPerS: number
  readonly inletAbsPa: number
}): Component {
  const squares = lossPa * (2 * inletAbsPa - lossPa)
  return {
    conductanceM3PerSPa: massFlowKgPerS / (REFERENCE_DENSITY_KG_PER_M3 * Math.sqrt(squares)),
    criticalRatio: 0,
  }
}
