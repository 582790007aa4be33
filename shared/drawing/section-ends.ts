import type { EndInput } from '../core/plan/crossing-input.ts'
import type { SectionFacts } from './section-facts.ts'
import { type Frame, pitSpanM } from './section-frame.ts'
import { bankFootM } from './section-ground.ts'
import { group, lineBetween, type Point, polygon, polyline, rect, type SvgNode } from './svg-tree.ts'

/** Drawn where nobody gave it; the note says so. */
const WALL_DRAWN_M = 0.2
const HANDHOLE_DRAWN_M = 0.6
/** A wall is shown standing so far out of the ground. */
const ABOVE_GROUND_PX = 16
const SLAB_SHOWN_PX = 14

/** A hole dug: cut out of the earth, shored ones with heavier sides. */
function pitHole(facts: SectionFacts, frame: Frame, pit: SectionFacts['plan']['pits'][number]): SvgNode {
  const { line } = facts
  const [fromM, toM] = pitSpanM(pit)
  const floorM = line.groundLevelM(pit.atM) - pit.floorDepthM
  const corners = [
    frame.at(fromM, line.groundLevelM(fromM)),
    frame.at(fromM, floorM),
    frame.at(toM, floorM),
    frame.at(toM, line.groundLevelM(toM)),
  ] as const
  const [topLeft, footLeft, footRight, topRight] = corners
  const sides = pit.shored
    ? [lineBetween('shore', topLeft, footLeft), lineBetween('shore', topRight, footRight)]
    : []
  return group(
    `pit pit-${pit.kind} pit-${pit.serves}`,
    [
      polygon('void', [...stationsTop(facts, frame, fromM, toM), footRight, footLeft]),
      polyline('cut', corners),
      ...sides,
      ...(pit.kind === 'inside' ? [insideSlab(frame, topLeft, topRight)] : []),
    ],
    { 'data-at': pit.atM },
  )
}

/** The void reaches a hair above the ground, so that no ground line is left over it. */
function stationsTop({ line }: SectionFacts, frame: Frame, fromM: number, toM: number) {
  const stations = [fromM, ...line.breaksM.filter((m) => m > fromM && m < toM), toM]
  return stations.map((m): readonly [number, number] => [frame.x(m), frame.y(line.groundLevelM(m)) - 2])
}

/** A pit inside a building opens through the floor slab: drawn on both sides of it. */
function insideSlab(frame: Frame, left: Point, right: Point): SvgNode {
  const reach = (fromPx: number, toPx: number, y: number): SvgNode => {
    const from = Math.max(fromPx, frame.leftPx)
    return rect('masonry', from, y - 3, Math.min(toPx, frame.rightPx) - from, 6)
  }
  return group('inside', [
    reach(left[0] - SLAB_SHOWN_PX, left[0], left[1]),
    reach(right[0], right[0] + SLAB_SHOWN_PX, right[1]),
  ])
}

type End = { readonly end: EndInput; readonly atM: number; readonly outward: 1 | -1 }

/** A building wall in section, its footing wider; where the footing's depth is unknown it fades into the ground. */
function wall(facts: SectionFacts, frame: Frame, { end, atM, outward }: End): SvgNode {
  const groundM = facts.line.groundLevelM(atM)
  const thicknessM = end.thicknessM ?? WALL_DRAWN_M
  const face = frame.x(atM)
  const back = frame.x(atM + outward * thicknessM)
  const top = frame.y(groundM) - ABOVE_GROUND_PX
  const foot = end.footingDepthM === null ? frame.bottomPx : frame.y(groundM - end.footingDepthM)
  const left = Math.min(face, back)
  const width = Math.max(3, Math.abs(back - face))
  // What is behind it is the building: open down to the cellar floor, which stands on the footing.
  const behind = outward === 1 ? frame.rightPx : frame.leftPx
  const open = rect('void', Math.min(back, behind), top, Math.abs(behind - back), foot - 6 - top)
  const footing =
    end.footingDepthM === null ? [] : [rect('masonry', left - width / 2, foot - 6, width * 2, 6)]
  const floor = lineBetween('cut', [back, foot - 6], [behind, foot - 6])
  return group('wall', [open, floor, rect('masonry', left, top, width, foot - top), ...footing])
}

/** The ground falls away in front of the bore. */
function bank(facts: SectionFacts, frame: Frame, { atM, outward }: End): SvgNode {
  const edge = outward === 1 ? frame.rightPx : frame.leftPx
  const face = frame.x(atM)
  const top = frame.y(facts.line.groundLevelM(atM)) - 3
  const foot = frame.y(bankFootM(facts, atM))
  return group('bank', [rect('void', Math.min(face, edge), top, Math.abs(edge - face), foot - top)])
}

/** A box with a lid, its floor a little under the bore. */
function handhole(facts: SectionFacts, frame: Frame, { atM, outward }: End): SvgNode {
  const face = frame.x(atM)
  const back = frame.x(atM + outward * HANDHOLE_DRAWN_M)
  const left = Math.min(face, back)
  const width = Math.abs(back - face)
  const top = frame.y(facts.line.groundLevelM(atM))
  const foot = frame.y(bankFootM(facts, atM))
  return group('handhole', [
    rect('void', left, top - 2, width, foot - top + 2),
    rect('cut', left, top, width, foot - top),
    rect('masonry', left - 3, top - 4, width + 6, 5),
  ])
}

/** Pits, and ends of every other kind. */
export function ends(facts: SectionFacts, frame: Frame): SvgNode {
  const { input, line, plan } = facts
  const both: readonly End[] = [
    { end: input.ends.launch, atM: 0, outward: -1 },
    { end: input.ends.reception, atM: line.lengthM, outward: 1 },
  ]
  const others = both.flatMap((each) => {
    if (each.end.kind === 'wall') return [wall(facts, frame, each)]
    if (each.end.kind === 'bank') return [bank(facts, frame, each)]
    return each.end.kind === 'handhole' ? [handhole(facts, frame, each)] : []
  })
  return group('ends', [...plan.pits.map((pit) => pitHole(facts, frame, pit)), ...others])
}
