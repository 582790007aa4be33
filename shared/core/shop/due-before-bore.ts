import { USUAL_COST_RATIO } from '../../tables/shop-house-values.ts'
import { dayOf, readCivil, writeDay } from '../digsafe/civil.ts'
import type { PartForecast } from './forecast.ts'

type BoreChance = {
  /** Chance that the limit has been passed by the end of this bore. */
  readonly byEnd: number
  /** Chance that it is passed during this bore, given that it was not before. */
  readonly during: number
  /** Above this a service first costs less. */
  readonly threshold: number
}
export type DueBefore = {
  readonly bores: readonly BoreChance[]
  /** Place of the bore before which to service, from 0; null: none of these. */
  readonly serviceBefore: number | null
}

/**
 * Before which planned bore a part is to be serviced: the first whose chance of passing the limit is above
 * (c_p/(c_f − c_p)) × its share of the life left, the least that the rule of cheapest age comes to.
 */
export function dueBeforeBore(
  forecast: PartForecast,
  usesS: readonly number[],
  costRatio: number = USUAL_COST_RATIO,
): DueBefore | null {
  const { chanceAfter, p50S } = forecast
  if (chanceAfter === null) return null
  let useS = 0
  let before = chanceAfter(0)
  const bores = usesS.map((eachS): BoreChance => {
    useS += eachS
    const byEnd = Math.max(before, chanceAfter(useS))
    const during = before >= 1 ? 1 : (byEnd - before) / (1 - before)
    before = byEnd
    const share = p50S === null || p50S <= 0 ? 0 : eachS / p50S
    const threshold = costRatio > 1 ? Math.min(1, share / (costRatio - 1)) : 1
    return { byEnd, during, threshold }
  })
  const found = bores.findIndex(({ during, threshold }) => during > threshold)
  return { bores, serviceBefore: found < 0 ? null : found }
}

/** The last day to order, for a part that takes so many days to come; null for a day that is none. */
export function orderBy(neededOn: string, leadDays: number): string | null {
  const minute = readCivil(neededOn)
  return minute === null ? null : writeDay(dayOf(minute) - leadDays)
}
