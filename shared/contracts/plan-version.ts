import { ENGINE_VERSION } from '../core/engine-version.ts'
import { canonicalJson } from './canonical-json.ts'

/** What a bore was seen to do, and what it costs, do not change what was signed for. */
const NOT_SIGNED_FOR = ['observations', 'rates', 'spread', 'units', 'schema']

/** The text whose SHA-256 is the version of a plan that a person signs: the crossing file and the engine's numbers. */
export function planVersionText(document: Readonly<Record<string, unknown>>): string {
  const crossing = Object.fromEntries(
    Object.entries(document).filter(([key]) => !NOT_SIGNED_FOR.includes(key)),
  )
  return canonicalJson({ engine: ENGINE_VERSION, units: document.units ?? null, crossing })
}
