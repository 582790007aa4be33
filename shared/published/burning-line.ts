import type { PublishedCheck } from './shape.ts'

/** Inches, psig, feet by the formula, feet kept (330 ft at the least). */
const ROWS = [
  ['2', '60', '35', '330'],
  ['4', '60', '71', '330'],
  ['8', '300', '316', '330'],
  ['12', '600', '670', '670'],
  ['24', '1000', '1730', '1730'],
] as const

export const checks: readonly PublishedCheck[] = ROWS.map(([bore, pressure, formula, keep]) => ({
  relation: 'burning-line-distance',
  name: `${bore} in at ${pressure} psi`,
  given: { bore: `${bore} in`, pressure: `${pressure} psi` },
  expected: { formulaM: { printed: formula, unit: 'ft' }, keepM: { printed: keep, unit: 'ft' } },
  source: 'PipelineEmergencyGuide',
  standing: 'second hand',
}))
