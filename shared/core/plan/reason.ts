import type { ReasonKind, ReleaseReason } from './plan.ts'

/** One reason a plan is held, or wants a look. */
export const reason = (
  kind: ReasonKind,
  code: string,
  values: ReleaseReason['values'] = {},
): ReleaseReason => ({ kind, code, values })
