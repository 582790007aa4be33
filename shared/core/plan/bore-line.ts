import { knownGeodesic } from '../line/known-geodesic.ts'
import { done, type Issue, type Outcome, refused } from '../outcome.ts'
import type { Trace } from '../trace.ts'
import type { Assumed } from './assumptions.ts'
import type { CrossingInput, DepthDatum, OverKind } from './crossing-input.ts'
import { lineRefusals } from './line-refusals.ts'

export type Shot = {
  readonly fromM: number
  readonly toM: number
  /** Axis below local ground at each end. */
  readonly depthFromM: number
  readonly depthToM: number
  /** Axis level at each end, in the datum of `surface`. */
  readonly levelFromM: number
  readonly levelToM: number
}

export type Reach = { readonly fromM: number; readonly toM: number; readonly kind: OverKind }

/** The bore as geometry: stations from the launch face, ground above, axis below. */
export type BoreLine = {
  readonly lengthM: number
  readonly shots: readonly Shot[]
  readonly reaches: readonly Reach[]
  groundLevelM(stationM: number): number
  axisLevelM(stationM: number): number
  /** Axis below the ground straight above it. */
  axisDepthM(stationM: number): number
  /** Stations where ground, axis or surface kind may change; straight in between. */
  readonly breaksM: readonly number[]
}

type Sizes = { readonly boreDiameterM: number; readonly cradleM: number }

/** Depth as given → depth of the axis. Floor: the tool lies on its cradle. */
export function axisDepthOf(givenM: number, to: DepthDatum, sizes: Sizes): number {
  const radiusM = sizes.boreDiameterM / 2
  if (to === 'top') return givenM + radiusM
  if (to === 'bottom') return givenM - radiusM
  if (to === 'floor') return givenM - radiusM - sizes.cradleM
  return givenM
}

const between = (x: number, x0: number, y0: number, x1: number, y1: number): number =>
  x1 === x0 ? y0 : y0 + ((x - x0) / (x1 - x0)) * (y1 - y0)

function levels(surface: CrossingInput['surface']): (stationM: number) => number {
  const points = [...surface].sort((a, b) => a.stationM - b.stationM)
  return (stationM) => {
    const first = points[0]
    const last = points.at(-1)
    if (!first || !last) return 0
    if (stationM <= first.stationM) return first.levelM
    for (let index = 1; index < points.length; index++) {
      const a = points[index - 1]
      const b = points[index]
      if (a && b && stationM <= b.stationM)
        return between(stationM, a.stationM, a.levelM, b.stationM, b.levelM)
    }
    return last.levelM
  }
}

type Laying = {
  readonly input: CrossingInput
  readonly lengthM: number
  readonly ground: (stationM: number) => number
  readonly depthOf: (givenM: number) => number
  readonly assumed: Assumed
}

/** Shot by shot; a middle depth nobody gave lies on the straight line between the ends, and is listed. */
function layShots({ input, lengthM, ground, depthOf, assumed }: Laying): Shot[] {
  const launchM = depthOf(input.depth.launchM)
  const receptionM = depthOf(input.depth.receptionM)
  const ends = input.shots.map((shot) => Math.min(shot.toM, lengthM))
  if (lengthM - (ends.at(-1) ?? 0) > 0.001) ends.push(lengthM)
  const shots: Shot[] = []
  let fromM = 0
  let depthFromM = launchM
  ends.forEach((toM, index) => {
    const isLast = index === ends.length - 1
    const said = input.shots[index]?.depthM ?? null
    const straightM = between(toM, 0, ground(0) - launchM, lengthM, ground(lengthM) - receptionM)
    let depthToM = receptionM
    if (!isLast && said !== null) depthToM = depthOf(said)
    else if (!isLast) {
      depthToM = ground(toM) - straightM
      const interpolated = { standing: 'our judgement', source: 'OurJudgement' } as const
      assumed.note({ name: `shots.${index}.depth`, value: depthToM, unit: 'm', ...interpolated })
    }
    const levelFromM = ground(fromM) - depthFromM
    shots.push({ fromM, toM, depthFromM, depthToM, levelFromM, levelToM: ground(toM) - depthToM })
    fromM = toM
    depthFromM = depthToM
  })
  return shots
}

function aboveGround(shots: readonly Shot[], radiusM: number): Issue[] {
  return shots.flatMap((shot, index) =>
    shot.depthFromM > radiusM && shot.depthToM > radiusM
      ? []
      : [
          {
            path: shots.length === 1 ? 'depth' : `shots.${index}.depth`,
            code: 'out-of-range' as const,
            values: { kind: 'depth', min: radiusM },
          },
        ],
  )
}

/** Lays out shots, ground and axis; refuses what lies outside the line. */
export function layBoreLine(
  input: CrossingInput,
  boreDiameterM: number,
  assumed: Assumed,
  trace: Trace,
): Outcome<BoreLine> {
  const lengthM =
    'lengthM' in input.line
      ? input.line.lengthM
      : trace.run(knownGeodesic(), { launch: input.line.launch, reception: input.line.reception }, 'line')
          .lengthM
  if (!(lengthM >= 0.3 && lengthM <= 1000)) {
    return refused({ path: 'line', code: 'out-of-range', values: { kind: 'length', min: 0.3, max: 1000 } })
  }
  const ground = levels(input.surface)
  const cradleM = input.depth.to === 'floor' ? assumed.use('pit.cradle') : 0
  const depthOf = (givenM: number): number => axisDepthOf(givenM, input.depth.to, { boreDiameterM, cradleM })
  const shots = layShots({ input, lengthM, ground, depthOf, assumed })
  const issues = [...lineRefusals(input, lengthM), ...aboveGround(shots, boreDiameterM / 2)]
  if (issues.length > 0) return refused(...issues.slice(0, 50))
  const axisLevelM = (stationM: number): number => {
    const shot = shots.find((each) => stationM <= each.toM) ?? shots.at(-1)
    return shot ? between(stationM, shot.fromM, shot.levelFromM, shot.toM, shot.levelToM) : 0
  }
  const reaches = input.over.map((reach) => ({ ...reach, toM: Math.min(reach.toM, lengthM) }))
  const marks = [
    ...input.surface.map((point) => point.stationM),
    ...shots.map((shot) => shot.toM),
    ...reaches.flatMap((reach) => [reach.fromM, reach.toM]),
  ]
  const breaksM = [...new Set([0, lengthM, ...marks.filter((m) => m > 0 && m < lengthM)])].sort(
    (a, b) => a - b,
  )
  const axisDepthM = (stationM: number): number => ground(stationM) - axisLevelM(stationM)
  return done({ lengthM, shots, reaches, groundLevelM: ground, axisLevelM, axisDepthM, breaksM })
}
