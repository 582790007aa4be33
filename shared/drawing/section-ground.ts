import type { OverInput } from '../core/plan/crossing-input.ts'
import { soilWord } from '../text/soil-words.ts'
import type { SectionFacts } from './section-facts.ts'
import { type Frame, stationsBetween } from './section-frame.ts'
import { group, lineBetween, type Point, polygon, polyline, rect, type SvgNode } from './svg-tree.ts'

const groundPoints = (facts: SectionFacts, frame: Frame, fromM: number, toM: number): readonly Point[] =>
  stationsBetween(facts.line.breaksM, fromM, toM).map((m) => frame.at(m, facts.line.groundLevelM(m)))

/** The earth in section, from the ground down to the foot of the drawing. */
export function earth(facts: SectionFacts, frame: Frame): SvgNode {
  const { fromM, toM } = frame.extent
  const top = groundPoints(facts, frame, fromM, toM)
  return polygon('earth', [...top, [frame.rightPx, frame.bottomPx], [frame.leftPx, frame.bottomPx]])
}

/** Where an open bank takes the ground away, the line goes down with it. */
export function groundLine(facts: SectionFacts, frame: Frame): SvgNode {
  const { input, line } = facts
  const { fromM, toM } = frame.extent
  const fromBankM = input.ends.launch.kind === 'bank' ? 0 : fromM
  const toBankM = input.ends.reception.kind === 'bank' ? line.lengthM : toM
  const points = groundPoints(facts, frame, fromBankM, toBankM)
  const foot = (stationM: number, outM: number): readonly Point[] => {
    const footM = bankFootM(facts, stationM)
    return [frame.at(stationM, footM), frame.at(outM, footM)]
  }
  const before = fromBankM === fromM ? [] : [...foot(0, fromM)].reverse()
  const after = toBankM === toM ? [] : foot(line.lengthM, toM)
  return polyline('ground-line', [...before, ...points, ...after])
}

/** A hand's breadth under the bore: where the foot of an open bank is drawn. */
const BANK_FOOT_M = 0.15
export const bankFootM = ({ line, radiusM }: SectionFacts, stationM: number): number =>
  line.axisLevelM(stationM) - radiusM - BANK_FOOT_M

type Pave = {
  readonly thickPx: number
  readonly stepPx: number
  readonly slantPx: number
  readonly className: string
}
/** Quiet patterns, one a kind; lawn, ditch and other ground lie without a slab. */
const PAVES: Readonly<Record<OverInput['kind'], Pave | null>> = {
  lawn: null,
  ditch: null,
  other: null,
  walk: { thickPx: 6, stepPx: 28, slantPx: 0, className: 'hatch' },
  pavers: { thickPx: 8, stepPx: 10, slantPx: 0, className: 'hatch' },
  drive: { thickPx: 8, stepPx: 14, slantPx: 6, className: 'hatch' },
  slab: { thickPx: 11, stepPx: 14, slantPx: -9, className: 'hatch' },
  road: { thickPx: 12, stepPx: 8, slantPx: 8, className: 'hatch' },
}
const ROAD_TOP_PX = 5

function loose(kind: OverInput['kind'], x: number, y: number): readonly SvgNode[] {
  if (kind === 'lawn')
    return [lineBetween('grass', [x, y], [x - 2, y - 5]), lineBetween('grass', [x, y], [x + 2, y - 6])]
  if (kind === 'ditch')
    return [
      polyline('groundwater', [
        [x - 4, y + 4],
        [x, y + 9],
        [x + 4, y + 4],
      ]),
    ]
  return [rect('hatch', x - 1, y + 5, 2, 2)]
}

/** What lies over one reach, drawn on the ground line. `yAt` gives the ground at a pixel. */
export function surfacePattern(
  kind: OverInput['kind'],
  leftPx: number,
  rightPx: number,
  yAt: (xPx: number) => number,
): readonly SvgNode[] {
  const pave = PAVES[kind]
  const stepPx = pave?.stepPx ?? 10
  const marks: SvgNode[] = []
  const count = Math.min(400, Math.floor((rightPx - leftPx) / stepPx))
  for (let index = 0; index <= count; index++) {
    const x = leftPx + index * stepPx + stepPx / 2
    if (x > rightPx - 1) break
    if (!pave) marks.push(...loose(kind, x, yAt(x)))
    else {
      const foot = Math.min(Math.max(x - pave.slantPx, leftPx), rightPx)
      marks.push(lineBetween(pave.className, [x, yAt(x)], [foot, yAt(foot) + pave.thickPx]))
    }
  }
  return marks
}

/** Each reach as the file gives it; ground nobody described has no pattern. */
export function surfaces(facts: SectionFacts, frame: Frame): SvgNode {
  const { line } = facts
  const yAt = (xPx: number): number =>
    frame.y(line.groundLevelM((xPx - frame.leftPx) / frame.pxPerM + frame.extent.fromM))
  const reaches = line.reaches.map((reach) => {
    const left = frame.x(reach.fromM)
    const right = frame.x(reach.toM)
    const pave = PAVES[reach.kind]
    const top = groundPoints(facts, frame, reach.fromM, reach.toM)
    const under = (thickPx: number): readonly Point[] => [...top].reverse().map(([x, y]) => [x, y + thickPx])
    const bodies = pave === null ? [] : [polygon('hard', [...top, ...under(pave.thickPx)])]
    if (reach.kind === 'road') bodies.push(polygon('hard road-top', [...top, ...under(ROAD_TOP_PX)]))
    return group(`surface surface-${reach.kind}`, [
      ...bodies,
      ...surfacePattern(reach.kind, left, right, yAt),
    ])
  })
  return group('surfaces', reaches)
}

type SoilReach = { readonly fromM: number; readonly toM: number; readonly word: string }

/** The ground along the bore, neighbours of the same name as one. */
export function soilReaches({ plan, say }: SectionFacts): readonly SoilReach[] {
  const reaches: SoilReach[] = []
  for (const { fromM, toM, uscs, stateCode } of plan.shots.flatMap((shot) => shot.stretches)) {
    const word = soilWord(uscs, stateCode, say)
    const last = reaches.at(-1)
    if (last?.word === word) reaches[reaches.length - 1] = { ...last, toM }
    else reaches.push({ fromM, toM, word })
  }
  return reaches
}

/** A dashed line where the ground changes, taken up again in the row of soil names below. */
export function soilSeparators(
  facts: SectionFacts,
  frame: Frame,
  rowTopPx: number,
  rowFootPx: number,
): SvgNode {
  const changes = soilReaches(facts).slice(1)
  return group(
    'soil-changes',
    changes.flatMap(({ fromM }) => {
      const x = frame.x(fromM)
      return [
        lineBetween('separator', frame.at(fromM, facts.line.groundLevelM(fromM)), [x, frame.bottomPx]),
        lineBetween('separator', [x, rowTopPx], [x, rowFootPx]),
      ]
    }),
  )
}

export type WaterReach = { readonly fromM: number; readonly toM: number; readonly depthM: number }

/** Groundwater as the file gives it, reach by reach. */
export function waterReaches({ input, line }: SectionFacts): readonly WaterReach[] {
  let reachedM = 0
  return input.ground.flatMap((said, index) => {
    const fromM = said.fromM ?? reachedM
    const toM = Math.min(said.toM ?? input.ground[index + 1]?.fromM ?? line.lengthM, line.lengthM)
    reachedM = toM
    return said.waterTableM === null || toM <= fromM ? [] : [{ fromM, toM, depthM: said.waterTableM }]
  })
}

export const isInView = (facts: SectionFacts, frame: Frame, { fromM, depthM }: WaterReach): boolean =>
  facts.line.groundLevelM(fromM) - depthM > frame.extent.lowestM

/** Where on its reach the triangle stands: as far as may be from the lines that cross. */
export function waterMarkM(facts: SectionFacts, { fromM, toM }: WaterReach): number {
  const lines = facts.utilities.flatMap(({ said }) => (said.stationM === null ? [] : [said.stationM]))
  const roomM = (stationM: number) => Math.min(...lines.map((each) => Math.abs(each - stationM)), toM - fromM)
  const places = [0.85, 0.65, 0.5, 0.35, 0.15].map((share) => fromM + (toM - fromM) * share)
  return places.reduce((best, each) => (roomM(each) > roomM(best) + 0.01 ? each : best))
}

/** The dashed line with a triangle standing on it. */
export function groundwater(facts: SectionFacts, frame: Frame): SvgNode {
  const inView = waterReaches(facts).filter((reach) => isInView(facts, frame, reach))
  return group(
    'water-table',
    inView.flatMap((reach) => {
      const { fromM, toM, depthM } = reach
      const stations = stationsBetween(facts.line.breaksM, fromM, toM)
      const points = stations.map((m) => frame.at(m, facts.line.groundLevelM(m) - depthM))
      const markM = waterMarkM(facts, reach)
      const [x, y] = frame.at(markM, facts.line.groundLevelM(markM) - depthM)
      return [polyline('groundwater', points), waterMark(x, y)]
    }),
  )
}

export const waterMark = (x: number, y: number): SvgNode =>
  group('water-triangle', [
    polygon('water-mark', [
      [x, y],
      [x - 6, y - 9],
      [x + 6, y - 9],
    ]),
    lineBetween('water-mark', [x - 5, y + 3], [x + 5, y + 3]),
    lineBetween('water-mark', [x - 2.5, y + 6], [x + 2.5, y + 6]),
  ])
