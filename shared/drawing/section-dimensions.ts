import { planWord } from '../text/plan-words.ts'
import { saidQuantity } from '../text/say-quantity.ts'
import { dimensionArrow } from './arrows.ts'
import { LABEL_PX, LINE_PX, label, SMALL_PX } from './label.ts'
import { type LaneItem, placeInLane } from './lane.ts'
import type { SectionFacts } from './section-facts.ts'
import { type Frame, pitSpanM } from './section-frame.ts'
import { soilReaches } from './section-ground.ts'
import { crossing } from './section-utilities.ts'
import { group, lineBetween, rect, type SvgNode } from './svg-tree.ts'
import { BOLD, textWidth } from './text-width.ts'

type Row = { readonly node: SvgNode; readonly heightPx: number }

/** In a narrower pit the arrows would hide it; the figures below say as much. */
const NARROW_PIT_PX = 26

/** Arrows down to the axis and to the floor at each pit; their figures stand below the section. */
export function depthArrows(facts: SectionFacts, frame: Frame): SvgNode {
  const { line, plan } = facts
  return group(
    'depths',
    plan.pits.flatMap((pit) => {
      const [fromM, toM] = pitSpanM(pit)
      const left = frame.x(fromM)
      const width = frame.x(toM) - left
      if (width < NARROW_PIT_PX) return []
      const ground = (share: number) => line.groundLevelM(fromM + (toM - fromM) * share)
      const axisShare = pit.serves === 'launch' ? 0.7 : 0.3
      const floorShare = 1 - axisShare
      const at = line.axisLevelM(pit.atM)
      const floor = line.groundLevelM(pit.atM) - pit.floorDepthM
      const axisX = left + width * axisShare
      const floorX = left + width * floorShare
      return [
        lineBetween(
          'bore-line',
          [pit.serves === 'reception' ? left : axisX, frame.y(at)],
          [pit.serves === 'launch' ? left + width : axisX, frame.y(at)],
        ),
        dimensionArrow('depth-dimension', [axisX, frame.y(ground(axisShare))], [axisX, frame.y(at)]),
        dimensionArrow('floor-dimension', [floorX, frame.y(ground(floorShare))], [floorX, frame.y(floor)]),
      ]
    }),
  )
}

type EndNote = { readonly centrePx: number; readonly priority: number; readonly lines: readonly string[] }

function endNotes(facts: SectionFacts, frame: Frame): readonly EndNote[] {
  const { input, line, plan, say, words } = facts
  const pits = plan.pits.map((pit): EndNote => {
    const [fromM, toM] = pitSpanM(pit)
    const name = pit.kind === 'pit' ? planWord('pitServes', pit.serves, say) : planWord('end', pit.kind, say)
    return {
      centrePx: frame.x((fromM + toM) / 2),
      priority: pit.serves === 'middle' ? 0 : 2,
      lines: [
        pit.shored ? `${name}, ${words('shored')}` : name,
        words('center', { m: line.axisDepthM(pit.atM) }),
        words('floor', { m: pit.floorDepthM }),
      ],
    }
  })
  const others = [input.ends.launch, input.ends.reception].flatMap((end, index): EndNote[] => {
    const atM = index * line.lengthM
    if (!['wall', 'bank', 'handhole'].includes(end.kind)) return []
    const lines = [planWord('end', end.kind, say), words('center', { m: line.axisDepthM(atM) })]
    if (end.kind === 'wall')
      lines.push(
        end.footingDepthM === null ? words('footingUnknown') : words('footing', { m: end.footingDepthM }),
      )
    if (end.kind === 'wall' && index === 1 && facts.stopShortM !== null)
      lines.push(words('stopShort', { m: facts.stopShortM }))
    return [{ centrePx: frame.x(atM), priority: 2, lines }]
  })
  return [...pits, ...others]
}

const widthOf = (note: EndNote): number =>
  Math.max(...note.lines.map((text, index) => textWidth(text, SMALL_PX) * (index === 0 ? BOLD : 1)))

/** What each end is and how deep, under it; over it the least cover, where the section had no room for its figure. */
export function endNoteRow(
  facts: SectionFacts,
  frame: Frame,
  topPx: number,
  cover: { readonly text: string; readonly x: number } | null,
): Row {
  const notes = endNotes(facts, frame)
  const coverPx = cover === null ? 0 : LINE_PX
  const items = notes.map(
    (note): LaneItem => ({
      centrePx: note.centrePx,
      priority: note.priority,
      widthPx: widthOf(note),
      // Never so far that it stands under its neighbour.
      slackPx: widthOf(note) / 2,
    }),
  )
  const centres = placeInLane(items, { left: frame.leftPx, right: frame.wordsRightPx })
  const kept = notes.flatMap((note, index) => {
    const centre = centres[index]
    return centre === null || centre === undefined ? [] : [{ note, centre }]
  })
  const nodes = kept.flatMap(({ note, centre }) =>
    note.lines.map((text, line) =>
      label(text, centre, topPx + coverPx + 12 + line * LINE_PX, {
        anchor: 'middle',
        sizePx: SMALL_PX,
        className: line === 0 ? 'heading' : '',
      }),
    ),
  )
  const lines = Math.max(0, ...kept.map(({ note }) => note.lines.length))
  const coverNodes = cover === null ? [] : [coverBelow(cover, frame, topPx + 12)]
  return { node: group('end-notes', [...coverNodes, ...nodes]), heightPx: coverPx + lines * LINE_PX + 4 }
}

function coverBelow(cover: { readonly text: string; readonly x: number }, frame: Frame, y: number): SvgNode {
  const half = (textWidth(cover.text, LABEL_PX) * BOLD) / 2
  const x = Math.min(Math.max(cover.x, frame.leftPx + half), frame.wordsRightPx - half)
  return label(cover.text, x, y, { anchor: 'middle', className: 'heading' })
}

/** The names of the ground, between their separators. */
export function soilRow(facts: SectionFacts, frame: Frame, topPx: number): Row {
  const reaches = soilReaches(facts)
  const items = reaches.map((reach): LaneItem => {
    const widthPx = textWidth(reach.word, LABEL_PX)
    const roomPx = (reach.toM - reach.fromM) * frame.pxPerM
    return {
      centrePx: frame.x((reach.fromM + reach.toM) / 2),
      widthPx,
      priority: reach.toM - reach.fromM,
      slackPx: Math.max(0, (roomPx - widthPx) / 2) + 12,
    }
  })
  const edges = reaches.slice(1).map(({ fromM }) => ({ left: frame.x(fromM), right: frame.x(fromM) }))
  const centres = placeInLane(items, { left: frame.leftPx, right: frame.wordsRightPx }, edges)
  const nodes = reaches.flatMap(({ word }, index) => {
    const centre = centres[index]
    return centre === null || centre === undefined
      ? []
      : [label(word, centre, topPx + 14, { anchor: 'middle' })]
  })
  return { node: group('soil-names', nodes), heightPx: 22 }
}

/** Lengths: each shot where there are several, and the whole. */
export function lengthRows(facts: SectionFacts, frame: Frame, topPx: number): Row {
  const { line, say } = facts
  const said = (m: number) => saidQuantity(m, 'length', say)
  const rows =
    line.shots.length > 1
      ? [line.shots, [{ fromM: 0, toM: line.lengthM }]]
      : [[{ fromM: 0, toM: line.lengthM }]]
  const nodes = rows.flatMap((spans, row) => {
    const y = topPx + row * 24 + 18
    const items = spans.map(
      (span): LaneItem => ({
        centrePx: frame.x((span.fromM + span.toM) / 2),
        widthPx: textWidth(said(span.toM - span.fromM), LABEL_PX),
        priority: 1,
        slackPx: 4,
      }),
    )
    const centres = placeInLane(items, { left: frame.leftPx, right: frame.wordsRightPx })
    return spans.flatMap((span, index) => {
      const centre = centres[index]
      const arrow = dimensionArrow('length-dimension', [frame.x(span.fromM), y], [frame.x(span.toM), y])
      const text = said(span.toM - span.fromM)
      return centre === null || centre === undefined
        ? [arrow]
        : [arrow, label(text, centre, y - 5, { anchor: 'middle' })]
    })
  })
  const foot = topPx + rows.length * 24
  const ticks = [0, line.lengthM, ...line.shots.map((shot) => shot.toM)].map((m) =>
    lineBetween('dimension', [frame.x(m), topPx + 8], [frame.x(m), foot]),
  )
  return { node: group('lengths', [...ticks, ...nodes]), heightPx: rows.length * 24 + 8 }
}

/** Names of what lies over the bore, above the ground; a flag's pole keeps its place. */
export function surfaceNames(facts: SectionFacts, frame: Frame, footPx: number): SvgNode {
  const { line, say } = facts
  const poles = crossing(facts).map(({ stationM }) => ({ left: frame.x(stationM), right: frame.x(stationM) }))
  const walls = [facts.input.ends.launch, facts.input.ends.reception].flatMap((end, index) => {
    const x = frame.x(index * line.lengthM)
    return end.kind === 'wall' ? [{ left: x - 4, right: x + 30 }] : []
  })
  const items = line.reaches.map((reach): LaneItem => {
    const widthPx = textWidth(planWord('surface', reach.kind, say), SMALL_PX)
    const roomPx = (reach.toM - reach.fromM) * frame.pxPerM
    return {
      centrePx: frame.x((reach.fromM + reach.toM) / 2),
      widthPx,
      priority: roomPx,
      slackPx: Math.max(8, (roomPx - widthPx) / 2),
    }
  })
  const centres = placeInLane(items, { left: frame.leftPx, right: frame.wordsRightPx }, [...poles, ...walls])
  return group(
    'surface-names',
    line.reaches.flatMap((reach, index) => {
      const centre = centres[index]
      if (centre === null || centre === undefined) return []
      const text = planWord('surface', reach.kind, say)
      return [label(text, centre, footPx - 8, { anchor: 'middle', sizePx: SMALL_PX })]
    }),
  )
}

/** A bar of a round length, for an eye without a ruler. */
export function scaleBar(facts: SectionFacts, frame: Frame, x: number, y: number): SvgNode {
  const { say } = facts
  const unitM = say.system === 'us' ? 0.3048 : 1
  const wantedM = 70 / frame.pxPerM / unitM
  const steps = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000].filter(
    (step) => say.system === 'si' || step >= 0.5,
  )
  const stepM = (steps.filter((step) => step <= wantedM).at(-1) ?? steps[0] ?? 1) * unitM
  const width = stepM * frame.pxPerM
  return group('scale-bar', [
    rect('arrow', x, y - 4, width / 2, 4),
    rect('cut', x, y - 4, width, 4),
    label(saidQuantity(stepM, 'length', say), x + width + 8, y + 2, { sizePx: SMALL_PX }),
  ])
}
