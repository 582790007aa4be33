import type { PublishedCheck } from './shape.ts'

/** Columns: example, Reynolds number, relative roughness, Darcy friction factor. */
const ROWS = [
  ['Example 8-3, water in a steel pipe', '126400', '0.000042', '0.0174'],
  ['Example 8-4, air in a smooth duct', '100800', '0', '0.0180'],
] as const

export const checks: readonly PublishedCheck[] = ROWS.map(([name, reynolds, relativeRoughness, printed]) => ({
  relation: 'friction-factor',
  name,
  given: { reynolds, relativeRoughness, method: 'colebrook' },
  expected: { frictionFactor: { printed } },
  source: 'CengelCimbala',
  standing: 'second hand',
}))
