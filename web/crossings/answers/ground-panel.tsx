import { useEffect, useMemo, useState } from 'preact/hooks'
import type { CrossingInput } from '../../../shared/core/plan/crossing-input.ts'
import type { SaidOfGround, ShorterShots, WhatMatters } from '../../../shared/core/plan/ground-answers.ts'
import type { Plan } from '../../../shared/core/plan/plan.ts'
import { saidOfGround } from '../../../shared/core/plan/said-of-ground.ts'
import { shorterShots } from '../../../shared/core/plan/shorter-shots.ts'
import { whatMatters } from '../../../shared/core/plan/what-matters.ts'
import {
  agreementWord,
  correctionSentence,
  disputeSentence,
  errorSentence,
  evidenceBlows,
  evidenceName,
  groundHeading,
  learnedSentence,
  matterName,
  noMattersSentence,
  notValidatedSentence,
  shorterSentence,
  takesAwaySentence,
} from '../../../shared/text/ground-sentences.ts'
import { GROUND_TABLE_WORDS } from '../../../shared/text/ground-table-words.ts'
import { shown } from '../../fields/shown.ts'
import { say } from '../../state/unit-choice.ts'
import { GROUND_PANEL as W } from '../../words/ground-words.ts'
import { FoldedPanel } from '../form/panel.tsx'
import { DataTable } from './data-table.tsx'
import { ToolChoice } from './tool-choice.tsx'

type Props = { readonly plan: Plan; readonly input: CrossingInput }
type Worked = { readonly matters: WhatMatters | null; readonly shorter: ShorterShots | null }

/** Each source of the spread is planned anew, so it waits until the typing has paused. */
const PAUSE_MS = 400

function useWorked({ plan, input }: Props, isAsked: boolean): Worked | null {
  const [worked, setWorked] = useState<Worked | null>(null)
  useEffect(() => {
    if (!isAsked) return
    const timer = setTimeout(() => {
      const matters = whatMatters(input)
      setWorked({ matters: matters.ok ? matters.value : null, shorter: shorterShots(input, plan) })
    }, PAUSE_MS)
    return () => clearTimeout(timer)
  }, [plan, input, isAsked])
  return worked
}

function Said({ each }: { readonly each: SaidOfGround }) {
  return (
    <>
      <DataTable
        isShort
        caption={groundHeading(each, say.value)}
        columns={GROUND_TABLE_WORDS[say.value.lang].evidence}
        rows={each.evidence.map((one) => ({
          key: one.by,
          cells: [evidenceName(one, say.value), evidenceBlows(one, say.value), agreementWord(one, say.value)],
        }))}
      />
      {each.isDisputed && <p>{disputeSentence(say.value)}</p>}
      {each.corrections.map((one) => (
        <p key={one.code} class="fine">
          {correctionSentence(one, say.value)}
        </p>
      ))}
    </>
  )
}

function Matters({ matters }: { readonly matters: WhatMatters }) {
  const words = GROUND_TABLE_WORDS[say.value.lang]
  const error = errorSentence(matters, say.value)
  return (
    <>
      {matters.matters.length === 0 ? (
        <p>{noMattersSentence(say.value)}</p>
      ) : (
        <DataTable
          caption={`${words.matters} (${words.badDay}: ${shown(matters.badDayMPerS, 'speed')})`}
          columns={[words.source, words.known, words.gain]}
          rows={matters.matters.map((each) => ({
            key: each.dimension,
            cells: [
              matterName(each, say.value),
              shown(each.badDayMPerS, 'speed'),
              takesAwaySentence(each, say.value),
            ],
          }))}
        />
      )}
      {error !== null && <p>{error}</p>}
    </>
  )
}

function briefOf(ground: readonly SaidOfGround[]): string {
  if (ground.some((each) => each.isDisputed)) return W.disagree
  return ground.some((each) => each.evidence.length > 1) ? W.agree : W.single
}

/** What was said of the ground and how far it agrees, what is worth finding out, shorter shots, and which tool. */
export function GroundAnswer({ plan, input }: Props) {
  const [isAsked, ask] = useState(false)
  const said = useMemo(() => saidOfGround(input), [input])
  const worked = useWorked({ plan, input }, isAsked)
  const ground = said.ok ? said.value : []
  const inBrief = briefOf(ground)
  return (
    <FoldedPanel id="ground-answer" heading={W.heading} inBrief={inBrief} onOpen={ask}>
      {ground.map((each) => (
        <Said key={each.ground} each={each} />
      ))}
      {(plan.learned ?? []).map((part) => (
        <p key={part.family}>{learnedSentence(part, say.value)}</p>
      ))}
      {worked === null && <p class="fine">{W.working}…</p>}
      {worked?.matters && <Matters matters={worked.matters} />}
      {worked?.shorter && <p>{shorterSentence(worked.shorter, say.value)}</p>}
      <ToolChoice input={input} />
      <p class="fine">{notValidatedSentence(say.value)}</p>
    </FoldedPanel>
  )
}
