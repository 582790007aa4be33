import type { Issue } from '../../shared/core/outcome.ts'
import { listAt, textAt, valueAt } from './document-path.ts'
import { isObject, type JsonObject } from './json.ts'

/** Any of these says what the ground is. */
const SAYS_GROUND = [
  'word',
  'uscs',
  'sptN',
  'dug',
  'consistency',
  'undrainedStrength',
  'relativeDensity',
  'frictionAngle',
  'dcp',
  'pocketPenetrometer',
]

/**
 * What a plan will ask for once the rest can be read: named from the start, so that the list of what is still needed
 * only ever gets shorter.
 */
export function alsoNeeded(document: JsonObject, issues: readonly Issue[]): readonly Issue[] {
  const stretch = listAt(document, 'ground')[0]
  const hasGround = isObject(stretch) && SAYS_GROUND.some((key) => valueAt(stretch, key) !== undefined)
  const has = (path: string) => issues.some((issue) => issue.path === path)
  const missing = [
    ...(textAt(document, 'depth.to') === '' && !has('depth.to') ? ['depth.to'] : []),
    ...(hasGround || issues.some(({ path }) => path.startsWith('ground')) ? [] : ['ground.0.word']),
  ]
  return missing.map((path) => ({ path, code: 'required' }))
}
