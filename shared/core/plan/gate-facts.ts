import { readCivil } from '../digsafe/civil.ts'
import type { GateFacts, SignOff } from '../digsafe/release-gate.ts'
import type { CrossingInput } from './crossing-input.ts'
import type { Plan } from './plan.ts'
import { watchersOn } from './watchers.ts'

export type GateAsked = {
  /** On the clock of the place, as a ticket is printed. */
  readonly nowMinute: number
  readonly where: GateFacts['where']
  readonly asOfMinute: number | null
  /** From one. */
  readonly bore: number
  /** Version of the plan that is shown. */
  readonly plan: string
  readonly signOffs: readonly SignOff[]
}

/** Only the ticket as printed counts; one that cannot be read is none. */
function ticketOf({ locate }: CrossingInput): GateFacts['ticket'] {
  const startsMinute = locate?.ticket ? readCivil(locate.ticket.starts) : null
  const expiresMinute = locate?.ticket ? readCivil(locate.ticket.expires) : null
  return startsMinute === null || expiresMinute === null ? null : { startsMinute, expiresMinute }
}

/** What a plan brings to the gate: its rules and missing facts, never its advice and never a chance. */
export function gateFacts(
  input: CrossingInput,
  { release, shots }: Pick<Plan, 'release' | 'shots'>,
  asked: GateAsked,
): GateFacts {
  const utilities = input.utilities ?? []
  const shot = shots[asked.bore - 1]
  return {
    ...asked,
    ticket: ticketOf(input),
    holds: release.reasons
      .filter((each) => each.kind !== 'advice')
      .map(({ code, values }) => ({
        code,
        line: typeof values.line === 'number' ? values.line : null,
        kind: typeof values.kind === 'string' ? values.kind : null,
      })),
    hasLines: utilities.length > 0,
    hasProved: utilities.some((each) => each.evidence === 'proved'),
    watchersNeeded: shot === undefined ? 0 : watchersOn(input, shot),
  }
}
