import type { AirChangeCode, OtherCompressor } from './air-changes.ts'
import { airChanges } from './air-changes.ts'
import type { CrossingInput } from './crossing-input.ts'
import type { Plan } from './plan.ts'
import { planCrossing } from './plan-crossing.ts'

/** What a change would bring, beside the crossing as it is. */
export type AirFix = {
  readonly code: AirChangeCode
  readonly values: Readonly<Record<string, number | string>>
  readonly toolGaugePa: number
  readonly gainPa: number
  /** Hammering of a likely bore; null where too few arrive. */
  readonly hammerS: number | null
  /** Hammering it saves; null where either is not known. */
  readonly savedS: number | null
  /** Likely price of the crossing; null without rates. */
  readonly p50MinorUnits: number | null
  readonly savedMinorUnits: number | null
}

export const FIX_ORDERS = ['minutes', 'pressure', 'money'] as const
export type FixOrder = (typeof FIX_ORDERS)[number]

/** 1 psi: a change that brings less is none. */
const LEAST_GAIN_PA = 6895
/** A change is looked for in so many at most: a long shop list is cut, the nearest machines first. */
const MOST_COMPRESSORS = 6

const less = (before: number | null, after: number | null): number | null =>
  before === null || after === null ? null : before - after

/**
 * What would help the air of a crossing, each change planned anew: pressure at the tool, hammering and price. A regulator is
 * offered where there is too much; every other change must bring a psi or a minute of sense.
 */
export function airFixes(
  input: CrossingInput,
  plan: Plan,
  fleet: readonly OtherCompressor[] = [],
): readonly AirFix[] {
  const byNearness = [...fleet].sort(
    (a, b) =>
      Math.abs(a.freeAirDeliveryM3PerS - input.air.compressor.freeAirDeliveryM3PerS) -
      Math.abs(b.freeAirDeliveryM3PerS - input.air.compressor.freeAirDeliveryM3PerS),
  )
  const mostGaugePa = plan.air.mostAtToolGaugePa ?? plan.air.unloadedGaugePa
  const changes = airChanges(input, plan.bore.lengthM, mostGaugePa, byNearness.slice(0, MOST_COMPRESSORS))
  return changes.flatMap(({ code, values, air }): readonly AirFix[] => {
    const changed = planCrossing({ ...input, air })
    if (!changed.ok) return []
    const { air: found, run, price } = changed.value
    const gainPa = found.toolGaugePa - plan.air.toolGaugePa
    if (code !== 'fit-regulator' && gainPa < LEAST_GAIN_PA) return []
    const hammerS = run.hammerTimeS?.p50 ?? null
    const p50MinorUnits = price?.p50MinorUnits ?? null
    return [
      {
        code,
        values,
        toolGaugePa: found.toolGaugePa,
        gainPa,
        hammerS,
        savedS: less(plan.run.hammerTimeS?.p50 ?? null, hammerS),
        p50MinorUnits,
        savedMinorUnits: less(plan.price?.p50MinorUnits ?? null, p50MinorUnits),
      },
    ]
  })
}

const KEY: Readonly<Record<FixOrder, (fix: AirFix) => number>> = {
  minutes: (fix) => fix.savedS ?? 0,
  pressure: (fix) => fix.gainPa,
  money: (fix) => fix.savedMinorUnits ?? 0,
}

/** Best first; what is equal goes by pressure. Too much pressure stands before all: it is a matter of ratings. */
export const rankedFixes = (fixes: readonly AirFix[], order: FixOrder): readonly AirFix[] =>
  [...fixes].sort((a, b) => {
    const mustFirst = Number(b.code === 'fit-regulator') - Number(a.code === 'fit-regulator')
    return mustFirst || KEY[order](b) - KEY[order](a) || b.gainPa - a.gainPa
  })
