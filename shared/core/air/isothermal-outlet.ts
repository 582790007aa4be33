/** Result of pushing a flow through something that narrows: the pressure behind it, or that it cannot all pass. */
export type Outlet =
  | { readonly ok: true; readonly outletAbsPa: number }
  | { readonly ok: false; readonly reason: 'choked' }

export type IsothermalFlow = {
  readonly inletAbsPa: number
  /** G, kg/(s m²): mass flow over cross-section. */
  readonly massFluxKgPerSM2: number
  /** R T, J/kg: gas constant times temperature, which stays the same along the way. */
  readonly gasEnergyJPerKg: number
  /** f L/D + ΣK: friction and fittings, in velocity heads. */
  readonly resistance: number
}

/** Newton steps at most; a choking flow, the slowest, halves its distance in each. */
const MOST_STEPS = 60

/**
 * Pressure at the end of an isothermal line, the equation solved for p2:
 *
 * p1² − p2² = G² R T [ f L/D + ΣK + 2 ln(p1/p2) ]
 * p in Pa absolute. It holds down to p2 = G √(R T), where the flow chokes: a line asked for more passes only a part.
 * Exact for an ideal gas; two lengths in series equal one.
 */
export function isothermalOutlet({
  inletAbsPa,
  massFluxKgPerSM2,
  gasEnergyJPerKg,
  resistance,
}: IsothermalFlow): Outlet {
  const inertia = massFluxKgPerSM2 ** 2 * gasEnergyJPerKg
  const chokeAbsPa = Math.sqrt(inertia)
  const excess = (outletAbsPa: number) =>
    (inletAbsPa - outletAbsPa) * (inletAbsPa + outletAbsPa) -
    inertia * (resistance + 2 * Math.log(inletAbsPa / outletAbsPa))
  if (inertia === 0) return { ok: true, outletAbsPa: inletAbsPa }
  if (chokeAbsPa > inletAbsPa || excess(chokeAbsPa) < 0) return { ok: false, reason: 'choked' }
  // Between choke and inlet the excess falls and bends downward, so Newton from the inlet side never passes the root.
  let outletAbsPa = inletAbsPa
  for (let step = 0; step < MOST_STEPS; step++) {
    const slope = (2 * (inertia - outletAbsPa ** 2)) / outletAbsPa
    if (slope >= 0) break
    const next = Math.max(chokeAbsPa, outletAbsPa - excess(outletAbsPa) / slope)
    const settled = Math.abs(next - outletAbsPa) <= 1e-15 * inletAbsPa
    outletAbsPa = next
    if (settled) break
  }
  return { ok: true, outletAbsPa }
}
