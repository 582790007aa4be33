import type {
  RankedTool,
  SaidOfGround,
  ShorterShots,
  WhatMatters,
} from '../../shared/core/plan/ground-answers.ts'
import { formatQuantity, NO_NUMBER } from '../../shared/quantities/format-quantity.ts'
import {
  agreementWord,
  correctionSentence,
  disputeSentence,
  errorSentence,
  evidenceBlows,
  evidenceName,
  groundHeading,
  matterName,
  noMattersSentence,
  notValidatedSentence,
  reasonsByTools,
  shorterSentence,
  takesAwaySentence,
  toolVerdict,
} from '../../shared/text/ground-sentences.ts'
import { GROUND_TABLE_WORDS } from '../../shared/text/ground-table-words.ts'
import type { Say } from '../../shared/text/language.ts'
import { saidChance, saidQuantity } from '../../shared/text/say-quantity.ts'
import { columns } from './answer.ts'

export type GroundFound = {
  readonly ground: readonly SaidOfGround[]
  readonly matters: WhatMatters
  readonly shorterShots: ShorterShots | null
  /** null: no list of tools was given. */
  readonly tools: readonly RankedTool[] | null
}

const indented = (rows: readonly (readonly string[])[], by = '  '): string =>
  columns(rows.map(([first = '', ...rest]) => [`${by}${first}`, ...rest]))

function saidText(each: SaidOfGround, say: Say): string {
  const rows = each.evidence.map((one) => [
    evidenceName(one, say),
    evidenceBlows(one, say),
    agreementWord(one, say),
  ])
  const notes = [
    ...(each.isDisputed ? [disputeSentence(say)] : []),
    ...each.corrections.map((one) => correctionSentence(one, say)),
  ]
  return `  ${groundHeading(each, say)}\n${indented(rows, '    ')}${notes.map((note) => `    ${note}\n`).join('')}`
}

function mattersText(matters: WhatMatters, say: Say): string {
  const words = GROUND_TABLE_WORDS[say.lang]
  const pace = (mPerS: number) => saidQuantity(mPerS, 'speed', say)
  const rows = matters.matters.map((each) => [
    matterName(each, say),
    pace(each.badDayMPerS),
    takesAwaySentence(each, say),
  ])
  const error = errorSentence(matters, say)
  const table =
    rows.length === 0
      ? `  ${noMattersSentence(say)}\n`
      : indented([[words.source, words.known, words.gain], ...rows])
  return `  ${words.badDay}: ${pace(matters.badDayMPerS)}\n${table}${error === null ? '' : `  ${error}\n`}`
}

function toolsText(tools: readonly RankedTool[], say: Say): string {
  const chance = (value: number | null) => (value === null ? NO_NUMBER : saidChance(value, say.lang))
  const rows = tools.flatMap((each) => [
    [
      each.name,
      toolVerdict(each, say),
      each.coverRatio === null ? NO_NUMBER : `${formatQuantity(each.coverRatio, 'ratio', say.system)} ×`,
      each.toolGaugePa === null ? NO_NUMBER : saidQuantity(each.toolGaugePa, 'gaugePressure', say),
      chance(each.arrivalProbability),
      chance(each.hitProbability),
      each.hammerS === null ? NO_NUMBER : saidQuantity(each.hammerS, 'duration', say),
    ],
  ])
  const why = reasonsByTools(tools, say).map(
    ({ sentence, names }) => `  - ${names.join(', ')}: ${sentence}\n`,
  )
  return `${indented([GROUND_TABLE_WORDS[say.lang].columns, ...rows])}${why.join('')}`
}

/** What was said of the ground, what is worth finding out, shorter shots and which tool, as a page of text. */
export function groundText({ ground, matters, shorterShots, tools }: GroundFound, say: Say): string {
  const words = GROUND_TABLE_WORDS[say.lang]
  return [
    `${words.said}\n${ground.map((each) => saidText(each, say)).join('')}`,
    `${words.matters}\n${mattersText(matters, say)}`,
    ...(shorterShots === null ? [] : [`${words.room}\n  ${shorterSentence(shorterShots, say)}\n`]),
    ...(tools === null ? [] : [`${words.tools}\n${toolsText(tools, say)}`]),
    `${notValidatedSentence(say)}\n`,
  ].join('\n')
}
