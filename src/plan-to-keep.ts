import { createHash } from 'node:crypto'
import { canonicalJson } from '../shared/contracts/canonical-json.ts'
import { parseCrossing } from '../shared/contracts/crossing.ts'
import { ENGINE_VERSION } from '../shared/core/engine-version.ts'
import { done, type Outcome } from '../shared/core/outcome.ts'
import { planDocument } from './plan-document.ts'
import type { Made } from './store/noun.ts'

/**
 * What is kept beside a crossing file when it is saved. A file that does not parse is refused. One that parses but has
 * no physical answer is work in progress: it is kept without a result, with the reasons.
 */
export function planToKeep(document: unknown): Outcome<Made> {
  const input = parseCrossing(document)
  if (!input.ok) return input
  const plan = planDocument(document)
  const inputSha256 = createHash('sha256').update(canonicalJson(document)).digest('hex')
  const made = { engine: ENGINE_VERSION, inputSha256 }
  if (!plan.ok) return done({ ...made, status: 'no-plan', result: null, issues: plan.issues })
  return done({ ...made, status: plan.value.release.status, result: plan.value, issues: [] })
}
