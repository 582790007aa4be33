import type { PublishedCheck } from './shape.ts'

const PAS = { source: 'Pas128', standing: 'second hand' } as const
const AS = { source: 'As5488', standing: 'second hand' } as const
const ASCE = { source: 'Asce38', standing: 'second hand' } as const

/** Class, depth, plan in mm, depth in m. */
const PAS_128 = [
  ['B1', '1.0 m', '150', '0.15'],
  ['B2', '1.0 m', '250', '0.40'],
  ['B1', '1.5 m', '150', '0.225'],
  ['B2', '1.5 m', '250', '0.60'],
  ['B1', '0.6 m', '150', '0.15'],
  ['B2', '0.6 m', '250', '0.25'],
] as const

const mm = (printed: string) => ({ printed, unit: 'mm' })

export const checks: readonly PublishedCheck[] = [
  ...PAS_128.map(
    ([level, depth, plan, depthError]): PublishedCheck => ({
      relation: 'position-tolerance',
      name: `PAS 128 ${level} at ${depth}`,
      given: { scheme: 'pas-128', level, depth },
      expected: { planM: mm(plan), depthErrorM: { printed: depthError, unit: 'm' } },
      ...PAS,
    }),
  ),
  {
    relation: 'position-tolerance',
    name: 'PAS 128 A, verified',
    given: { scheme: 'pas-128', level: 'A', depth: '1 m' },
    expected: { planM: mm('50'), depthErrorM: mm('25') },
    ...PAS,
  },
  {
    relation: 'position-tolerance',
    name: 'PAS 128 B3, plan only',
    given: { scheme: 'pas-128', level: 'B3', depth: '1 m' },
    expected: { planM: mm('500') },
    ...PAS,
  },
  {
    relation: 'position-tolerance',
    name: '150 mm and 250 mm in inches',
    given: { scheme: 'pas-128', level: 'B2', depth: '0.6 m' },
    expected: { planM: { printed: '9.84', unit: 'in' }, depthErrorM: { printed: '9.84', unit: 'in' } },
    ...PAS,
  },
  {
    relation: 'position-tolerance',
    name: 'AS 5488 B',
    given: { scheme: 'as-5488', level: 'B', depth: '1 m' },
    expected: { planM: { printed: '11.81', unit: 'in' }, depthErrorM: { printed: '19.69', unit: 'in' } },
    ...AS,
  },
  {
    relation: 'position-tolerance',
    name: 'AS 5488 A',
    given: { scheme: 'as-5488', level: 'A', depth: '1 m' },
    expected: { planM: mm('50'), depthErrorM: mm('50') },
    ...AS,
  },
  {
    relation: 'position-tolerance',
    name: 'ASCE 38 A, at that point only',
    given: { scheme: 'asce-38', level: 'A', depth: '1 m' },
    expected: { depthErrorM: { printed: '1.18', unit: 'in' } },
    ...ASCE,
  },
]
