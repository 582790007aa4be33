import type {
  CountCorrection,
  Matter,
  RankedTool,
  SaidOfGround,
  ShorterShots,
  WhatMatters,
} from '../core/plan/ground-answers.ts'
import type { GroundFamily, LearnedPart } from '../core/plan/learned-input.ts'
import { EN_GROUND } from './en-ground.ts'
import { fill } from './fill.ts'
import { issueSentence } from './issue-sentences.ts'
import type { BothLanguages, Say, TextValues } from './language.ts'
import { withSpanish } from './learned-languages.ts'
import { releaseSentence } from './release-sentences.ts'
import { saidQuantity } from './say-quantity.ts'
import { soilWord } from './soil-words.ts'

export const GROUND_TEMPLATES: BothLanguages<keyof typeof EN_GROUND> = withSpanish(EN_GROUND, 'ground')

const said = (key: keyof typeof EN_GROUND, values: TextValues, say: Say): string =>
  fill(GROUND_TEMPLATES[say.lang][key], values, say)
/** A name as it stands inside a line: nothing is filled in, no capital. */
const name = (key: keyof typeof EN_GROUND, say: Say): string => GROUND_TEMPLATES[say.lang][key]

/** "Ground 1: stiff clay" */
export const groundHeading = ({ ground, uscs, stateCode }: SaidOfGround, say: Say): string =>
  said('ground', { number: ground + 1, soil: soilWord(uscs, stateCode, say) }, say)

type Evidence = SaidOfGround['evidence'][number]
export const evidenceName = ({ by }: Pick<Evidence, 'by'>, say: Say): string => name(`evidence/${by}`, say)
export const evidenceBlows = ({ n }: Pick<Evidence, 'n'>, say: Say): string => said('as-blows', { n }, say)
export const agreementWord = ({ agreement }: Pick<Evidence, 'agreement'>, say: Say): string =>
  name(`agreement/${agreement}`, say)
export const disputeSentence = (say: Say): string => said('disputed', {}, say)

export const correctionSentence = ({ code, fromN, toN, factor }: CountCorrection, say: Say): string =>
  said(`correction/${code}`, { fromN, toN, factor: factor ?? 1 }, say)

export const matterName = ({ dimension }: Pick<Matter, 'dimension'>, say: Say): string =>
  said(`matter/${dimension}`, {}, say)

/** About half is called half. */
const HALF = [0.4, 0.6] as const
export function takesAwaySentence({ takesAway }: Pick<Matter, 'takesAway'>, say: Say): string {
  const key = takesAway > HALF[1] ? 'most' : takesAway >= HALF[0] ? 'half' : 'some'
  return said(`takes/${key}`, { share: takesAway }, say)
}

/** The error of the draws themselves, where it shows; nothing otherwise. */
export const errorSentence = ({ isErrorSeen, numericalErrorS }: WhatMatters, say: Say): string | null =>
  isErrorSeen && numericalErrorS !== null ? said('error', { errorS: numericalErrorS }, say) : null

export const noMattersSentence = (say: Say): string => said('no-matters', {}, say)
export const notValidatedSentence = (say: Say): string => said('not-validated', {}, say)

export function shorterSentence(shorter: ShorterShots, say: Say): string {
  const pits = shorter.pitsAtM.map((m) => saidQuantity(m, 'length', say)).join(', ')
  const { hitNow, hitProbability, longestM } = shorter
  return said('shorter', { pits, hitNow, hitProbability, longestM }, say)
}

export const toolVerdict = ({ verdict }: Pick<RankedTool, 'verdict'>, say: Say): string =>
  name(`tool/${verdict}`, say)

/** Everything that speaks against a tool in this bore. */
const toolReasons = (tool: RankedTool, say: Say): readonly string[] => [
  ...(tool.withdrawn === null ? [] : [said('tool/withdrawn', { why: tool.withdrawn }, say)]),
  ...tool.issues.map((issue) => issueSentence(issue, say.lang)),
  ...tool.reasons.map((reason) => releaseSentence(reason, say)),
]

/** What speaks against the tools, each sentence once with the tools it is about. */
export function reasonsByTools(
  tools: readonly RankedTool[],
  say: Say,
): readonly { readonly sentence: string; readonly names: readonly string[] }[] {
  const found = new Map<string, string[]>()
  for (const tool of tools) {
    for (const sentence of toolReasons(tool, say)) {
      found.set(sentence, [...(found.get(sentence) ?? []), tool.name])
    }
  }
  return [...found].map(([sentence, names]) => ({ sentence, names }))
}

export const familyName = (family: GroundFamily, say: Say): string => name(`family/${family}`, say)

/** How much faster or slower past bores say, on how many it rests, and of what. */
export function learnedSentence(part: LearnedPart, say: Say): string {
  const { from, family, multiplier, multiplierP10, multiplierP90, bores, excluded } = part
  const values = { multiplier, multiplierP10, multiplierP90, bores, excluded, stalled: part.stalled ?? 0 }
  const scope = part.scope === null ? '' : ` (${part.scope})`
  return said(`learned/${from}`, { ...values, scope, family: familyName(family, say) }, say)
}
