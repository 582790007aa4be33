import { z } from 'zod'
import { writeCivil } from '../core/digsafe/civil.ts'
import type { GateAnswer } from '../core/digsafe/release-gate.ts'

const openPoint = z.strictObject({
  code: z.enum(['ticket-not-yet', 'ticket-over', 'plan-hold', 'not-signed', 'no-photo', 'watchers-short']),
  of: z.string().describe('an item of the lists, a reason of the plan, or the ticket'),
  line: z.number().int().nullable(),
  needed: z.number().int(),
  had: z.number().int(),
})

/** May the air be opened: underlane/release@1. From a file, a script or an office it is never ready. */
export const releaseAnswer = z.strictObject({
  schema: z.literal('underlane/release@1'),
  status: z.enum(['hold', 'check', 'ready']),
  why: z.enum(['elsewhere', 'stale']).nullable().describe('why it is not ready though nothing is open'),
  until: z.string().nullable().describe('on the clock of the place'),
  bore: z.number().int(),
  plan: z.string().describe('version of the plan it is about'),
  points: z.array(
    z.strictObject({
      point: z.number().int().min(1).max(11),
      state: z.enum(['pass', 'hold', 'set-aside']),
      open: z.array(openPoint),
    }),
  ),
  others: z.array(openPoint).describe('rules of the plan under none of the points'),
  watchers: z.strictObject({ needed: z.number().int(), named: z.number().int() }),
  setAside: z.number().int(),
  after: z.strictObject({ by: z.string(), at: z.string() }).nullable(),
})
export type ReleaseAnswer = z.infer<typeof releaseAnswer>

export function releaseAnswerOf(answer: GateAnswer, bore: number, plan: string): ReleaseAnswer {
  const { untilMinute, after, points, others, watchers, ...rest } = answer
  return {
    schema: 'underlane/release@1',
    ...rest,
    until: untilMinute === null ? null : writeCivil(untilMinute),
    bore,
    plan,
    points: points.map((each) => ({ ...each, open: [...each.open] })),
    others: [...others],
    watchers: { ...watchers },
    after: after === null ? null : { by: after.by, at: writeCivil(after.atMinute) },
  }
}
