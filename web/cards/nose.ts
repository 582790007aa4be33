import { deviation } from '../../shared/core/line/deviation.ts'
import type { Plan } from '../../shared/core/plan/plan.ts'
import { normalQuantile } from '../../shared/core/statistics/normal.ts'

export type Nose =
  | { readonly state: 'beyond' }
  | {
      readonly state: 'found'
      readonly stationM: number
      /** What is left to bore; null where the crossing does not say how long it is. */
      readonly leftM: number | null
      /** Centre of the tool below ground, had it held its line; null for a crossing that cannot be planned. */
      readonly depthM: number | null
      /** Nine cases in ten, the wider of the two planes. */
      readonly reachM: number
    }

type Point = Plan['shots'][number]['path']['points'][number]

/** Between the two points around a station. */
function between(points: readonly Point[], stationM: number, of: (point: Point) => number): number {
  const after = points.findIndex((point) => point.stationM >= stationM)
  const [a, b] = [points[Math.max(0, after - 1)], points[after < 0 ? points.length - 1 : after]]
  if (!a || !b) return 0
  const share = b.stationM === a.stationM ? 0 : (stationM - a.stationM) / (b.stationM - a.stationM)
  return of(a) + Math.min(1, Math.max(0, share)) * (of(b) - of(a))
}

/** Nine in ten lie within this many standard deviations, either way. */
const NINE_IN_TEN = normalQuantile(0.95)

/** Where the nose is by the hose mark alone: half a form filled in must not keep a crew from digging in the right place. */
export function noseByMark(stationM: number): Nose {
  const usual = { aimRad: deviation.inputs.aim.default, driftRadPerSqrtM: deviation.inputs.drift.default }
  const { sigmaM } = deviation.fn({ stationM: Math.max(0, stationM), ...usual })
  return { state: 'found', stationM, leftM: null, depthM: null, reachM: NINE_IN_TEN * sigmaM }
}

/** Where the nose is when it has come so far from the launch face; what was seen on the way counts. */
export function noseOf({ shots, bore }: Plan, stationM: number): Nose {
  const shot = shots.find((each) => stationM <= each.toM)
  if (!shot || stationM < 0) return { state: 'beyond' }
  const { points } = shot.path
  const share = (stationM - shot.fromM) / (shot.toM - shot.fromM)
  const planned = shot.depthFromM + share * (shot.depthToM - shot.depthFromM)
  const off = (of: (point: Point) => number) => between(points, stationM, of)
  return {
    state: 'found',
    stationM,
    leftM: bore.lengthM - stationM,
    depthM: planned + off((point) => point.lowM),
    reachM: Math.max(
      off((point) => Math.abs(point.rightM) + point.sidewaysP90M),
      off((point) => point.verticalP90M),
    ),
  }
}
