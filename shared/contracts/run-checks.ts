import type { AnyRelation, OutputField } from '../core/relation.ts'
import { propertyName } from '../core/relation.ts'
import type { Printed, PublishedCheck } from '../published/shape.ts'
import { unitOfKind } from '../quantities/unit-spelling.ts'
import { fromSi } from '../quantities/units.ts'
import { evaluateRelation } from './relation-request.ts'

/** One printed value against ours; numbers in the unit it is printed in. */
export type CheckResult = {
  readonly relation: string
  readonly name: string
  readonly given: Readonly<Record<string, string>>
  readonly output: string
  /** '' for plain numbers and words. */
  readonly unit: string
  readonly expected: number | string
  /** Null when the relation gave no answer at all. */
  readonly computed: number | string | null
  /** Ours less the printed one; null for words, and where there is nothing to compare. */
  readonly deviation: number | null
  readonly tolerance: number | null
  readonly pass: boolean
  readonly standing: PublishedCheck['standing']
  readonly source: PublishedCheck['source']
  /** A value known to be wrong in print: passes by not being met. */
  readonly knownWrong?: true
}
export type ChecksRun = {
  readonly passed: number
  readonly failed: number
  readonly checks: readonly CheckResult[]
}
export type PrintedTables = Readonly<
  Record<string, () => Promise<{ readonly checks: readonly PublishedCheck[] }>>
>

const PRINTED_NUMBER = /^[-+−]?\d*\.?(\d*)(?:[eE]([-+]?\d+))?$/
/** A value half a digit away is still met, and binary fractions must not decide it. */
const ROUNDING = 1e-9

/** Half of the last printed digit: '0.0174' → 0.00005, '7.9501E+4' → 0.5, '3762' → 0.5; null for words. */
export function printedTolerance(printed: string): number | null {
  const match = PRINTED_NUMBER.exec(printed.trim())
  if (!match || !/\d/.test(printed)) return null
  const [, fraction = '', exponent = '0'] = match
  return 0.5 * 10 ** (Number(exponent) - fraction.length)
}

const printedNumber = (printed: string): number => Number(printed.trim().replace('−', '-'))

/** Every relation given against every row of the tables that speaks of it. */
export async function runChecks(
  relations: readonly AnyRelation[],
  tables: PrintedTables,
): Promise<ChecksRun> {
  const checks: CheckResult[] = []
  for (const load of Object.values(tables)) {
    const table = await load()
    checks.push(...table.checks.flatMap((check) => checkRow(relations, check)))
  }
  const passed = checks.filter((each) => each.pass).length
  return { passed, failed: checks.length - passed, checks }
}

function checkRow(relations: readonly AnyRelation[], check: PublishedCheck): readonly CheckResult[] {
  const relation = relations.find((each) => each.id === check.relation)
  if (!relation) return []
  const found = evaluateRelation(relation, check.given)
  const outputs: Readonly<Record<string, number | string | null>> = found.ok ? found.value.outputs : {}
  return Object.entries(check.expected).map(([output, printed]) => {
    const field = Object.entries<OutputField>(relation.outputs).find(
      ([key, each]) => propertyName(key, each) === output,
    )?.[1]
    return {
      ...described(check, output, printed),
      ...compared(field, outputs[output] ?? undefined, printed, check.knownWrong === true),
    }
  })
}

const described = (check: PublishedCheck, output: string, printed: Printed) => ({
  relation: check.relation,
  name: check.name,
  given: check.given,
  output,
  unit: printed.unit ?? '',
  standing: check.standing,
  source: check.source,
  ...(check.knownWrong ? { knownWrong: check.knownWrong } : {}),
})

type Compared = Pick<CheckResult, 'expected' | 'computed' | 'deviation' | 'tolerance' | 'pass'>

function compared(
  field: OutputField | undefined,
  value: number | string | undefined,
  printed: Printed,
  knownWrong: boolean,
): Compared {
  const last = printedTolerance(printed.printed)
  if (field === undefined || !('kind' in field) || last === null) {
    const met = value !== undefined && String(value) === printed.printed
    const computed = value ?? null
    return {
      expected: printed.printed,
      computed,
      deviation: null,
      tolerance: null,
      pass: passes(computed, met, knownWrong),
    }
  }
  const expected = printedNumber(printed.printed)
  const tolerance = toleranceOf(printed, expected, last)
  const computed = typeof value === 'number' ? inPrintedUnit(value, field, printed.unit) : null
  const deviation = computed === null ? null : computed - expected
  const met =
    deviation !== null &&
    Math.abs(deviation) <= tolerance + ROUNDING * Math.max(tolerance, 1e-6 * Math.abs(expected))
  return { expected, computed, deviation, tolerance, pass: passes(computed, met, knownWrong) }
}

/** No answer is never a pass: not even for a value that is not to be met. */
const passes = (computed: number | string | null, met: boolean, knownWrong: boolean): boolean =>
  computed !== null && met !== knownWrong

function toleranceOf(printed: Printed, expected: number, last: number): number {
  if (!printed.tolerance) return last
  return 'absolute' in printed.tolerance
    ? printed.tolerance.absolute
    : printed.tolerance.fraction * Math.abs(expected)
}

/** Null for a unit the output's kind does not have: such a row cannot pass. */
function inPrintedUnit(
  valueSi: number,
  field: Extract<OutputField, { kind: unknown }>,
  unit?: string,
): number | null {
  if (unit === undefined) return valueSi
  const known = unitOfKind(unit, field.kind)
  return known ? fromSi(valueSi, known) : null
}
