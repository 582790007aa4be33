import { deviation } from '../core/line/deviation.ts'
import { AIM_DEFAULT_RAD, DRIFT_DEFAULT_RAD_PER_SQRT_M } from '../core/line/path-covariance.ts'
import { PreconditionError } from '../core/outcome.ts'
import { createAssumed } from '../core/plan/assumptions.ts'
import { type BoreLine, layBoreLine } from '../core/plan/bore-line.ts'
import type { CrossingInput } from '../core/plan/crossing-input.ts'
import type { Plan } from '../core/plan/plan.ts'
import { createTrace } from '../core/trace.ts'
import type { UnitSystem } from '../quantities/shown-units.ts'
import { plainCode } from '../text/by-system.ts'
import { DRAWING_WORDS, type DrawingWords } from '../text/drawing-words.ts'
import { fill } from '../text/fill.ts'
import type { Language, Say, TextValues } from '../text/language.ts'
import { type DrawnUtility, drawnUtilities } from './drawn-utility.ts'

/** What every part of a long section looks at. */
export type SectionFacts = {
  readonly input: CrossingInput
  readonly plan: Plan
  readonly line: BoreLine
  readonly radiusM: number
  readonly utilities: readonly DrawnUtility[]
  /** How far short of a wall the tool stops; null without a wall at the far end. */
  readonly stopShortM: number | null
  readonly say: Say
  /** A template of the drawing's own words, filled; lower case stays so. */
  readonly words: (key: keyof DrawingWords, values?: TextValues) => string
}

export function sectionFacts(
  input: CrossingInput,
  plan: Plan,
  options: { readonly system: UnitSystem; readonly lang: Language },
): SectionFacts {
  const line = layBoreLine(input, plan.bore.diameterM, createAssumed(), createTrace())
  if (!line.ok) throw new PreconditionError('a long section is drawn of a crossing that was planned')
  const say: Say = { lang: options.lang, system: options.system }
  const words = drawingWords(say)
  const stopShort = plan.assumptions.find((each) => each.name === 'wall.stopShort')?.value
  return {
    input,
    plan,
    line: line.value,
    radiusM: plan.bore.diameterM / 2,
    utilities: drawnUtilities(input, plan),
    stopShortM: input.ends.reception.kind === 'wall' && typeof stopShort === 'number' ? stopShort : null,
    say,
    words,
  }
}

/** `fill` makes sentences; a label on a drawing begins as its template does. */
export function drawingWords(say: Say): SectionFacts['words'] {
  const templates = DRAWING_WORDS[say.lang]
  return (key, values = {}) => {
    const template = templates[key] ?? plainCode(key)
    const sentence = fill(template, values, say)
    const startsLow = /^\{\w+:(utility|text)\}/.test(template) || /^\p{Ll}/u.test(template)
    return startsLow && /^\p{Lu}/u.test(sentence) && !startsWithGiven(template, values)
      ? sentence.charAt(0).toLowerCase() + sentence.slice(1)
      : sentence
  }
}

/** A template that begins with a text of the user's keeps its first letter. */
function startsWithGiven(template: string, values: TextValues): boolean {
  const name = /^\{(\w+):text\}/.exec(template)?.[1]
  const given = name === undefined ? undefined : values[name]
  return typeof given === 'string' && /^\p{Lu}/u.test(given)
}

/**
 * Nine bores in ten lie within this of the axis at a station, in each plane: the shape of the deviation relation along
 * the shot, scaled so that its end is the plan's own figure.
 */
export function deviationP90M(plan: Plan, shotIndex: number, localM: number): number {
  const shot = plan.shots[shotIndex]
  if (!shot) return 0
  const lengthM = shot.toM - shot.fromM
  const wander = wanderOf(plan, shotIndex)
  const endM = deviation.fn({ stationM: lengthM, ...wander }).sigmaM
  const hereM = deviation.fn({ stationM: Math.min(Math.max(localM, 0), lengthM), ...wander }).sigmaM
  return endM > 0 ? (shot.deviation.verticalM.p90 * hereM) / endM : 0
}

/** Aim and drift the plan used for the shot; the usual ones where a plan was kept without its working. */
function wanderOf(plan: Plan, shotIndex: number) {
  const working = plan.workings.find(
    (each) => each.relation === deviation.id && each.about === `shot ${shotIndex + 1}`,
  )
  const aimRad = working?.inputs.aimRad
  const driftRadPerSqrtM = working?.inputs.driftRadPerSqrtM
  return typeof aimRad === 'number' && typeof driftRadPerSqrtM === 'number'
    ? { aimRad, driftRadPerSqrtM }
    : { aimRad: AIM_DEFAULT_RAD, driftRadPerSqrtM: DRIFT_DEFAULT_RAD_PER_SQRT_M }
}
