import type { Outcome } from '../../../shared/core/outcome.ts'
import { type PlanDocument, planDocument } from '../../plan-document.ts'
import { planToKeep } from '../../plan-to-keep.ts'
import type { Made } from '../../store/noun.ts'

/** Planned for the answer alone, or for what is kept beside a saved crossing. */
export type PlanTask = { readonly kind: 'plan' | 'keep'; readonly given: unknown }

/** Whatever makes the plans; both reject with a `PlanningError` when it cannot be done now. */
export type Planner = {
  plan(given: unknown, signal: AbortSignal): Promise<Outcome<PlanDocument>>
  keep(given: unknown, signal: AbortSignal): Promise<Outcome<Made>>
  close(): Promise<void>
}

export type PlanningErrorCode = 'too-long' | 'too-busy' | 'given-up'

/** The crossing asks for more work than this server gives it, or than it has hands for. */
export class PlanningError extends Error {
  override readonly name = 'PlanningError'
  readonly code: PlanningErrorCode
  constructor(code: PlanningErrorCode) {
    super(code)
    this.code = code
  }
}

export const answerTask = ({ kind, given }: PlanTask): Outcome<PlanDocument> | Outcome<Made> =>
  kind === 'plan' ? planDocument(given) : planToKeep(given)

/** Plans where it is called, for as long as it takes: for tests and for sources that have not been bundled. */
export const planOnTheSpot: Planner = {
  plan: async (given) => planDocument(given),
  keep: async (given) => planToKeep(given),
  close: async () => undefined,
}
