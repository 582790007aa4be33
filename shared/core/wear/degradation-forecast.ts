import { relation } from '../relation.ts'
import { learnWearRate, useToLimitS } from './wear-increments.ts'

/** √0.15: a spread of 39 % from tool to tool, with which ten hours are the right weight of a guessed rate. */
const USUAL_SPREAD = 0.3872983346207417

/**
 * Use left until a part reaches its limit, from what is expected of it and its own readings. A null P90 is an answer:
 * the readings are too few or too scattered for an upper bound.
 */
export const degradationForecast = relation({
  id: 'degradation-forecast',
  title: 'Use left until a worn part reaches its limit',
  formula:
    'y_i ~ N(r x_i, s² x_i); (R − m h)² = t² (b/a)(h + h²/X), X = x₀ + Σx, m = (m₀x₀ + Σy)/X, a = 3 + n/2, b = 2s₀² + ½Σ(y − m x)²/x + ½x₀(m₀ − m)²',
  sources: ['WearIncrementsModel'],
  inputs: {
    priorRate: {
      kind: 'wearRate',
      words: 'rate expected before any reading',
      range: { hardMin: 0, hardMax: 1 },
    },
    priorWeight: {
      kind: 'duration',
      words: 'use that expectation is worth',
      range: { min: 3600, max: 360_000, hardMin: 1, hardMax: 1e12 },
    },
    readings: { pairs: ['duration', 'movement'], words: 'use and wear of each interval between readings' },
    remaining: { kind: 'movement', words: 'wear left to the limit', range: { hardMin: 0, hardMax: 10 } },
    spread: {
      kind: 'ratio',
      words: 'spread of the rate from tool to tool, as a share',
      range: { min: 0.1, max: 1, hardMin: 1e-6, hardMax: 10 },
      default: USUAL_SPREAD,
    },
  },
  outputs: {
    p10: { kind: 'duration', words: 'use left on a bad day (one in ten ends sooner)', orNull: true },
    p50: { kind: 'duration', words: 'use left, likely', orNull: true },
    p90: { kind: 'duration', words: 'use left on a good day (one in ten lasts longer)', orNull: true },
    bound: { choices: ['finite', 'none-yet'], words: 'whether the readings give an upper bound' },
  },
  fn: ({ priorRateMPerS, priorWeightS, readings, remainingM, spread }) => {
    const known = learnWearRate(
      { rateMPerS: priorRateMPerS, weightS: priorWeightS, spread },
      readings.map(([useS, wornM]) => ({ useS, wornM })),
    )
    const p90S = useToLimitS(known, remainingM, 0.9)
    return {
      p10S: useToLimitS(known, remainingM, 0.1),
      p50S: useToLimitS(known, remainingM, 0.5),
      p90S,
      bound: p90S === null ? 'none-yet' : 'finite',
    }
  },
  checks: ['wear'],
  remarks:
    'A simulated fleet, not a publication, says that the band of one in ten to nine in ten covers 78 to 90 % with 0 to 6 readings.',
})
