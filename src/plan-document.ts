import { createHash } from 'node:crypto'
// Lines between positions can be planned here from the start.
import '../shared/core/line/geodesic.ts'
import { canonicalJson } from '../shared/contracts/canonical-json.ts'
import { parseCrossing } from '../shared/contracts/crossing.ts'
import { ENGINE_VERSION, TABLES_VERSION } from '../shared/core/engine-version.ts'
import { done, type Outcome } from '../shared/core/outcome.ts'
import type { Plan } from '../shared/core/plan/plan.ts'
import { planCrossing } from '../shared/core/plan/plan-crossing.ts'

/** The result as it leaves the program: `plan --json` and POST /api/plans give the same document. */
export type PlanDocument = {
  readonly schema: 'underlane/plan@1'
  readonly engine: string
  readonly input: { readonly sha256: string }
  readonly spread: { readonly seed: number; readonly draws: number }
  readonly tables: string
  readonly name: string
} & Plan

/** Plans a crossing file given as parsed JSON. */
export function planDocument(given: unknown): Outcome<PlanDocument> {
  const input = parseCrossing(given)
  if (!input.ok) return input
  const plan = planCrossing(input.value)
  if (!plan.ok) return plan
  return done({
    schema: 'underlane/plan@1',
    engine: ENGINE_VERSION,
    input: { sha256: createHash('sha256').update(canonicalJson(given)).digest('hex') },
    spread: { seed: input.value.spread.seed, draws: input.value.spread.draws },
    tables: TABLES_VERSION,
    name: input.value.name,
    ...plan.value,
  })
}
