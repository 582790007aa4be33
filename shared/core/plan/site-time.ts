import type { Assumed } from './assumptions.ts'
import type { BoreLine } from './bore-line.ts'
import type { CrossingInput, PullMethod } from './crossing-input.ts'
import { isPavedAt } from './pits.ts'
import type { PitPart } from './plan.ts'
import type { SiteTime } from './run.ts'

/** The everyday pit the digging times are for: a floor at about 4 ft 3 in. */
const USUAL_FLOOR_M = 1.3

/** A deeper pit takes longer in more than proportion: it is wider too. */
const digging = (pit: PitPart): number => (pit.floorDepthM / USUAL_FLOOR_M) ** 1.5

/** Time on site besides hammering; `hammerS` is the likely hammering, for what goes with it. */
export function siteTime(
  input: CrossingInput,
  line: BoreLine,
  pits: readonly PitPart[],
  method: PullMethod | null,
  hammerS: number,
  assumed: Assumed,
): SiteTime {
  const dug = pits.reduce((sum, pit) => sum + digging(pit), 0)
  const paved = pits.filter((pit) => isPavedAt(line, pit.atM)).length
  const deep = pits.filter((pit) => pit.needsProtection).length
  const toExpose = (input.utilities ?? []).filter(
    (u) => u.stationM !== null && u.evidence !== 'exposed',
  ).length
  let likelyS =
    assumed.use('site.setUp') +
    dug * (assumed.use('site.pit') + assumed.use('site.reinstatement')) +
    line.shots.length * assumed.use('site.aim') +
    pullTimeS(method, line, hammerS, assumed)
  if (input.over.some((reach) => reach.kind === 'road')) likelyS += assumed.use('site.traffic')
  if (paved > 0) likelyS += paved * assumed.use('site.pavedPit')
  if (deep > 0) likelyS += deep * assumed.use('site.shoring')
  if (toExpose > 0) likelyS += toExpose * assumed.use('site.pothole')
  return { likelyS, cov: assumed.use('site.spread') }
}

/** Getting the pipe in: pushed 5 minutes; on a cable 10 a shot; reversed home half to all of the first pass. */
function pullTimeS(method: PullMethod | null, line: BoreLine, hammerS: number, assumed: Assumed): number {
  const shots = line.shots.length
  switch (method) {
    case 'push':
      return assumed.use('pull.pushTime') * shots
    case 'reverse':
      return assumed.use('pull.reverseShare') * hammerS
    case 'tow':
      return 0
    case 'expander':
      return hammerS + assumed.use('pull.cableTime') * shots
    case 'cable':
    case null:
      return assumed.use('pull.cableTime') * shots
  }
}
