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
import { type Palette, paletteOf } from './utility-marks.ts'

/** What every part of a long section looks at. */
export type SectionFacts = {
  readonly input: CrossingInput
  readonly plan: Plan
  readonly line: BoreLine
  readonly radiusM: number
  readonly utilities: readonly DrawnUtility[]
  /** Whose colours the marks on the ground have. */
  readonly palette: Palette
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
    palette: paletteOf(input.locate?.jurisdiction ?? null),
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

type Plane = 'sideways' | 'vertical'
/** Where the bore most likely runs in one plane, off its planned line, and what nine in ten stay within of that. */
export type PathThere = { readonly offM: number; readonly p90M: number }

/** The path of a shot at a station of the crossing, between the points the plan gives. */
export function pathAt(plan: Plan, shotIndex: number, stationM: number, plane: Plane): PathThere {
  const points = plan.shots[shotIndex]?.path.points ?? []
  const next = points.findIndex((each) => each.stationM >= stationM)
  const after = points[next] ?? points.at(-1)
  const before = points[Math.max(0, next - 1)] ?? after
  if (!after || !before) return { offM: 0, p90M: 0 }
  const spanM = after.stationM - before.stationM
  const share = spanM > 0 ? Math.min(1, Math.max(0, (stationM - before.stationM) / spanM)) : 1
  const between = (from: number, to: number): number => from + share * (to - from)
  return plane === 'sideways'
    ? {
        offM: between(before.rightM, after.rightM),
        p90M: between(before.sidewaysP90M, after.sidewaysP90M),
      }
    : { offM: between(before.lowM, after.lowM), p90M: between(before.verticalP90M, after.verticalP90M) }
}
