/** Who signs for what before a bore: once a day, once a site, and for each bore. One signature closes a layer's items. */
export const SIGN_LAYERS = ['day', 'site', 'bore'] as const
export type SignLayer = (typeof SIGN_LAYERS)[number]

/** The eleven points of the release; each must pass. */
export const RELEASE_POINTS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11] as const
export type ReleasePoint = (typeof RELEASE_POINTS)[number]

export type SignItem = {
  readonly id: string
  readonly layer: SignLayer
  /** The point of the release it answers. */
  readonly point: ReleasePoint
  /** One of the three that kill: signed only with its photo. */
  readonly needsPhoto: boolean
  /** When it is asked at all. */
  readonly when: 'always' | 'lines' | 'proved' | 'watchers'
}

const item = (
  id: string,
  layer: SignLayer,
  point: ReleasePoint,
  when: SignItem['when'] = 'always',
  needsPhoto = false,
): SignItem => ({ id, layer, point, when, needsPhoto })

/** What is signed on site, in the order a crew meets it. */
export const SIGN_ITEMS: readonly SignItem[] = [
  item('pits-inspected', 'day', 7),
  item('pits-protected', 'day', 7),
  item('pits-dry-and-aired', 'day', 7),
  item('hose-joints', 'day', 8, 'always', true),
  item('cut-off-tried', 'day', 8),
  item('crew-briefed', 'day', 9),
  item('private-lines-walked', 'site', 4),
  item('outside-owners-asked', 'site', 4),
  item('emergency-card', 'site', 9),
  item('permits-on-site', 'site', 10),
  item('marks-and-white-line', 'bore', 3, 'always', true),
  item('answers-fit-ground', 'bore', 2),
  item('crossings-taped', 'bore', 5, 'lines', true),
  item('sewer-proved', 'bore', 5, 'proved'),
  item('watchers-named', 'bore', 5, 'watchers'),
  item('clearance-seen', 'bore', 6),
  item('exit-pit-empty', 'bore', 7),
  item('after-look-agreed', 'bore', 11),
]

/** What ends a release before its time; each opens the day's and the bore's list again. */
export const REOPEN_CAUSES = [
  'rain',
  'break',
  'marks-lost',
  'path-changed',
  'off-line',
  'scope',
  'other',
] as const
export type ReopenCause = (typeof REOPEN_CAUSES)[number]

/** These take the site's list along: what was walked and asked no longer covers the work. */
export const REOPENS_SITE: readonly ReopenCause[] = ['marks-lost', 'path-changed', 'scope']
