import type { ClearancePart, Plan } from '../core/plan/plan.ts'
import { EN_PATH } from './en-path.ts'
import { fill } from './fill.ts'
import type { BothLanguages, Say } from './language.ts'
import { withSpanish } from './learned-languages.ts'
import { saidQuantity } from './say-quantity.ts'

type Proposal = Plan['proposals'][number]
type ToExpose = Plan['toExpose'][number]

export const PATH_TEMPLATES: BothLanguages<keyof typeof EN_PATH> = withSpanish(EN_PATH, 'path')

/** Less than this is no longer short by anything a tape shows. */
const NOTHING_M = 0.001

/** A change that gives the lines room, and what it leaves. */
export function proposalSentence(proposal: Proposal, say: Say): string {
  const { code, shot, stationM, moveM, shortM, shortAfterM } = proposal
  const templates = PATH_TEMPLATES[say.lang]
  const values = { shot: shot + 1, stationM: stationM ?? 0, moveM: moveM ?? 0, shortM, shortAfterM }
  const left = shortAfterM <= NOTHING_M ? templates['propose/enough'] : templates['propose/left']
  return `${fill(templates[`propose/${code}`], values, say)} ${fill(left, values, say)}`
}

/** A line to open up, and why it stands where it does in the list. */
export function toExposeSentence(each: ToExpose, say: Say): string {
  const { utility, kind, atM, shortM, savesM } = each
  const templates = PATH_TEMPLATES[say.lang]
  const [firstM = 0, ...others] = atM
  const values = { line: utility + 1, kind, atM: firstM, shortM: shortM ?? 0, savesM }
  const state = shortM === null ? 'unknown' : shortM > NOTHING_M ? 'short' : 'room'
  const sentence = fill(templates[`expose/${state}`], values, say)
  if (others.length === 0) return sentence
  const list = others.map((stationM) => saidQuantity(stationM, 'length', say)).join(', ')
  return `${sentence} ${fill(templates['expose/more'], { list }, say)}`
}

/** Since where drift counts in a clearance. */
export function driftFromSentence({ by, stationM }: ClearancePart['driftFrom'], say: Say): string {
  const key = by === 'launch' || by === 'hole' ? by : 'seen'
  return fill(PATH_TEMPLATES[say.lang][`drift/${key}`], { by, stationM }, say)
}
