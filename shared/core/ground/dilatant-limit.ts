import { PreconditionError } from '../outcome.ts'

/** Terms of the series kept at most; sizes met in the field need fewer than 40. */
const MOST_TERMS = 200
const MOST_STEPS = 100
/** Below this distance between n and γ the quotient (e^x − 1)/x loses digits unless expm1 is used. */
const NEAR = 0.05

/** (e^(kx) − 1)/k without loss of digits as k → 0, where it is x. `power` is e^(kx). */
function risen(k: number, x: number, power: number): number {
  if (Math.abs(k) > NEAR) return (power - 1) / k
  return k === 0 ? x : Math.expm1(k * x) / k
}

/** Σ ξⁿ/n! (R^(n−γ) − 1)/(n−γ), with x = ln R. */
function series(x: number, gamma: number, xi: number): number {
  const ratio = Math.exp(x)
  let power = Math.exp(-gamma * x)
  let coefficient = 1
  let sum = 0
  for (let n = 0; n < MOST_TERMS; n += 1) {
    const term = coefficient * risen(n - gamma, x, power)
    sum += term
    if (n > gamma && Math.abs(term) <= 1e-16 * Math.abs(sum)) break
    power *= ratio
    coefficient *= xi / (n + 1)
  }
  return sum
}

/** Root ln R of series = target: bracketed upward, then Newton kept inside the bracket (slope is closed-form). */
function lnRatio(gamma: number, xi: number, target: number): number {
  let low = 0
  let high = 0.25
  let steps = 0
  while (series(high, gamma, xi) < target) {
    low = high
    high += 0.25
    steps += 1
    if (steps > MOST_STEPS) throw new PreconditionError('cavity limit: no bracket')
  }
  let x = (low + high) / 2
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const miss = series(x, gamma, xi) - target
    if (miss > 0) high = x
    else low = x
    const slope = Math.exp(-gamma * x + xi * Math.exp(x))
    let next = x - miss / slope
    if (!(next > low && next < high)) next = (low + high) / 2
    if (Math.abs(next - x) < 1e-14 * (1 + x) || high - low < 1e-14) return next
    x = next
  }
  return x
}

/**
 * R of Yu & Houlsby 1991: the ratio of outer elastic–plastic radii that fixes the limit pressure.
 * `shapeIndex` m is 1 for a cylinder, 2 for a sphere. Stresses in one unit of the caller's, angles in radians; friction above zero.
 */
export function expansionRatio(
  frictionAngleRad: number,
  dilationAngleRad: number,
  cohesionPa: number,
  youngsModulusPa: number,
  poissonRatio: number,
  insituStressPa: number,
  shapeIndex: 1 | 2,
): number {
  const m = shapeIndex
  const nu = poissonRatio
  const alpha = (1 + Math.sin(frictionAngleRad)) / (1 - Math.sin(frictionAngleRad))
  const beta = (1 + Math.sin(dilationAngleRad)) / (1 - Math.sin(dilationAngleRad))
  const strength =
    (2 * cohesionPa * Math.cos(frictionAngleRad)) / (1 - Math.sin(frictionAngleRad)) +
    (alpha - 1) * insituStressPa
  const gamma = (alpha * (beta + m)) / (m * (alpha - 1) * beta)
  const delta = (strength * (1 + nu)) / ((m + alpha) * youngsModulusPa)
  if (!(delta < 1)) throw new PreconditionError('cavity limit: soil too soft for its stress')
  const eta = Math.exp(
    ((beta + m) * (1 - 2 * nu) * strength * (1 + (2 - m) * nu)) / (youngsModulusPa * (alpha - 1) * beta),
  )
  const bulk = 1 - nu * nu * (2 - m)
  const xi =
    ((bulk * (1 + m) * delta) / ((1 + nu) * (alpha - 1) * beta)) *
    (alpha * beta + m * (1 - 2 * nu) + 2 * nu - (m * nu * (alpha + beta)) / (1 - nu * (2 - m)))
  return Math.exp(lnRatio(gamma, xi, (eta / gamma) * (1 - delta) ** ((beta + m) / beta)))
}

/** Limit pressure for a known R; the rest as above. */
export function pressureOfRatio(
  ratio: number,
  frictionAngleRad: number,
  cohesionPa: number,
  insituStressPa: number,
  shapeIndex: 1 | 2,
): number {
  const m = shapeIndex
  const alpha = (1 + Math.sin(frictionAngleRad)) / (1 - Math.sin(frictionAngleRad))
  const yieldPa = (2 * cohesionPa * Math.cos(frictionAngleRad)) / (1 - Math.sin(frictionAngleRad))
  const strength = yieldPa + (alpha - 1) * insituStressPa
  return ((ratio * alpha * (1 + m) * strength) / (m + alpha) - yieldPa) / (alpha - 1)
}
