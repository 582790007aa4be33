/**
 * Darcy friction factors of a round pipe. Re: Reynolds number; ε/D: wall roughness over bore; both without unit.
 * Worst departure from Colebrook over Re 5e3–1e7 and ε/D 0–0.05: Serghides 0.003 %, Haaland 1.4 %, Swamee–Jain 3.0 %,
 * Churchill 3.0 %.
 */
export const FRICTION_METHODS = ['colebrook', 'serghides', 'haaland', 'swamee-jain', 'churchill'] as const
export type FrictionMethod = (typeof FRICTION_METHODS)[number]

/** Below this Re the flow is laminar: f = 64/Re. Between it and 4000 it may be either; the turbulent, higher, value is given. */
export const LAMINAR_BELOW_REYNOLDS = 2300

type Formula = (reynolds: number, relativeRoughness: number) => number

/** f = [1.8 log10( (ε/3.7D)^1.11 + 6.9/Re )]^-2, Haaland 1983. */
const haaland: Formula = (reynolds, relativeRoughness) =>
  (1.8 * Math.log10((relativeRoughness / 3.7) ** 1.11 + 6.9 / reynolds)) ** -2

/** 1/√f = −2 log10( ε/3.7D + 2.51/(Re √f) ), Colebrook 1939: Newton on x = 1/√f, which rises without a bend to overshoot. */
const colebrook: Formula = (reynolds, relativeRoughness) => {
  const rough = relativeRoughness / 3.7
  const smooth = 2.51 / reynolds
  let x = haaland(reynolds, relativeRoughness) ** -0.5
  for (let step = 0; step < 12; step++) {
    const inside = rough + smooth * x
    const change = (x + 2 * Math.log10(inside)) / (1 + ((2 / Math.LN10) * smooth) / inside)
    x -= change
    if (Math.abs(change) <= 1e-15 * x) break
  }
  return x ** -2
}

/** Three steps of Colebrook's own iteration, sharpened by Aitken's rule, Serghides 1984. */
const serghides: Formula = (reynolds, relativeRoughness) => {
  const rough = relativeRoughness / 3.7
  const a = -2 * Math.log10(rough + 12 / reynolds)
  const b = -2 * Math.log10(rough + (2.51 * a) / reynolds)
  const c = -2 * Math.log10(rough + (2.51 * b) / reynolds)
  const bend = c - 2 * b + a
  // Far into fully rough flow the three steps agree to the last bit and there is nothing left to sharpen.
  return (bend === 0 ? c : a - (b - a) ** 2 / bend) ** -2
}

/** f = 0.25 / log10²( ε/3.7D + (6.97/Re)^0.9 ), Swamee and Jain 1976; 6.97^0.9 is the 5.74 of most prints. */
const swameeJain: Formula = (reynolds, relativeRoughness) =>
  0.25 / Math.log10(relativeRoughness / 3.7 + (6.97 / reynolds) ** 0.9) ** 2

/** f = 8 [ (8/Re)^12 + (A + B)^-1.5 ]^(1/12), Churchill 1977: laminar, turbulent and between in one curve. */
const churchill: Formula = (reynolds, relativeRoughness) => {
  const a = (2.457 * Math.log((7 / reynolds) ** 0.9 + 0.27 * relativeRoughness)) ** 16
  const b = (37_530 / reynolds) ** 16
  return 8 * ((8 / reynolds) ** 12 + (a + b) ** -1.5) ** (1 / 12)
}

const TURBULENT: Readonly<Record<FrictionMethod, Formula>> = {
  colebrook,
  serghides,
  haaland,
  'swamee-jain': swameeJain,
  churchill,
}

/** Darcy friction factor; 64/Re below Re 2300 (Churchill's curve covers that itself). */
export function darcyFrictionFactor(
  reynolds: number,
  relativeRoughness: number,
  method: FrictionMethod,
): number {
  if (reynolds < LAMINAR_BELOW_REYNOLDS && method !== 'churchill') return 64 / reynolds
  return TURBULENT[method](reynolds, relativeRoughness)
}
