import { done, type Outcome } from '../outcome.ts'
import type { CrossingInput } from './crossing-input.ts'
import { HAMMER_DIMENSIONS, type HammerDimension, type Matter, type WhatMatters } from './ground-answers.ts'
import type { Plan } from './plan.ts'
import { planCrossing } from './plan-crossing.ts'

/** Less than this is not worth finding out. Our judgement. */
const WORTH = 0.03
/** Times are shown to the minute under two hours, else to five. */
const shownStepS = (s: number): number => (s < 7200 ? 60 : 300)
/** Any other seed scrambles otherwise; this one is the next. */
const otherSeed = (seed: number): number => (seed + 1) % 2 ** 32

/** Over all draws, stalled ones too: times end at the giving up, and would hide what matters most. */
const widthOf = ({ run }: Plan): number => run.advanceMPerS.p50 - run.advanceMPerS.p10

function knowing(input: CrossingInput, dimension: HammerDimension, width: number): readonly Matter[] {
  const known = planCrossing(input, { known: dimension })
  if (!known.ok) return []
  const takesAway = 1 - widthOf(known.value) / width
  if (takesAway < WORTH) return []
  const { advanceMPerS, refusalProbability } = known.value.run
  return [{ dimension, badDayMPerS: advanceMPerS.p10, takesAway, refusalProbability }]
}

/**
 * What is worth finding out: each source of the spread held at its middle in turn, with the same draws, and what is left of
 * the way from a likely to a bad day.
 */
export function whatMatters(input: CrossingInput): Outcome<WhatMatters> {
  const plan = planCrossing(input)
  if (!plan.ok) return plan
  const width = widthOf(plan.value)
  const matters = width > 0 ? HAMMER_DIMENSIONS.flatMap((dimension) => knowing(input, dimension, width)) : []
  const again = planCrossing({ ...input, spread: { ...input.spread, seed: otherSeed(input.spread.seed) } })
  const badDayS = plan.value.run.hammerTimeS?.p90 ?? null
  const otherS = again.ok ? (again.value.run.hammerTimeS?.p90 ?? null) : null
  const numericalErrorS = otherS === null || badDayS === null ? null : Math.abs(otherS - badDayS) / 2
  return done({
    badDayMPerS: plan.value.run.advanceMPerS.p10,
    matters: matters.sort((a, b) => b.takesAway - a.takesAway),
    numericalErrorS,
    isErrorSeen: numericalErrorS !== null && badDayS !== null && numericalErrorS > shownStepS(badDayS) / 2,
  })
}
