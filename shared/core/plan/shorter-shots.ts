import type { CrossingInput, ShotInput } from './crossing-input.ts'
import type { ShorterShots } from './ground-answers.ts'
import type { Plan } from './plan.ts'
import { planCrossing } from './plan-crossing.ts'

/** A shot that lands in its window nine times in ten is good; a plan says so below that. */
const GOOD_HIT = 0.9
/** More pits than this is another method. */
const MOST_PARTS = 6
/** A shot shorter than this is a pit beside a pit. */
const LEAST_SHOT_M = 3

/** The shots of a plan with every one longer than `mostM` cut in equal parts. */
function cut(plan: Plan, mostM: number): readonly ShotInput[] {
  return plan.shots.flatMap(({ fromM, toM }) => {
    const parts = Math.ceil((toM - fromM) / mostM - 1e-9)
    return Array.from({ length: parts }, (_, part) => ({
      toM: part === parts - 1 ? toM : fromM + ((part + 1) * (toM - fromM)) / parts,
      depthM: null,
    }))
  })
}

/** The depths a file gives at the ends of its own shots stay as they are. */
const withDepths = (shots: readonly ShotInput[], said: readonly ShotInput[]): readonly ShotInput[] =>
  shots.map((shot) => said.find((each) => Math.abs(each.toM - shot.toM) < 1e-6) ?? shot)

/**
 * The fewest pits in between with which every shot lands in its window nine times in ten; null where it does already, where
 * the tool is on its way, or where no sane number of pits helps.
 */
export function shorterShots(input: CrossingInput, plan: Plan): ShorterShots | null {
  const hitNow = plan.deviation.hitProbability
  if (hitNow >= GOOD_HIT || input.observations.length > 0) return null
  const longestNowM = Math.max(...plan.shots.map((shot) => shot.toM - shot.fromM))
  for (let parts = 2; parts <= MOST_PARTS; parts++) {
    const mostM = longestNowM / parts
    if (mostM < LEAST_SHOT_M) return null
    const shots = withDepths(cut(plan, mostM), input.shots)
    const changed = planCrossing({ ...input, shots })
    if (!changed.ok) return null
    const { deviation, run } = changed.value
    if (deviation.hitProbability < GOOD_HIT) continue
    return {
      pitsAtM: shots.slice(0, -1).map((shot) => shot.toM),
      longestM: Math.max(...changed.value.shots.map((shot) => shot.toM - shot.fromM)),
      hitProbability: deviation.hitProbability,
      hitNow,
      arrivalProbability: run.arrivalProbability,
      crossingS: run.crossingTimeS?.p50 ?? null,
    }
  }
  return null
}
