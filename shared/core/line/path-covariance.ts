/**
 * How an unguided tool wanders, in one plane: the heading starts with an aiming error N(0, aim²) and then drifts as a
 * random walk of intensity drift² (rad² per metre); the offset is the heading summed along the way.
 */
export type Wander = {
  /** Standard deviation of the first heading, rad. */
  readonly aimRad: number
  /** Drift of the heading, rad per square root of a metre. */
  readonly driftRadPerSqrtM: number
}

/** 5 mm over a body of 1.2 m. */
export const AIM_DEFAULT_RAD = 4.167e-3
/** With the aim above: about 1 % of length expected and 2 % nine times in ten, for a bore of 15 m. */
export const DRIFT_DEFAULT_RAD_PER_SQRT_M = 5.1e-3

/** Cov(y(s), y(t)) = aim²·s·t + drift²·(s²t/2 − s³/6) for s ≤ t, in m²; with s = t the variance aim²·s² + drift²·s³/3. */
export function pathCovarianceM2(wander: Wander, firstM: number, secondM: number): number {
  const near = Math.min(firstM, secondM)
  const far = Math.max(firstM, secondM)
  return (
    wander.aimRad ** 2 * near * far + wander.driftRadPerSqrtM ** 2 * ((near ** 2 * far) / 2 - near ** 3 / 6)
  )
}
