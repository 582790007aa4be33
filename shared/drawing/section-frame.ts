import { type PathThere, pathAt, type SectionFacts } from './section-facts.ts'
import type { Point } from './svg-tree.ts'

/** What the section shows, in metres: stations left and right, levels up and down. */
export type Extent = {
  readonly fromM: number
  readonly toM: number
  readonly highestM: number
  readonly lowestM: number
}

/** Ground drawn past an end that has no pit. */
const BESIDE_M = 1
const BESIDE_SHARE = 0.06
/** What is shown below the deepest thing. */
const BELOW_SHARE = 0.08

/** Along the bore a pit takes its length: before the launch, past the reception, about a middle one. */
export function pitSpanM(pit: SectionFacts['plan']['pits'][number]): readonly [number, number] {
  if (pit.serves === 'launch') return [pit.atM - pit.lengthM, pit.atM]
  if (pit.serves === 'reception') return [pit.atM, pit.atM + pit.lengthM]
  return [pit.atM - pit.lengthM / 2, pit.atM + pit.lengthM / 2]
}

/** Below the planned line: most likely place and what nine in ten stay within. */
const lowestM = ({ offM, p90M }: PathThere): number => Math.max(0, offM) + p90M

export function extentOf({ input, plan, line, radiusM, utilities }: SectionFacts): Extent {
  const besideM = Math.max(BESIDE_M, line.lengthM * BESIDE_SHARE)
  const spans = plan.pits.map(pitSpanM)
  const marginM = line.lengthM * 0.015
  const hasPit = (serves: string) => plan.pits.some((pit) => pit.serves === serves)
  const fromM = Math.min(hasPit('launch') ? 0 : -besideM, ...spans.map(([from]) => from)) - marginM
  const toM =
    Math.max(line.lengthM + (hasPit('reception') ? 0 : besideM), ...spans.map(([, to]) => to)) + marginM
  const levels = line.breaksM.map((stationM) => line.groundLevelM(stationM))
  const highestM = Math.max(...levels)
  const footings = [input.ends.launch, input.ends.reception].flatMap((end, index) =>
    end.footingDepthM === null ? [] : [line.groundLevelM(index * line.lengthM) - end.footingDepthM],
  )
  const lowest = Math.min(
    ...plan.pits.map((pit) => line.groundLevelM(pit.atM) - pit.floorDepthM),
    ...plan.shots.flatMap((shot, index) => [
      line.axisLevelM(shot.fromM) - radiusM,
      line.axisLevelM(shot.toM) - radiusM - lowestM(pathAt(plan, index, shot.toM, 'vertical')),
    ]),
    ...utilities.flatMap(({ said, depths }) =>
      depths && said.stationM !== null ? [line.groundLevelM(said.stationM) - depths.bottomM] : [],
    ),
    ...footings,
  )
  const levelsDown = highestM - lowest
  return { fromM, toM, highestM, lowestM: lowest - levelsDown * BELOW_SHARE }
}

export type Frame = {
  readonly extent: Extent
  readonly leftPx: number
  readonly rightPx: number
  /** Words may stand so far right: on a sheet the section may be narrower than the paper. */
  readonly wordsRightPx: number
  readonly topPx: number
  readonly bottomPx: number
  readonly pxPerM: number
  /** Down: `exaggeration` times `pxPerM`. */
  readonly pxPerMDown: number
  readonly exaggeration: number
  readonly isNarrow: boolean
  readonly x: (stationM: number) => number
  readonly y: (levelM: number) => number
  readonly at: (stationM: number, levelM: number) => Point
}

export function frameOf(
  extent: Extent,
  scale: { readonly pxPerM: number; readonly exaggeration: number },
  place: Pick<Frame, 'leftPx' | 'wordsRightPx' | 'topPx' | 'isNarrow'>,
): Frame {
  const { pxPerM, exaggeration } = scale
  const pxPerMDown = pxPerM * exaggeration
  const x = (stationM: number) => place.leftPx + (stationM - extent.fromM) * pxPerM
  const y = (levelM: number) => place.topPx + (extent.highestM - levelM) * pxPerMDown
  return {
    extent,
    ...place,
    rightPx: x(extent.toM),
    bottomPx: y(extent.lowestM),
    pxPerM,
    pxPerMDown,
    exaggeration,
    x,
    y,
    at: (stationM, levelM) => [x(stationM), y(levelM)],
  }
}

/** Stations to draw a line through between two, with every break on the way. */
export function stationsBetween(breaksM: readonly number[], fromM: number, toM: number): readonly number[] {
  return [fromM, ...breaksM.filter((m) => m > fromM && m < toM), toM]
}
