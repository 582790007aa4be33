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

/** Arrow and figure keep this far off the sides of their pit, and the figure off its arrow. */
const SIDE_PX = 10
const BESIDE_PX = 7

type Pit = SectionFacts['plan']['pits'][number]
type Figured = { readonly at: 'left' | 'right'; readonly widthPx: number; readonly texts: readonly string[] }

/** An arrow without its figure says nothing: on one line, on two, or not at all. */
function fittingLines({ widthPx, texts }: Figured, roomPx: number): readonly string[] | null {
  if (roomPx < texts.length * LINE_PX + 8) return null
  return texts.every((text) => textWidth(text, SMALL_PX) + 2 * SIDE_PX + BESIDE_PX <= widthPx) ? texts : null
}

/** "floor 4 ft 6 in" as it is, or its word over its figure. */
const onTwoLines = (text: string): readonly string[] => {
  const space = text.indexOf(' ')
  return [text.slice(0, space), text.slice(space + 1)]
}

function arrowNodes(
  className: string,
  x: number,
  ys: readonly [number, number],
  at: Figured['at'],
  lines: readonly string[],
  firstBaseline: number,
): readonly SvgNode[] {
  return [
    dimensionArrow(className, [x, ys[0]], [x, ys[1]]),
    ...lines.map((text, index) =>
      label(text, at === 'left' ? x + BESIDE_PX : x - BESIDE_PX, firstBaseline + index * LINE_PX, {
        anchor: at === 'left' ? 'start' : 'end',
        sizePx: SMALL_PX,
      }),
    ),
  ]
}

/** The depth of the floor at the far side of a pit, of the bore at its face; each only where its figure has room. */
function pitArrows(facts: SectionFacts, frame: Frame, pit: Pit): readonly SvgNode[] {
  const { line, words } = facts
  const [fromM, toM] = pitSpanM(pit)
  const left = frame.x(fromM)
  const right = frame.x(toM)
  const isLaunch = pit.serves === 'launch'
  const [floorX, axisX] = isLaunch ? [left + SIDE_PX, right - SIDE_PX] : [right - SIDE_PX, left + SIDE_PX]
  const stationOf = (x: number) => frame.extent.fromM + (x - frame.leftPx) / frame.pxPerM
  const groundY = (x: number) => frame.y(line.groundLevelM(stationOf(x)))
  const floorY = frame.y(line.groundLevelM(pit.atM) - pit.floorDepthM)
  const axisY = frame.y(line.axisLevelM(pit.atM))
  const widthPx = right - left
  const [floorAt, axisAt] = isLaunch ? (['left', 'right'] as const) : (['right', 'left'] as const)
  const floorText = words('floor', { m: pit.floorDepthM })
  const above = axisY - groundY(floorX)
  const floorLines =
    fittingLines({ at: floorAt, widthPx, texts: [floorText] }, above) ??
    fittingLines({ at: floorAt, widthPx, texts: onTwoLines(floorText) }, above)
  if (floorLines === null) return []
  const top = groundY(floorX) + 16
  const floor = arrowNodes('floor-dimension', floorX, [groundY(floorX), floorY], floorAt, floorLines, top)
  const below = above - floorLines.length * LINE_PX
  const axisLines = fittingLines(
    { at: axisAt, widthPx, texts: [words('center', { m: line.axisDepthM(pit.atM) })] },
    below,
  )
  if (axisLines === null) return floor
  const face = isLaunch ? right : left
  const axisTop = top + floorLines.length * LINE_PX + 4
  return [
    lineBetween('bore-line', [Math.min(face, axisX), axisY], [Math.max(face, axisX), axisY]),
    ...floor,
    ...arrowNodes('depth-dimension', axisX, [groundY(axisX), axisY], axisAt, axisLines, axisTop),
  ]
}

/** Arrows with their figures down to floor and bore in the pits at both ends; those between have the bore in them. */
export function depthArrows(facts: SectionFacts, frame: Frame): SvgNode {
  const pits = facts.plan.pits.filter((pit) => pit.serves !== 'middle')
  return group(
    'depths',
    pits.flatMap((pit) => pitArrows(facts, frame, pit)),
  )
}

type EndNote = { readonly centrePx: number; readonly priority: number; readonly lines: readonly string[] }

/** Sizes of pits only where they push no end's words out: the table has them too. */
function endNotes(facts: SectionFacts, frame: Frame, hasSizes: boolean): readonly EndNote[] {
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
        ...(hasSizes ? [words('pitSize', { lengthM: pit.lengthM, widthM: pit.widthM })] : []),
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

function placedNotes(facts: SectionFacts, frame: Frame, hasSizes: boolean) {
  const notes = endNotes(facts, frame, hasSizes)
  const items = notes.map(
    (note): LaneItem => ({
      centrePx: note.centrePx,
      priority: note.priority,
      widthPx: widthOf(note),
      // Never so far that it stands under its neighbour.
      slackPx: widthOf(note) / 2,
    }),
  )
  return { notes, centres: placeInLane(items, { left: frame.leftPx, right: frame.wordsRightPx }) }
}

/** What each end is and how deep, under it; over it the least cover, where the section had no room for its figure. */
export function endNoteRow(
  facts: SectionFacts,
  frame: Frame,
  topPx: number,
  cover: { readonly text: string; readonly x: number } | null,
): Row {
  const coverPx = cover === null ? 0 : LINE_PX
  const withSizes = placedNotes(facts, frame, true)
  const { notes, centres } = withSizes.centres.includes(null) ? placedNotes(facts, frame, false) : withSizes
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
  // A pit between ends its shots' row, not the row of the whole: its figure stands there.
  const tick = (m: number, footPx: number) =>
    lineBetween('dimension', [frame.x(m), topPx + 8], [frame.x(m), footPx])
  const between = line.shots.slice(0, -1).map((shot) => tick(shot.toM, topPx + 24))
  const ticks = [tick(0, foot), tick(line.lengthM, foot), ...between]
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
