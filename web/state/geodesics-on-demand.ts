import { signal } from '@preact/signals'
import { isGeodesicKnown } from '../../shared/core/line/known-geodesic.ts'
import type { CrossingInput } from '../../shared/core/plan/crossing-input.ts'

const areKnown = signal(isGeodesicKnown())

/**
 * A line between two positions waits for the library that measures it, fetched when the first such line is met; whoever
 * asks while drawing or computing is asked again once it is here.
 */
export function waitsForGeodesics(input: CrossingInput): boolean {
  if ('lengthM' in input.line || areKnown.value) return false
  import('../../shared/core/line/geodesic.ts').then(() => {
    areKnown.value = true
  })
  return true
}
