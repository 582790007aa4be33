import { createHash } from 'node:crypto'
import { z } from 'zod'
import { parseCrossing } from '../shared/contracts/crossing.ts'
import { planVersionText } from '../shared/contracts/plan-version.ts'
import { type ReleaseAnswer, releaseAnswerOf } from '../shared/contracts/release-answer.ts'
import { signOffFile, signOffOf } from '../shared/contracts/sign-off.ts'
import { parseWith } from '../shared/contracts/zod-issues.ts'
import { readCivil } from '../shared/core/digsafe/civil.ts'
import { releaseGate } from '../shared/core/digsafe/release-gate.ts'
import { done, type Issue, type Outcome, refused } from '../shared/core/outcome.ts'
import { gateFacts } from '../shared/core/plan/gate-facts.ts'
import type { Plan } from '../shared/core/plan/plan.ts'

export type ReleaseAsked = {
  readonly crossing: unknown
  readonly signOffs: unknown
  /** `2026-03-02T09:10`, on the clock of the place: no zone is guessed. */
  readonly now: unknown
  readonly bore: number
}

export type Released = { readonly answer: ReleaseAnswer; readonly reasons: Plan['release']['reasons'] }
type Planned = Outcome<Pick<Plan, 'release' | 'shots'>>

const signOffs = z.array(signOffFile).max(500)
const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  value !== null && typeof value === 'object' && !Array.isArray(value)

const under = (path: string, issues: readonly Issue[]): readonly Issue[] =>
  issues.map((issue) => ({ ...issue, path: issue.path === '' ? path : `${path}.${issue.path}` }))

const notAMoment: Issue = {
  path: 'now',
  code: 'wrong-type',
  accepted: 'a date and time like 2026-03-02T09:10',
}

/** What a plan and its signatures amount to, asked from a file or a script: hold or check, never more. */
export function releaseOf(asked: ReleaseAsked, plan: Planned): Outcome<Released> {
  const nowMinute = typeof asked.now === 'string' && asked.now.includes('T') ? readCivil(asked.now) : null
  const input = parseCrossing(asked.crossing)
  const signed = parseWith(signOffs, asked.signOffs)
  const issues = [
    ...(nowMinute === null ? [notAMoment] : []),
    ...(input.ok ? [] : under('crossing', input.issues)),
    ...(signed.ok ? [] : under('signOffs', signed.issues)),
  ]
  if (nowMinute === null || !input.ok || !signed.ok || !isObject(asked.crossing)) return refused(...issues)
  if (!plan.ok) return refused(...under('crossing', plan.issues))
  const bores = plan.value.shots.length
  if (asked.bore < 1 || asked.bore > bores) {
    const values = { kind: 'count', min: 1, max: bores }
    return refused({ path: 'bore', code: 'out-of-range', given: String(asked.bore), values })
  }
  const version = createHash('sha256').update(planVersionText(asked.crossing)).digest('hex')
  const facts = gateFacts(input.value, plan.value, {
    nowMinute,
    where: 'elsewhere',
    asOfMinute: nowMinute,
    bore: asked.bore,
    plan: version,
    signOffs: signed.value.map(signOffOf),
  })
  const answer = releaseAnswerOf(releaseGate(facts), asked.bore, version)
  return done({ answer, reasons: plan.value.release.reasons })
}
