import type { ChecklistItem } from '../../shared/core/plan/plan.ts'

export const LAYERS = ['day', 'site', 'bore'] as const
export type Layer = (typeof LAYERS)[number]

/** What holds for every bore of a day, and for every bore of a site; all else is looked at bore by bore. Common practice. */
const OF_A_DAY: readonly string[] = [
  'competent-person-today',
  'emergency-card',
  'hose-cut-off',
  'whip-restraints',
  'oil-and-tilt-test',
  'antifreeze-oil',
  'noise-at-the-ear',
  'hose-tape-zero',
]
const OF_A_SITE: readonly string[] = [
  'ticket-on-sheet',
  'owners-answered',
  'non-members-asked',
  'trenchless-said',
  'gas-engines-asked',
  'plant-off-overhead',
  'marks-in-snow',
  'route-walked',
  'private-lines-asked',
  'photos-of-marks',
  'power-owner-asked',
  'traffic-plan',
  'permit-on-site',
  'silica-when-cutting',
]

/** How often an item of the check list is signed: once a day, once a site, or for each bore. */
export function signOffLayer({ id }: Pick<ChecklistItem, 'id'>): Layer {
  if (OF_A_DAY.includes(id)) return 'day'
  return OF_A_SITE.includes(id) ? 'site' : 'bore'
}
