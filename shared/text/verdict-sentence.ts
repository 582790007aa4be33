import type { UtilityInput } from '../core/plan/crossing-input.ts'
import type { ClearancePart, Plan } from '../core/plan/plan.ts'
import { EN_VERDICT } from './en-verdict.ts'
import { fill } from './fill.ts'
import type { BothLanguages, Say } from './language.ts'
import { withSpanish } from './learned-languages.ts'
import { ODDS_IN_TENTHS_FROM } from './say-quantity.ts'
import { groundWords } from './soil-words.ts'

export const VERDICT_TEMPLATES: BothLanguages<keyof typeof EN_VERDICT> = withSpanish(EN_VERDICT, 'verdict')

/** Below this a likely time would promise too much. */
const LIKELY_FROM = 0.5

/** The ground, the likely times and how often it takes a second try; without times, that too few arrive to give any. */
export function verdictSentence(plan: Pick<Plan, 'run' | 'shots'>, say: Say): string {
  const { hammerTimeS, boreTimeS, crossingTimeS, arrivalProbability } = plan.run
  const templates = VERDICT_TEMPLATES[say.lang]
  const ground = groundWords(plan.shots, say)
  if (hammerTimeS === null || boreTimeS === null || crossingTimeS === null) {
    return fill(templates['no-times'], { ground, arrives: arrivalProbability }, say)
  }
  const secondTry = 1 - arrivalProbability
  const times = { hammerTimeS: hammerTimeS.p50, boreTimeS: boreTimeS.p50, crossingTimeS: crossingTimeS.p50 }
  if (arrivalProbability < LIKELY_FROM) {
    return fill(templates['times/unlikely'], { ground, ...times, arrives: arrivalProbability }, say)
  }
  const template = secondTry < ODDS_IN_TENTHS_FROM ? templates.times : templates['times/tenths']
  return fill(template, { ground, ...times, secondTry }, say)
}

/** The likely times and odds in half a line, for a screen the size of a hand. */
export function verdictInBrief({ run }: Pick<Plan, 'run'>, say: Say): string {
  const templates = VERDICT_TEMPLATES[say.lang]
  const { hammerTimeS, crossingTimeS, arrivalProbability } = run
  if (hammerTimeS === null || crossingTimeS === null) return fill(templates['brief/no-times'], {}, say)
  const values = {
    hammerTimeS: hammerTimeS.p50,
    crossingTimeS: crossingTimeS.p50,
    secondTry: 1 - arrivalProbability,
  }
  return fill(templates.brief, values, say)
}

/** The bore where it passes the line, below the ground there. */
export type BoreAtLine = { readonly axisDepthM: number; readonly boreDiameterM: number }
export type LineEcho = Pick<UtilityInput, 'kind' | 'depth' | 'diameterM' | 'stationM' | 'offsetM'>

/** Depths of line and bore said back with what they are measured to, so that a wrong datum is seen. */
export function clearanceSentence(utility: LineEcho, bore: BoreAtLine, say: Say): string {
  const templates = VERDICT_TEMPLATES[say.lang]
  const radiusM = bore.boreDiameterM / 2
  const values = {
    kind: utility.kind,
    boreTopM: bore.axisDepthM - radiusM,
    boreBottomM: bore.axisDepthM + radiusM,
  }
  if (utility.stationM === null && utility.offsetM !== null) {
    return fill(templates['clearance/parallel'], { ...values, offsetM: Math.abs(utility.offsetM) }, say)
  }
  if (utility.depth === null) return fill(templates['clearance/no-depth'], values, say)
  const { valueM, to } = utility.depth
  if (utility.diameterM === null) {
    return fill(templates['clearance/no-size'], { ...values, datum: to, depthM: valueM }, say)
  }
  const topM = valueM - { top: 0, centre: utility.diameterM / 2, bottom: utility.diameterM }[to]
  return fill(templates.clearance, { ...values, topM, bottomM: topM + utility.diameterM }, say)
}

/** The gap, and when it is short the ways out. Empty when there is no gap to speak of. */
export function wayOutSentence(clearance: ClearancePart, say: Say): string {
  const { gapM, shortM, wayOut } = clearance
  if (gapM === null || shortM === null) return ''
  const templates = VERDICT_TEMPLATES[say.lang]
  const gap = fill(gapM > 0 ? templates.gap : templates['gap/overlap'], { gapM }, say)
  if (shortM === 0) return gap
  if (wayOut === null) return `${gap} ${fill(templates.sideways, { shortM }, say)}`
  const { direction, otherEndShortM } = wayOut
  if (otherEndShortM === null) return `${gap} ${fill(templates[direction], { shortM }, say)}`
  const other = otherEndShortM > 0 ? 'other-end-short' : 'or-other-end'
  return `${gap} ${fill(templates[`${direction}-${other}`], { shortM, otherEndShortM }, say)}`
}

/** The chance of contact, always with what it does not cover; or why there is none. */
export function contactSentence(
  { contactProbability, reason }: Pick<ClearancePart, 'contactProbability' | 'reason'>,
  say: Say,
): string {
  const templates = VERDICT_TEMPLATES[say.lang]
  if (contactProbability !== null) return fill(templates.contact, { probability: contactProbability }, say)
  return fill(templates[`no-contact/${reason ?? 'depth-not-measured'}`], {}, say)
}
