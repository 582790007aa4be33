import type { CrossingInput, ToolInput } from './crossing-input.ts'
import type { RankedTool } from './ground-answers.ts'
import type { Plan, ReleaseReason } from './plan.ts'
import { planCrossing } from './plan-crossing.ts'

export type FleetTool = {
  readonly name: string
  readonly tool: ToolInput
  /** Why it is out of use; null where it is not. */
  readonly withdrawn: string | null
}

/** Reasons of a plan that another tool might not have. */
const OF_THE_TOOL: readonly string[] = [
  'cover-too-small',
  'cover-check',
  'shot-long-for-body',
  'shot-beyond-unguided',
  'fit-tight',
  'gap-wide',
  'air-too-low',
  'air-weak',
  'over-rated-pressure',
  'tool-rating-not-given',
  'unlikely-to-arrive',
  'may-not-arrive',
  'may-miss-window',
  'grade-not-promised',
  'clearance-short',
  'bore-at-footing',
  'pull-not-sane',
]

const VERDICTS = ['none', 'check', 'hold', 'no'] as const
const UNPLANNED = {
  coverRatio: null,
  toolGaugePa: null,
  arrivalProbability: null,
  hitProbability: null,
  hammerS: null,
  p50MinorUnits: null,
} as const

const verdictOf = (reasons: readonly ReleaseReason[]): RankedTool['verdict'] => {
  if (reasons.some((each) => each.kind === 'rule')) return 'hold'
  return reasons.length > 0 ? 'check' : 'none'
}

function judged({ name, tool, withdrawn }: FleetTool, plan: Plan): RankedTool {
  const reasons = plan.release.reasons.filter((each) => OF_THE_TOOL.includes(each.code))
  return {
    name,
    diameterM: tool.diameterM,
    verdict: withdrawn === null ? verdictOf(reasons) : 'no',
    reasons,
    issues: [],
    withdrawn,
    coverRatio: plan.bore.coverRatio,
    toolGaugePa: plan.air.toolGaugePa,
    arrivalProbability: plan.run.arrivalProbability,
    hitProbability: plan.deviation.hitProbability,
    hammerS: plan.run.hammerTimeS?.p50 ?? null,
    p50MinorUnits: plan.price?.p50MinorUnits ?? null,
  }
}

/** Chance of a bore that arrives where it should, to the hundredth: less is no difference to choose by. */
const success = (each: RankedTool): number =>
  Math.round(100 * (each.arrivalProbability ?? 0) * (each.hitProbability ?? 0))

const likelyS = (each: RankedTool): number => each.hammerS ?? Number.MAX_VALUE

/** Past bores were made with the tool of the file: what they taught is worked out with it, and taken to the others as it is. */
function withOwnLearning(input: CrossingInput): CrossingInput {
  const plan = planCrossing(input)
  return plan.ok ? { ...input, learned: plan.value.learned ?? [], pastBores: [] } : input
}

/**
 * Which of the tools on the shelf: each planned with in this crossing, what speaks against it, the best first. Fewer rules
 * against it goes before chance, chance before time. A tool out of use, or too small for the pipe, stands last with its reason.
 */
export function whichTool(input: CrossingInput, fleet: readonly FleetTool[]): readonly RankedTool[] {
  const learnt = withOwnLearning(input)
  const ranked = fleet.map((each): RankedTool => {
    const plan = planCrossing({ ...learnt, tool: each.tool })
    if (plan.ok) return judged(each, plan.value)
    const { name, tool, withdrawn } = each
    const common = { name, diameterM: tool.diameterM, verdict: 'no' as const, reasons: [], withdrawn }
    return { ...common, ...UNPLANNED, issues: plan.issues }
  })
  return ranked.sort(
    (a, b) =>
      VERDICTS.indexOf(a.verdict) - VERDICTS.indexOf(b.verdict) ||
      success(b) - success(a) ||
      likelyS(a) - likelyS(b) ||
      a.diameterM - b.diameterM,
  )
}
