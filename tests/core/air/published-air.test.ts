import { describe, expect, it } from 'vitest'
import { airDensityRatio } from '../../../shared/core/air/air-density-ratio.ts'
import { airLossFirstOrder } from '../../../shared/core/air/air-loss-first-order.ts'
import { airOperatingPoint } from '../../../shared/core/air/air-operating-point.ts'
import { compressorDelivery } from '../../../shared/core/air/compressor-delivery.ts'
import { frictionFactor } from '../../../shared/core/air/friction-factor.ts'
import { hoseFrictionLoss } from '../../../shared/core/air/hose-friction-loss.ts'
import { orificeDischarge } from '../../../shared/core/air/orifice-discharge.ts'
import { receiverTime } from '../../../shared/core/air/receiver-time.ts'
import { standardAtmosphere } from '../../../shared/core/air/standard-atmosphere.ts'
import type { AnyRelation, InputField } from '../../../shared/core/relation.ts'
import { propertyName } from '../../../shared/core/relation.ts'
import { PUBLISHED } from '../../../shared/published/catalogue.ts'
import type { Printed, PublishedCheck } from '../../../shared/published/shape.ts'
import { parseQuantity } from '../../../shared/quantities/parse-quantity.ts'
import { unitOfKind } from '../../../shared/quantities/unit-spelling.ts'
import { fromSi } from '../../../shared/quantities/units.ts'

function inSi(text: string, field: InputField): unknown {
  if (!('kind' in field)) return text
  const parsed = parseQuantity(text, field.kind)
  if (!parsed.ok) throw new Error(`${text} is not read: ${JSON.stringify(parsed.issue)}`)
  return parsed.valueSi
}

function evaluate(
  found: AnyRelation,
  check: PublishedCheck,
): Readonly<Record<string, number | string | null>> {
  const given: Record<string, unknown> = {}
  for (const [key, field] of Object.entries<InputField>(found.inputs)) {
    const text = check.given[key]
    if (text !== undefined) given[propertyName(key, field)] = inSi(text, field)
    else if ('default' in field) given[propertyName(key, field)] = field.default
    else throw new Error(`${check.name} gives no ${key}`)
  }
  return found.fn(given as never)
}

function allowed({ printed, tolerance }: Printed): number {
  if (tolerance && 'absolute' in tolerance) return tolerance.absolute
  if (tolerance) return tolerance.fraction * Math.abs(Number(printed))
  return 0.5 * 10 ** -(printed.split('.')[1]?.length ?? 0)
}

/** Whether each output of the relation that the check prints is met, after multiplying it by `stretch`. */
function met(found: AnyRelation, check: PublishedCheck, stretch: number): Readonly<Record<string, boolean>> {
  const outputs = evaluate(found, check)
  const fields = Object.entries(found.outputs).map(
    ([key, field]) => [propertyName(key, field), field] as const,
  )
  return Object.fromEntries(
    Object.entries(check.expected).map(([name, printed]) => {
      const field = fields.find(([each]) => each === name)?.[1]
      const value = outputs[name]
      if (field === undefined || value === undefined || value === null)
        throw new Error(`${found.id} has no output ${name}`)
      if (!('kind' in field) || typeof value === 'string') return [name, value === printed.printed]
      const unit = printed.unit === undefined ? undefined : unitOfKind(printed.unit, field.kind)
      if (printed.unit !== undefined && !unit) throw new Error(`${printed.unit} is no unit of ${field.kind}`)
      const inPrint = unit ? fromSi(value * stretch, unit) : value * stretch
      return [name, Math.abs(inPrint - Number(printed.printed)) <= allowed(printed) * (1 + 1e-9)]
    }),
  )
}

const RELATIONS: readonly AnyRelation[] = [
  airDensityRatio,
  airLossFirstOrder,
  airOperatingPoint,
  compressorDelivery,
  frictionFactor,
  hoseFrictionLoss,
  orificeDischarge,
  receiverTime,
  standardAtmosphere,
]

async function ownChecks(found: AnyRelation): Promise<PublishedCheck[]> {
  const tables = await Promise.all(
    found.checks.map((name) => PUBLISHED[name]?.() ?? Promise.reject(new Error(`no table ${name}`))),
  )
  return tables.flatMap((table) => table.checks).filter((check) => check.relation === found.id)
}

describe.each(RELATIONS)('$id against print', async (found) => {
  const checks = await ownChecks(found)

  it.each(checks)('$name', (check) => {
    const right = Object.values(met(found, check, 1)).every((each) => each)
    const printed = Object.entries(check.expected).map(([name, { printed: digits, unit }]) => [
      name,
      digits,
      unit,
    ])
    expect(right, JSON.stringify({ printed, computed: evaluate(found, check) })).toBe(
      check.knownWrong !== true,
    )
  })

  it('has for every number a check that two per cent breaks', () => {
    for (const [key, field] of Object.entries(found.outputs)) {
      if (!('kind' in field)) continue
      const name = propertyName(key, field)
      const broken = checks.some(
        (check) => check.knownWrong !== true && met(found, check, 1.02)[name] === false,
      )
      expect(broken, name).toBe(true)
    }
  })

  it('gives a reason for every tolerance that is not half a digit', () => {
    for (const { expected } of checks) {
      for (const printed of Object.values(expected)) {
        if (printed.tolerance) expect(printed.why?.length ?? 0).toBeGreaterThan(20)
      }
    }
  })
})
