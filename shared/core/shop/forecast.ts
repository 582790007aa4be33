import {
  PRIOR_SPREAD,
  PRIOR_WEIGHT_S,
  USUAL_ALLOWANCE_M,
  USUAL_LIFE_S,
  USUAL_SHAPE,
} from '../../tables/shop-house-values.ts'
import { driftToLimit } from '../wear/drift-to-limit.ts'
import { chanceLimitPassed, learnWearRate, useToLimitS, type WearInterval } from '../wear/wear-increments.ts'
import { fitWeibull, scaleForShape } from '../wear/weibull-likelihood.ts'
import type { WearDriver } from './template.ts'

/** What is known of the use a part has left, all on its own clock. */
export type PartForecast = {
  readonly by: 'wear' | 'lives' | 'drift' | 'usual-life'
  /** null: no finite bound yet, which is an answer. */
  readonly p10S: number | null
  readonly p50S: number | null
  readonly p90S: number | null
  /** How many readings or lives it stands on. */
  readonly count: number
  /** Chance that the part is past its limit after so much more use; null where it cannot be said. */
  readonly chanceAfter: ((useS: number) => number) | null
}

/** A shop with fewer ended lives than this is given the shape. */
const LIVES_FOR_A_SHAPE = 5
const DECILES = [0.1, 0.5, 0.9] as const
/** Three points make a line that can be wrong; two cannot. */
const READINGS_FOR_A_LINE = 3
const BAND = 0.8

/** From its own measured wear, with the house's rate as what is expected before the first reading. */
export function forecastByWear(
  driver: WearDriver,
  allowanceM: number | null,
  leftM: number,
  intervals: readonly WearInterval[],
): PartForecast {
  const rateMPerS = (allowanceM ?? USUAL_ALLOWANCE_M) / USUAL_LIFE_S[driver]
  const known = learnWearRate({ rateMPerS, weightS: PRIOR_WEIGHT_S, spread: PRIOR_SPREAD }, intervals)
  const [p10S = null, p50S = null, p90S = null] = DECILES.map((p) => useToLimitS(known, leftM, p))
  return {
    by: 'wear',
    p10S,
    p50S,
    p90S,
    count: intervals.length,
    chanceAfter: (useS) => chanceLimitPassed(known, leftM, useS),
  }
}

export type Lives = { readonly endedS: readonly number[]; readonly runningS: readonly number[] }

/**
 * From lives of such parts over the fleet, for what is judged in grades: with few of them ended the shape is the house's;
 * with none ended there is no bound yet.
 */
export function forecastByLives({ endedS, runningS }: Lives, ageS: number): PartForecast {
  const ended = endedS.filter((each) => each > 0)
  const running = runningS.filter((each) => each > 0)
  const none = { p10S: null, p50S: null, p90S: null, chanceAfter: null }
  if (ended.length === 0) return { by: 'lives', ...none, count: 0 }
  const isFitted = ended.length >= LIVES_FOR_A_SHAPE && new Set(ended).size > 1
  const { shape, scale } = isFitted
    ? fitWeibull(ended, running)
    : { shape: USUAL_SHAPE, scale: scaleForShape(ended, running, USUAL_SHAPE) }
  const hazard = (useS: number): number => (useS / scale) ** shape
  const leftAt = (p: number): number => scale * (hazard(ageS) - Math.log1p(-p)) ** (1 / shape) - ageS
  const [p10S = null, p50S = null, p90S = null] = DECILES.map(leftAt)
  return {
    by: 'lives',
    p10S,
    p50S,
    p90S,
    count: ended.length,
    chanceAfter: (useS) => -Math.expm1(hazard(ageS) - hazard(ageS + useS)),
  }
}

export type SizeReading = { readonly useS: number; readonly valueM: number }

/** A size that drifts to one of two limits: the one it drifts towards, by a line read backwards. */
export function forecastByDrift(
  nominalM: number,
  toleranceM: number,
  readings: readonly SizeReading[],
): PartForecast {
  const none: PartForecast = {
    by: 'drift',
    p10S: null,
    p50S: null,
    p90S: null,
    count: readings.length,
    chanceAfter: null,
  }
  const first = readings[0]
  const last = readings.at(-1)
  const uses = new Set(readings.map(({ useS }) => useS))
  if (first === undefined || last === undefined || uses.size < READINGS_FOR_A_LINE) return none
  const limit = last.valueM < first.valueM ? nominalM - toleranceM : nominalM + toleranceM
  const found = driftToLimit.fn({
    times: readings.map(({ useS }) => useS),
    values: readings.map(({ valueM }) => valueM),
    limit,
    confidence: BAND,
    of: 'reading',
  })
  const left = (at: number | null): number | null => (at === null ? null : Math.max(0, at - last.useS))
  if (found.bound === 'none-yet') return none
  return { ...none, p10S: left(found.from), p50S: left(found.at), p90S: left(found.to) }
}
