import type { PolyethyleneGrade } from '../../tables/pull-stress.ts'
import { PSI_PA, SAFE_PULL_STRESS, YIELD_PSI } from '../../tables/pull-stress.ts'
import { relation } from '../relation.ts'
import { pullStressLoad } from './pull-stress-load.ts'

/** Share of the yield a pull may use. */
const DESIGN_FACTOR = 0.4
const HOUR_S = 3600
/** Share left for a load held so long. */
const DURATION_FACTORS = [
  { upToS: HOUR_S, factor: 1 },
  { upToS: 12 * HOUR_S, factor: 0.95 },
  { upToS: 24 * HOUR_S, factor: 0.91 },
] as const
const LONGEST_FACTOR = 0.91

const durationFactor = (durationS: number): number =>
  DURATION_FACTORS.find((row) => durationS <= row.upToS)?.factor ?? LONGEST_FACTOR

/**
 * Allowable tensile load of polyethylene pipe pulled in, in the form of ASTM F1804, at 73 °F. Warmer pipe carries less and
 * the table for it is not in here: ask for the yield at pipe temperature. Cold pipe is not given more.
 */
export const pullInLimit = relation({
  id: 'pull-in-limit',
  title: 'Pull-in limit of polyethylene pipe',
  formula: 'F = 0.40·f(t)·yield·π·D²·(1/DR − 1/DR²)',
  sources: ['AstmF1804'],
  inputs: {
    outsideDiameter: {
      kind: 'diameter',
      words: 'outside diameter of the pipe',
      range: { min: 0.01, max: 0.33, hardMin: 0, hardMax: 3 },
    },
    dimensionRatio: {
      kind: 'ratio',
      words: 'outside diameter over least wall',
      range: { min: 6, max: 32.5, hardMin: 2, hardMax: 200 },
    },
    material: { choices: ['pe2708', 'pe3608', 'pe4710'], words: 'grade of polyethylene' },
    duration: {
      kind: 'duration',
      words: 'how long the load lasts',
      range: { min: 0, max: 24 * HOUR_S, hardMin: 0 },
    },
  },
  outputs: { force: { kind: 'force', words: 'pull not to be passed' } },
  fn: ({ outsideDiameterM, dimensionRatio, material, durationS }) => {
    const stressPa = DESIGN_FACTOR * durationFactor(durationS) * YIELD_PSI[material] * PSI_PA
    return { forceN: pullStressLoad.fn({ outsideDiameterM, dimensionRatio, stressPa }).forceN }
  },
  checks: ['pull-loads'],
  remarks: 'At 73 °F. The load of a gas pipe is held by a weak link rated at or under it.',
})

/** Safe pull stress of the handbook table at 73 °F; past 24 h the last row, which then flatters. */
export function safePullStressPa(material: PolyethyleneGrade, durationS: number): number {
  const { rows } = SAFE_PULL_STRESS
  const row = rows.find((each) => durationS <= each.upToH * HOUR_S) ?? rows[rows.length - 1]
  return (row?.psi[material] ?? 0) * PSI_PA
}

export type PullLimit = { readonly forceN: number; readonly basis: 'AstmF1804' | 'PpiHandbook' }

/** The lower of the two published bases, and which it is: they differ, and nobody here can say which is right. */
export function lowestPullLimit(
  outsideDiameterM: number,
  dimensionRatio: number,
  material: PolyethyleneGrade,
  durationS: number,
): PullLimit {
  const byStandard = pullInLimit.fn({ outsideDiameterM, dimensionRatio, material, durationS }).forceN
  const stressPa = safePullStressPa(material, durationS)
  const byHandbook = pullStressLoad.fn({ outsideDiameterM, dimensionRatio, stressPa }).forceN
  return byHandbook < byStandard
    ? { forceN: byHandbook, basis: 'PpiHandbook' }
    : { forceN: byStandard, basis: 'AstmF1804' }
}
