import { planVersionText } from '../../shared/contracts/plan-version.ts'
import { type ReleaseAnswer, releaseAnswerOf } from '../../shared/contracts/release-answer.ts'
import { type SignOffFile, signOffOf } from '../../shared/contracts/sign-off.ts'
import { releaseGate } from '../../shared/core/digsafe/release-gate.ts'
import type { CrossingInput } from '../../shared/core/plan/crossing-input.ts'
import { gateFacts } from '../../shared/core/plan/gate-facts.ts'
import type { Plan } from '../../shared/core/plan/plan.ts'
import { sha256 } from '../sheet/sha256.ts'
import type { JsonObject } from '../state/json.ts'
import { civilNow } from './civil-now.ts'
import type { Signed } from './signed-store.ts'

/** What is on the screen, as somebody would sign for it. */
export type Shown = {
  readonly crossing: string
  readonly document: JsonObject
  readonly plan: Plan
  readonly input: CrossingInput
  readonly bore: number
}

export const planVersion = (document: JsonObject): string => sha256(planVersionText(document))

/** Hold, check or ready for what is on the screen, at this minute. */
export function answerFor(
  { document, plan, input, bore }: Shown,
  signed: readonly Signed[],
  asOfMs: number | null,
  isHere: boolean,
  nowMs: number,
): ReleaseAnswer {
  const version = planVersion(document)
  const facts = gateFacts(input, plan, {
    nowMinute: civilNow(new Date(nowMs)).minute,
    where: isHere ? 'site' : 'elsewhere',
    asOfMinute: asOfMs === null ? null : civilNow(new Date(asOfMs)).minute,
    bore,
    plan: version,
    signOffs: signed.map((each) => signOffOf(each.file)),
  })
  return releaseAnswerOf(releaseGate(facts), bore, version)
}

type Said = Pick<SignOffFile, 'layer' | 'by'> & Partial<SignOffFile>

/** A sign-off of this minute for what is on the screen. */
export function signOffNow({ crossing, document, bore }: Shown, said: Said, now: Date): SignOffFile {
  const { day, time } = civilNow(now)
  return {
    name: `${said.layer} ${day}`,
    crossing,
    on: day,
    at: time,
    ...(said.layer === 'bore' || said.layer === 'after' ? { bore, plan: planVersion(document) } : {}),
    ...said,
  }
}
