import type { ReleasePoint } from './sign-off-items.ts'

/**
 * Which point of the release a plan's rule or missing fact answers. What is not named here is the plan's own: it holds
 * as well, under no point.
 */
const POINT_OF_REASON: Readonly<Record<string, ReleasePoint>> = {
  'locate-not-asked': 1,
  'no-ticket': 1,
  'ticket-dates': 1,
  'ticket-before-call': 1,
  'jurisdiction-not-given': 1,
  'jurisdiction-not-known': 1,
  'no-owner-answered': 2,
  'owner-silent': 2,
  'owner-not-answered': 2,
  'listed-owner-silent': 2,
  'line-owner-not-given': 2,
  'marked-but-none-listed': 2,
  'answer-not-on-ground': 2,
  'lines-not-asked': 4,
  'none-here-not-signed': 4,
  'private-not-asked': 4,
  'private-not-known': 4,
  'private-not-listed': 4,
  'private-not-signed': 4,
  'line-not-exposed': 5,
  'parallel-not-exposed': 5,
  'exposed-without-record': 5,
  'line-depth-not-known': 5,
  'line-size-not-known': 5,
  'clearance-short': 6,
  'clearance-without-name': 6,
  'proved-too-near': 6,
}

export const pointOfReason = (code: string): ReleasePoint | null =>
  Object.hasOwn(POINT_OF_REASON, code) ? (POINT_OF_REASON[code] ?? null) : null

/** Rules two people may set aside, with their names and a reason. Everything else stands: silence, tickets, answers. */
const MAY_BE_SET_ASIDE = [
  'line-not-exposed',
  'parallel-not-exposed',
  'line-depth-not-known',
  'line-size-not-known',
  'clearance-short',
  'cover-too-small',
  'shot-beyond-unguided',
  'ground-outside-model',
  'pull-not-sane',
  'coil-too-short',
  'air-too-low',
  'grade-not-promised',
  'bore-at-footing',
]
const ABOUT_EXPOSURE = [
  'line-not-exposed',
  'parallel-not-exposed',
  'line-depth-not-known',
  'line-size-not-known',
]
/** Lines that burn or kill, and those nobody can name: never bored past unseen. */
const NEVER_UNSEEN = ['gas', 'propane', 'oil', 'steam', 'electric', 'lighting', 'other']

/** Whether two people may set a rule aside at all. */
export function maySetAside(code: string, kind: string | null): boolean {
  if (!MAY_BE_SET_ASIDE.includes(code)) return false
  return !ABOUT_EXPOSURE.includes(code) || (kind !== null && !NEVER_UNSEEN.includes(kind))
}
