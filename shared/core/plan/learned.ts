import {
  BORE_SPREAD,
  learnFromBores,
  PRIOR_SPREAD,
  sumOfEffects,
  unseenEffects,
} from '../ground/rate-effects.ts'
import { LEAST_RATE_M_PER_S } from '../ground/set-of-draw.ts'
import { normalQuantile } from '../statistics/normal.ts'
import { createTrace } from '../trace.ts'
import type { CrossingInput } from './crossing-input.ts'
import { GROUND_FAMILIES, type GroundFamily, type LearnedPart, type PastBoreInput } from './learned-input.ts'
import { blowAt, solveStretch } from './penetration.ts'
import type { Stretch } from './stretches.ts'
import type { ToolFacts } from './tool-facts.ts'

type Facts = {
  readonly input: CrossingInput
  readonly stretches: readonly Stretch[]
  readonly tool: ToolFacts
}

const Z_TENTH = normalQuantile(0.9)

/** The model's own likely pace in this family of ground at a pressure, nothing learned; 0 where it stalls. */
function plannedMPerS({ stretches, tool }: Facts, family: GroundFamily, gaugePa: number): number {
  // Worked beside the plan: its own workings tell of this bore, not of those before it.
  const aside = createTrace()
  const blow = blowAt(tool, gaugePa, aside)
  const own = stretches.filter((each) => each.state.family === family)
  const lengthM = own.reduce((sum, each) => sum + each.lengthM, 0)
  const timeS = own.reduce(
    (sum, each) => sum + each.lengthM / solveStretch(each, tool, blow, aside).median.advanceMPerS,
    0,
  )
  return Number.isFinite(timeS) && timeS > 0 ? lengthM / timeS : 0
}

/** Observed over planned, or the slowest that counts as moving over planned; null where the model itself stalls there. */
function ratioOf(facts: Facts, bore: PastBoreInput): number | null {
  // Not this crossing's pressure: other air here would change what was seen there.
  const planned = plannedMPerS(facts, bore.family, bore.toolGaugePa ?? facts.tool.statedGaugePa)
  if (planned <= 0) return null
  if (bore.hasStalled) return LEAST_RATE_M_PER_S / planned
  return bore.lengthM === null || bore.hammerTimeS === null ? null : bore.lengthM / bore.hammerTimeS / planned
}

/** The law of the relation rate-learning, without its words: every plan on every first screen carries this file. */
function fromBores(facts: Facts, family: GroundFamily): LearnedPart | null {
  const all = facts.input.pastBores.filter((each) => each.family === family)
  const counted = all
    .filter((each) => !each.isExcluded)
    .flatMap((bore) => {
      const ratio = ratioOf(facts, bore)
      return ratio === null ? [] : [{ ratio, hasStalled: bore.hasStalled }]
    })
  if (counted.length === 0) return null
  const known = learnFromBores(
    unseenEffects({ [family]: PRIOR_SPREAD }),
    counted.map(({ ratio, hasStalled }) => ({
      effects: [family],
      logRatio: Math.log(ratio),
      stalled: hasStalled,
    })),
    BORE_SPREAD,
  )
  const { mean, variance } = sumOfEffects(known, [family])
  const spread = Math.sqrt(variance)
  return {
    family,
    multiplier: Math.exp(mean),
    multiplierP10: Math.exp(mean - Z_TENTH * spread),
    multiplierP90: Math.exp(mean + Z_TENTH * spread),
    spread,
    bores: counted.length,
    stalled: counted.filter((each) => each.hasStalled).length,
    excluded: all.length - counted.length,
    scope: null,
    from: 'bores',
  }
}

function fromFile({ input }: Facts, family: GroundFamily): LearnedPart | null {
  const said = input.learned.find((each) => each.family === family)
  if (said === undefined) return null
  const { multiplier, spread, bores, scope } = said
  return {
    family,
    multiplier,
    multiplierP10: multiplier * Math.exp(-Z_TENTH * spread),
    multiplierP90: multiplier * Math.exp(Z_TENTH * spread),
    spread,
    bores,
    stalled: null,
    excluded: 0,
    scope,
    from: 'file',
  }
}

/** What past bores say of the ground this bore goes through, family by family; nothing of ground it does not meet. */
export function learnedParts(facts: Facts): readonly LearnedPart[] {
  return GROUND_FAMILIES.flatMap((family) => {
    if (!facts.stretches.some((each) => each.state.family === family)) return []
    const part = fromFile(facts, family) ?? fromBores(facts, family)
    return part === null ? [] : [part]
  })
}

/** The stretches with what was learned of their ground: faster or slower, and the model's own doubt narrowed. */
export const withLearned = (
  stretches: readonly Stretch[],
  learned: readonly LearnedPart[],
): readonly Stretch[] =>
  stretches.map((stretch) => {
    const part = learned.find((each) => each.family === stretch.state.family)
    if (part === undefined) return stretch
    const modelCov = stretch.state.modelCov * (part.spread / PRIOR_SPREAD)
    return { ...stretch, rateMultiplier: part.multiplier, state: { ...stretch.state, modelCov } }
  })
