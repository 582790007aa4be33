import { expect } from 'vitest'
import type { AnyRelation, InputField } from '../../../shared/core/relation.ts'
import { propertyName } from '../../../shared/core/relation.ts'
import type { Printed, PublishedCheck } from '../../../shared/published/shape.ts'
import { unitOfKind } from '../../../shared/quantities/unit-spelling.ts'

const SPLIT = /^(-?[\d.]+(?:[eE][-+]?\d+)?)\s*(.*)$/

function toSi(text: string, field: InputField): unknown {
  if ('position' in field) return text.split(',').map(Number)
  if (!('kind' in field)) return text
  const parts = SPLIT.exec(text)
  const value = Number(parts?.[1])
  const unitName = parts?.[2] ?? ''
  if (unitName === '') return value
  const unit = unitOfKind(unitName, field.kind)
  if (!unit) throw new Error(`no unit ${unitName} for ${field.kind}`)
  return (value + unit.offset) * unit.factor
}

/** Half of the last printed digit, in the printed unit. */
function halfDigit(printed: string): number {
  const [digits = '', exponent = '0'] = printed.toLowerCase().split('e')
  const decimals = digits.split('.')[1]?.length ?? 0
  return 0.5 * 10 ** (Number(exponent) - decimals)
}

function allowed(wanted: Printed): number {
  if (!wanted.tolerance) return halfDigit(wanted.printed)
  return 'absolute' in wanted.tolerance
    ? wanted.tolerance.absolute
    : wanted.tolerance.fraction * Math.abs(Number(wanted.printed))
}

type Callable = {
  readonly fn: (given: Readonly<Record<string, unknown>>) => Readonly<Record<string, number | string>>
}

/** How far each output lies from print, as a share of what is allowed; `stretched` multiplies the output first. */
export function distances(
  found: AnyRelation,
  check: PublishedCheck,
  stretched = 1,
): ReadonlyMap<string, number> {
  const given: Record<string, unknown> = {}
  for (const [key, field] of Object.entries<InputField>(found.inputs)) {
    const text = check.given[key]
    const name = propertyName(key, field)
    if (text !== undefined) given[name] = toSi(text, field)
    else if ('default' in field) given[name] = field.default
    else throw new Error(`${check.relation} ${check.name} gives no ${key}`)
  }
  const outputs = (found as unknown as Callable).fn(given)
  const result = new Map<string, number>()
  for (const [key, field] of Object.entries(found.outputs)) {
    const name = propertyName(key, field)
    const wanted = check.expected[name]
    const value = outputs[name]
    if (!wanted || !('kind' in field) || typeof value !== 'number') continue
    const unit = wanted.unit === undefined ? null : unitOfKind(wanted.unit, field.kind)
    if (wanted.unit !== undefined && !unit) throw new Error(`no unit ${wanted.unit} for ${field.kind}`)
    const inPrint = unit ? (value * stretched) / unit.factor - unit.offset : value * stretched
    result.set(name, Math.abs(inPrint - Number(wanted.printed)) / (allowed(wanted) * (1 + 1e-9)))
  }
  for (const name of Object.keys(check.expected)) {
    if (!result.has(name)) throw new Error(`${check.relation} has no output ${name}`)
  }
  return result
}

/** A check is met, or not met when it is known to be wrong in print. */
export function expectPrinted(found: AnyRelation, check: PublishedCheck): void {
  const worst = Math.max(...distances(found, check).values())
  if (check.knownWrong) expect(worst, `${check.relation}: ${check.name} is wrong in print`).toBeGreaterThan(1)
  else expect(worst, `${check.relation}: ${check.name}`).toBeLessThanOrEqual(1)
}

/** Every numeric output must have a check that a stretch of two per cent breaks. */
export function expectTight(found: AnyRelation, checks: readonly PublishedCheck[]): void {
  for (const [key, field] of Object.entries(found.outputs)) {
    if (!('kind' in field)) continue
    const name = propertyName(key, field)
    const caught = checks
      .filter((check) => !check.knownWrong && name in check.expected)
      .some((check) => (distances(found, check, 1.02).get(name) ?? 0) > 1)
    expect(caught, `${found.id}.${name} has a check that notices two per cent`).toBe(true)
  }
}
