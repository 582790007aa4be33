import { dimensionArrow } from './arrows.ts'
import { halfAlongM, isShort } from './drawn-utility.ts'
import { type Anchor, type Box, LINE_PX, label, labelBox, overlaps } from './label.ts'
import { boredToM } from './section-bore.ts'
import type { SectionFacts } from './section-facts.ts'
import { type Frame, pitSpanM } from './section-frame.ts'
import { isInView, waterMarkM, waterReaches } from './section-ground.ts'
import { crossing } from './section-utilities.ts'
import { group, type SvgNode } from './svg-tree.ts'

/** The arrow stands this far inside the bore where the least cover is at an end, clear of the pit's side. */
const INSIDE_PX = 12

/** The arrow itself: from the ground to the top of the bore where the cover is least. */
function coverArrow(facts: SectionFacts, frame: Frame): { readonly node: SvgNode; readonly x: number } {
  const { bore } = facts.plan
  const place = frame.x(bore.coverAtM)
  const x = Math.min(
    Math.max(place, frame.x(0) + INSIDE_PX),
    Math.max(frame.x(boredToM(facts)) - INSIDE_PX, frame.x(0)),
  )
  const top = frame.y(facts.line.groundLevelM(bore.coverAtM))
  const foot = top + bore.coverM * frame.pxPerMDown
  return { x, node: dimensionArrow('cover-dimension', [x, top], [x, foot]) }
}

/** What words in the section must keep off: lines with their doubt, poles, pits and the bore. */
function obstacles(facts: SectionFacts, frame: Frame, coverX: number): readonly Box[] {
  const { line, plan, radiusM } = facts
  const lines = crossing(facts).flatMap((utility): Box[] => {
    const half = Math.max(8, halfAlongM(utility) * frame.pxPerM + 8)
    const x = frame.x(utility.stationM)
    const body = { left: x - half, right: x + half, top: frame.topPx - 20 }
    if (!utility.depths) return [{ ...body, bottom: frame.bottomPx }]
    const groundM = line.groundLevelM(utility.stationM)
    const around = utility.depthDoubtM
    const centreY = frame.y(groundM - utility.depths.centreM)
    // The heavy line of a short gap runs on to the bore.
    const axisY = isShort(utility) ? frame.y(line.axisLevelM(utility.stationM)) : centreY
    return [
      { left: x - 2, right: x + 2, top: body.top, bottom: Math.max(centreY, axisY) },
      {
        ...body,
        top: frame.y(groundM - utility.depths.topM + around),
        bottom: frame.y(groundM - utility.depths.bottomM - around) + 5,
      },
    ]
  })
  const pits = plan.pits.map((pit): Box => {
    const [fromM, toM] = pitSpanM(pit)
    return { left: frame.x(fromM), right: frame.x(toM), top: frame.topPx, bottom: frame.bottomPx }
  })
  const bores = plan.shots.map((shot): Box => {
    const levels = [line.axisLevelM(shot.fromM), line.axisLevelM(shot.toM)]
    return {
      left: frame.x(shot.fromM),
      right: frame.x(shot.toM),
      top: frame.y(Math.max(...levels) + radiusM),
      bottom: frame.y(Math.min(...levels) - radiusM),
    }
  })
  const arrow = { left: coverX - 3, right: coverX + 3, top: 0, bottom: frame.bottomPx }
  return [...lines, ...pits, ...bores, arrow]
}

type Place = { readonly x: number; readonly ys: readonly number[]; readonly sides: readonly Anchor[] }

/** Words at the first free place beside a point; on two lines where one is too long; null where there is none. */
function besidePoint(
  text: string,
  { x, ys, sides }: Place,
  frame: Frame,
  taken: Box[],
): readonly SvgNode[] | null {
  const space = text.indexOf(' ')
  for (const lines of [[text], [text.slice(0, space), text.slice(space + 1)]])
    for (const y of ys)
      for (const anchor of sides) {
        const at = anchor === 'start' ? x + 8 : x - 8
        const boxes = lines.map((line, index) => labelBox(line, at, y + index * LINE_PX, anchor))
        const fits = boxes.every(
          (box) =>
            box.left >= frame.leftPx &&
            box.right <= frame.wordsRightPx &&
            box.top >= frame.topPx &&
            box.bottom <= frame.bottomPx &&
            !taken.some((each) => overlaps(each, box)),
        )
        if (!fits) continue
        taken.push(...boxes)
        return lines.map((line, index) =>
          label(line, at, y + index * LINE_PX, { anchor, className: 'heading' }),
        )
      }
  return null
}

type Figures = {
  readonly node: SvgNode
  /** The least cover, where no place in the section was free: it goes below. */
  readonly coverBelow: { readonly text: string; readonly x: number } | null
}

/** The least cover, with its figure at the first free place beside the arrow; groundwater's figure likewise. */
export function sectionFigures(facts: SectionFacts, frame: Frame): Figures {
  const { plan, words } = facts
  const arrow = coverArrow(facts, frame)
  const taken = [...obstacles(facts, frame, arrow.x)]
  const top = frame.y(facts.line.groundLevelM(plan.bore.coverAtM))
  const heightPx = plan.bore.coverM * frame.pxPerMDown
  const ys = [0.5, 0.62, 0.74, 0.86, 0.38, 0.26].map((share) => top + 6 + heightPx * share)
  const text = words('cover', { m: plan.bore.coverM })
  const isRight = arrow.x > (frame.leftPx + frame.rightPx) / 2
  const sides: readonly Anchor[] = isRight ? ['end', 'start'] : ['start', 'end']
  const cover = besidePoint(text, { x: arrow.x, ys, sides }, frame, taken)
  const water = waterReaches(facts)
    .filter((reach) => isInView(facts, frame, reach))
    .flatMap((reach) => {
      const markM = waterMarkM(facts, reach)
      const y = frame.y(facts.line.groundLevelM(markM) - reach.depthM)
      const place: Place = { x: frame.x(markM), ys: [y - 6, y + 18], sides: ['end', 'start'] }
      return besidePoint(words('groundwater', { m: reach.depthM }), place, frame, taken) ?? []
    })
  return {
    node: group('figures', [arrow.node, ...(cover ?? []), ...water]),
    coverBelow: cover ? null : { text, x: arrow.x },
  }
}
