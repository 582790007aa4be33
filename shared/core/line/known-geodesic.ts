import { PreconditionError } from '../outcome.ts'
import type { geodesicLength } from './geodesic.ts'

/**
 * Geodesics come from a library as large as a fifteenth of everything a first visit fetches, and only a line given by
 * two positions needs them. Whoever imports `geodesic.ts` makes them known; a page does so when it meets such a line,
 * a program at its start.
 */
const known: { relation: typeof geodesicLength | null } = { relation: null }

export const learnGeodesic = (relation: typeof geodesicLength): void => {
  known.relation = relation
}

export const isGeodesicKnown = (): boolean => known.relation !== null

/** To ask before it was made known is a mistake of ours. */
export function knownGeodesic(): typeof geodesicLength {
  if (known.relation === null) {
    throw new PreconditionError('a line between positions was asked for before geodesic.ts was loaded')
  }
  return known.relation
}
