import { NOUN_FILES } from '../shared/contracts/noun-files.ts'
import { parseWith } from '../shared/contracts/zod-issues.ts'
import { done, type Issue, type Outcome } from '../shared/core/outcome.ts'
import { planToKeep } from './plan-to-keep.ts'
import type { Made } from './store/noun.ts'
import { type NamedDocument, NOUNS, type NounPath } from './store/nouns.ts'

const notAnObject: Issue = { path: '', code: 'wrong-type', accepted: 'a JSON object' }

/** A document as it was sent, once it has been found to be one; a crossing with what the engine makes of it. */
export function documentToKeep(
  path: NounPath,
  given: unknown,
): Outcome<{ readonly document: NamedDocument; readonly made: Made | null }> {
  if (path === 'crossings') {
    const made = planToKeep(given)
    return made.ok ? done({ document: NOUNS.crossings.read(given), made: made.value }) : made
  }
  if (given === null || typeof given !== 'object' || Array.isArray(given)) {
    return { ok: false, issues: [notAnObject] }
  }
  const parsed = parseWith(NOUN_FILES[path], given)
  return parsed.ok ? done({ document: NOUNS[path].read(given), made: null }) : parsed
}
