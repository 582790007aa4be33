import type { PublishedCheck } from './shape.ts'

/** Bore in inches and pounds at 100 psi: pressure times area, worked by hand. */
const AT_100_PSI = [
  ['0.5', '19.6'],
  ['0.75', '44.2'],
  ['1.0', '78.5'],
  ['1.25', '122.7'],
  ['1.5', '176.7'],
  ['2.0', '314.2'],
] as const

export const checks: readonly PublishedCheck[] = AT_100_PSI.map(([bore, printed]) => ({
  relation: 'hose-thrust',
  name: `${bore} in at 100 psi`,
  given: { bore: `${bore} in`, pressure: '100 psi' },
  expected: { forceN: { printed, unit: 'lbf' } },
  source: 'ExactIdentity',
  standing: 'published',
}))
