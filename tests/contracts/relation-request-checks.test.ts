import { describe, expect, it } from 'vitest'
import { printedTolerance, runChecks } from '../../shared/contracts/run-checks.ts'
import { relation } from '../../shared/core/relation.ts'
import type { PublishedCheck } from '../../shared/published/shape.ts'

const half = relation({
  id: 'half',
  title: 'Half a length',
  formula: 'l / 2',
  sources: ['ExactIdentity'],
  inputs: { length: { kind: 'length', words: 'length', range: { hardMin: 0 } } },
  outputs: {
    half: { kind: 'length', words: 'half' },
    size: { choices: ['short', 'long'], words: 'size' },
  },
  fn: ({ lengthM }) => ({ halfM: lengthM / 2, size: lengthM < 1 ? 'short' : 'long' }),
  checks: [],
})

const row = (
  length: string,
  expected: PublishedCheck['expected'],
  more: Partial<PublishedCheck> = {},
): PublishedCheck => ({
  relation: 'half',
  name: length,
  given: { length },
  expected,
  source: 'ExactIdentity',
  standing: 'published',
  ...more,
})
const run = async (...checks: readonly PublishedCheck[]) =>
  runChecks([half], { table: async () => ({ checks }) })

describe('half of the last printed digit', () => {
  it.each([
    ['0.0174', 0.00005],
    ['7.9501E+4', 0.5],
    ['3762', 0.5],
    ['-1.20e-3', 0.000005],
    ['.5', 0.05],
    ['tool', null],
    ['', null],
    ['-', null],
  ])('%s → %d', (printed, tolerance) => {
    const found = printedTolerance(printed)
    if (tolerance === null) expect(found).toBeNull()
    else expect(found).toBeCloseTo(tolerance, 12)
  })
})

describe('printed checks', () => {
  it('compare in the printed unit, a result an output', async () => {
    const { checks, passed, failed } = await run(
      row('7 ft', { halfM: { printed: '42.0', unit: 'in' }, size: { printed: 'long' } }),
    )
    expect({ passed, failed }).toEqual({ passed: 2, failed: 0 })
    expect(checks[0]).toMatchObject({
      relation: 'half',
      output: 'halfM',
      unit: 'in',
      expected: 42,
      tolerance: 0.05,
      pass: true,
    })
    expect(checks[0]?.computed).toBeCloseTo(42, 10)
    expect(checks[1]).toMatchObject({ expected: 'long', computed: 'long', deviation: null, tolerance: null })
  })

  it('fail past the last digit, in a wrong unit, and without an answer', async () => {
    const { checks } = await run(
      row('7 ft', { halfM: { printed: '42.1', unit: 'in' } }),
      row('7 ft', { halfM: { printed: '42.0', unit: 'psi' } }),
      row('7 psi', { halfM: { printed: '42.0', unit: 'in' } }),
      row('7 psi', { halfM: { printed: '42.0', unit: 'in' } }, { knownWrong: true }),
      row('7 ft', { size: { printed: 'short' } }),
      row('7 ft', { nothing: { printed: 'short' } }),
    )
    expect(checks.map((each) => each.pass)).toEqual([false, false, false, false, false, false])
  })

  it('take a wider tolerance where one is written down', async () => {
    const why = 'for the test'
    const { passed } = await run(
      row('7 ft', { halfM: { printed: '42.4', unit: 'in', tolerance: { absolute: 0.5 }, why } }),
      row('7 ft', { halfM: { printed: '42.4', unit: 'in', tolerance: { fraction: 0.01 }, why } }),
    )
    expect(passed).toBe(2)
  })

  it('hold a misprint to not being met', async () => {
    const { checks } = await run(
      row('7 ft', { halfM: { printed: '44.0', unit: 'in' } }, { knownWrong: true }),
      row('7 ft', { halfM: { printed: '42.0', unit: 'in' } }, { knownWrong: true }),
    )
    expect(checks.map((each) => each.pass)).toEqual([true, false])
  })

  it('leave rows of other relations alone', async () => {
    expect(await run(row('7 ft', { halfM: { printed: '1' } }, { relation: 'other' }))).toMatchObject({
      checks: [],
    })
  })
})
