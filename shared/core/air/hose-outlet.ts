import { airViscosityPaS, GAS_CONSTANT_J_PER_KG_K } from './dry-air.ts'
import { darcyFrictionFactor } from './friction-methods.ts'
import type { Outlet } from './isothermal-outlet.ts'
import { isothermalOutlet } from './isothermal-outlet.ts'

/** ε, m: inside wall of a rubber hose. From memory: smooth to 0.01 mm; no public measurement was found. */
export const HOSE_ROUGHNESS_M = 1e-5
/**
 * K of one hose coupling. The hose guides give a restrictive coupling 5 % of the loss of 100 ft of its hose, K 0.98 at
 * 1 in: rounded.
 */
export const COUPLING_LOSS_COEFFICIENT = 1

export type HoseFlow = {
  readonly boreM: number
  readonly lengthM: number
  readonly roughnessM: number
  readonly couplings: number
  /** K of each; absent: 1.0. */
  readonly couplingCoefficient?: number
  /** Multiplies friction and fittings: what a reading says of this very hose. Absent: 1. */
  readonly lossFactor?: number
  readonly massFlowKgPerS: number
  readonly inletAbsPa: number
  readonly temperatureK: number
}

const areaM2 = (boreM: number): number => (Math.PI * boreM ** 2) / 4

/** f L/D + ΣK of a hose at a flow. Re, hence f, is the same all along an isothermal hose: viscosity depends on T only. */
export function hoseResistance(hose: Omit<HoseFlow, 'inletAbsPa'>): number {
  const factor = hose.lossFactor ?? 1
  const fittings = hose.couplings * (hose.couplingCoefficient ?? COUPLING_LOSS_COEFFICIENT)
  if (hose.massFlowKgPerS === 0) return factor * fittings
  const reynolds = (4 * hose.massFlowKgPerS) / (Math.PI * hose.boreM * airViscosityPaS(hose.temperatureK))
  const friction = darcyFrictionFactor(reynolds, hose.roughnessM / hose.boreM, 'colebrook')
  return factor * ((friction * hose.lengthM) / hose.boreM + fittings)
}

/** Pressure at the end of one hose, or that it chokes before passing all of the flow. */
export function hoseOutlet(hose: HoseFlow): Outlet {
  return isothermalOutlet({
    inletAbsPa: hose.inletAbsPa,
    massFluxKgPerSM2: hose.massFlowKgPerS / areaM2(hose.boreM),
    gasEnergyJPerKg: GAS_CONSTANT_J_PER_KG_K * hose.temperatureK,
    resistance: hoseResistance(hose),
  })
}

/** f L/D ρ v²/2 at the inlet's density: what first-order tables print. Pa. */
export function firstOrderLossPa(hose: HoseFlow): number {
  const massFlux = hose.massFlowKgPerS / areaM2(hose.boreM)
  const inletDensity = hose.inletAbsPa / (GAS_CONSTANT_J_PER_KG_K * hose.temperatureK)
  return (hoseResistance(hose) * massFlux ** 2) / (2 * inletDensity)
}
