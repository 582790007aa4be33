import type { Reading } from '../line/path-belief.ts'
import type { Assumed } from './assumptions.ts'
import type { BoreLine, Shot } from './bore-line.ts'
import type { ObservationInput } from './crossing-input.ts'

/** A published or usual tolerance is taken as a 95 % half-width. */
export const HALF_WIDTH_TO_SIGMA = 1.96

/** An observation as it counts within its shot. */
export type Observed = {
  /** Its place in the file. */
  readonly index: number
  readonly said: ObservationInput
  readonly stationM: number
  /** Reading error either way, 19 times in 20. */
  readonly errorM: number
}

/** What a look of this kind may be out by where the user has not said: instruments by the depth they read through. */
function errorOf(said: ObservationInput, depthM: number, assumed: Assumed): number {
  if (said.errorM !== null) return said.errorM
  switch (said.method) {
    case 'first-metre':
      return assumed.use('reading.firstMetre')
    case 'seen':
      return assumed.use('clearance.exposureError')
    case 'sonde':
      return Math.max(assumed.use('reading.sondeLeast'), assumed.use('reading.sondeShare') * depthM)
    case 'hose-wire':
      return Math.max(assumed.use('reading.wireLeast'), assumed.use('reading.wireShare') * depthM)
    case 'ear':
      return assumed.use('reading.ear')
  }
}

/** The looks at the tool during one shot; each pit begins anew. */
export function observedIn(
  shot: Shot,
  line: BoreLine,
  observations: readonly ObservationInput[],
  assumed: Assumed,
): readonly Observed[] {
  return observations.flatMap((said, index) => {
    if (said.stationM <= shot.fromM || said.stationM > shot.toM) return []
    const depthM = line.axisDepthM(said.stationM) + (said.lowM ?? 0)
    return [{ index, said, stationM: said.stationM - shot.fromM, errorM: errorOf(said, depthM, assumed) }]
  })
}

/** The readings of one plane. */
export const readingsOf = (observed: readonly Observed[], plane: 'rightM' | 'lowM'): readonly Reading[] =>
  observed.flatMap(({ said, stationM, errorM }) => {
    const offsetM = said[plane]
    const isSeen = said.method === 'seen'
    return offsetM === null ? [] : [{ stationM, offsetM, sigmaM: errorM / HALF_WIDTH_TO_SIGMA, isSeen }]
  })
