import { planWord } from '../text/plan-words.ts'
import { halfAlongM } from './drawn-utility.ts'
import { LABEL_PX, LINE_PX, label, SMALL_PX } from './label.ts'
import { type LaneItem, placeInLane } from './lane.ts'
import { boredToM, lookMark } from './section-bore.ts'
import { pathAt, type SectionFacts } from './section-facts.ts'
import { type Frame, pitSpanM } from './section-frame.ts'
import { crossing } from './section-utilities.ts'
import { group, lineBetween, node, type Point, polygon, polyline, rect, type SvgNode } from './svg-tree.ts'
import { BOLD, textWidth, wrapped } from './text-width.ts'
import { markColour, utilityGlyph } from './utility-marks.ts'

/** The strip is at most so high, to either side of the bore. */
const MOST_HALF_PX = 70
const SIDEWAYS = [200, 100, 50, 20, 10, 5, 2, 1]
/** Lines alongside within this are drawn where they run; others are named at the edge. */
const ALONGSIDE_IN_VIEW_M = 2.5
const LABEL_ROW_PX = 18
const GLYPH_ONLY_PX = 14

/** How far off its line, to either side, a shot is drawn. */
const farthestM = ({ points, observations }: SectionFacts['plan']['shots'][number]['path']): number =>
  Math.max(
    0,
    ...points.map((each) => Math.abs(each.rightM) + each.sidewaysP90M),
    ...observations.map((each) => Math.abs(each.rightM ?? 0)),
  )

type Strip = {
  readonly axisPx: number
  readonly halfPx: number
  readonly halfM: number
  readonly pxPerMSideways: number
  readonly times: number
}

function stripOf(facts: SectionFacts, frame: Frame): Omit<Strip, 'axisPx'> {
  const { plan, utilities } = facts
  const offsets = utilities.flatMap(({ said }) =>
    said.stationM === null && said.offsetM !== null && Math.abs(said.offsetM) <= ALONGSIDE_IN_VIEW_M
      ? [Math.abs(said.offsetM) + (said.diameterM ?? 0) / 2 + 0.15]
      : [],
  )
  const halfM = Math.max(
    0.4,
    ...plan.pits.map((pit) => pit.widthM / 2 + 0.15),
    ...plan.shots.map((shot) => facts.radiusM + farthestM(shot.path) + 0.1),
    ...offsets,
  )
  // Never stretched more than the section itself: one drawing, one idea of how long things are.
  const allowed = SIDEWAYS.filter((times) => times <= Math.max(1, frame.exaggeration))
  const times = allowed.find((each) => halfM * frame.pxPerM * each <= MOST_HALF_PX) ?? 1
  const pxPerMSideways = frame.pxPerM * times
  return { halfM, times, pxPerMSideways, halfPx: halfM * pxPerMSideways }
}

const stationsOf = (shot: { readonly fromM: number; readonly toM: number }): readonly number[] =>
  Array.from({ length: 25 }, (_, step) => shot.fromM + ((shot.toM - shot.fromM) * step) / 24)

function envelopes(facts: SectionFacts, frame: Frame, strip: Strip): readonly SvgNode[] {
  const { plan, radiusM } = facts
  return plan.shots.map((shot, index) => {
    const edge = (sign: 1 | -1): readonly Point[] =>
      stationsOf(shot).map((m) => {
        const { offM, p90M } = pathAt(plan, index, m, 'sideways')
        return [frame.x(m), strip.axisPx + (offM + sign * (radiusM + p90M)) * strip.pxPerMSideways]
      })
    return polygon('envelope', [...edge(1), ...[...edge(-1)].reverse()])
  })
}

/** The most likely path seen from above, and where the tool was found. */
function looks(facts: SectionFacts, frame: Frame, strip: Strip): readonly SvgNode[] {
  const { plan } = facts
  const y = (offM: number): number => strip.axisPx + offM * strip.pxPerMSideways
  return plan.shots.flatMap((shot, index) => {
    if (shot.path.observations.length === 0) return []
    const path = stationsOf(shot).map((m): Point => [frame.x(m), y(pathAt(plan, index, m, 'sideways').offM)])
    const marks = shot.path.observations.flatMap(({ stationM, rightM, errorM, isOverruled }) =>
      rightM === null
        ? []
        : [lookMark([frame.x(stationM), y(rightM)], errorM * strip.pxPerMSideways, isOverruled)],
    )
    return [polyline('likely-path', path), ...marks]
  })
}

/** The line's direction on paper and its sides, so that its angle to the bore is the true one to each scale. */
function crossingLines(facts: SectionFacts, frame: Frame, strip: Strip): readonly SvgNode[] {
  return crossing(facts).map((utility) => {
    const angle = utility.said.crossingAngleRad ?? Math.PI / 2
    const slope = Math.cos(angle) / Math.max(0.05, Math.sin(angle))
    const at = (offsetM: number, alongM: number): Point => [
      frame.x(utility.stationM + alongM + offsetM * slope),
      strip.axisPx + offsetM * strip.pxPerMSideways,
    ]
    const band = (halfM: number, className: string): SvgNode =>
      polygon(className, [
        at(-strip.halfM, -halfM),
        at(-strip.halfM, halfM),
        at(strip.halfM, halfM),
        at(strip.halfM, -halfM),
      ])
    const halfM = halfAlongM(utility)
    const doubtM =
      utility.sideDoubtM === null
        ? null
        : halfM + utility.sideDoubtM / Math.max(0.087, Math.abs(Math.sin(angle)))
    const body =
      halfM * frame.pxPerM >= 0.75
        ? band(halfM, utility.isMeasured ? 'utility' : 'utility unproved')
        : lineBetween('utility-line utility', at(-strip.halfM, 0), at(strip.halfM, 0))
    const doubt = doubtM === null ? [] : [band(doubtM, 'doubt')]
    return group(`line-crossed mark-${markColour(utility.said.kind, facts.palette)}`, [...doubt, body], {
      'data-utility': utility.index,
    })
  })
}

type Alongside = { readonly nodes: readonly SvgNode[]; readonly notes: readonly string[] }

/** Lines that run beside the bore, at their offset; too far off for the strip, they are named under it. */
function alongside(facts: SectionFacts, frame: Frame, strip: Strip): Alongside {
  const notes: string[] = []
  const nodes = facts.utilities.flatMap((utility) => {
    const { said, index } = utility
    if (said.stationM !== null || said.offsetM === null) return []
    const values = { kind: said.kind, m: Math.abs(said.offsetM) }
    const isNear = Math.abs(said.offsetM) <= ALONGSIDE_IN_VIEW_M
    notes.push(facts.words(isNear ? 'alongside' : 'alongsideOff', values))
    if (!isNear) return []
    const y = strip.axisPx + said.offsetM * strip.pxPerMSideways
    const half = Math.max(0.75, ((said.diameterM ?? 0) / 2) * strip.pxPerMSideways)
    const doubt = utility.sideDoubtM === null ? 0 : utility.sideDoubtM * strip.pxPerMSideways
    const width = frame.rightPx - frame.leftPx
    return [
      group(
        `line-alongside mark-${markColour(said.kind, facts.palette)}`,
        [
          rect('doubt', frame.leftPx, y - half - doubt, width, 2 * (half + doubt)),
          rect(utility.isMeasured ? 'utility' : 'utility unproved', frame.leftPx, y - half, width, 2 * half),
          utilityGlyph(said.kind, frame.rightPx - 12, y, facts.palette),
        ],
        { 'data-utility': index },
      ),
    ]
  })
  return { nodes, notes }
}

function nameRow(facts: SectionFacts, frame: Frame, strip: Strip, topPx: number): readonly SvgNode[] {
  const all = crossing(facts)
  const texts = all.map(({ said }) => {
    const angle = said.crossingAngleRad
    const isSquare = angle === null || Math.abs(angle - Math.PI / 2) < 0.01
    return isSquare
      ? planWord('utility', said.kind, facts.say)
      : facts.words('atAngle', { kind: said.kind, rad: angle })
  })
  const topOf = (index: number): number => {
    const utility = all[index]
    if (!utility) return 0
    const angle = utility.said.crossingAngleRad ?? Math.PI / 2
    const x = frame.x(utility.stationM - (strip.halfM * Math.cos(angle)) / Math.max(0.05, Math.sin(angle)))
    return Math.min(Math.max(x, frame.leftPx), frame.rightPx)
  }
  const items = texts.map(
    (text, index): LaneItem => ({
      centrePx: topOf(index),
      widthPx: textWidth(text, SMALL_PX) + 20,
      priority: 1,
      slackPx: 40,
    }),
  )
  const range = { left: frame.leftPx, right: frame.wordsRightPx }
  const centres = placeInLane(items, range)
  // Where the words find no room the shape alone stands at its line.
  const taken = centres.flatMap((centre, index) => {
    const half = (items[index]?.widthPx ?? 0) / 2
    return centre === null ? [] : [{ left: centre - half, right: centre + half }]
  })
  const lost = items.map((item) => ({ ...item, widthPx: GLYPH_ONLY_PX }))
  const wanting = lost.filter((_, index) => centres[index] === null)
  const found = placeInLane(wanting, range, taken)
  let next = 0
  return all.flatMap((utility, index) => {
    const centre = centres[index]
    const item = items[index]
    const text = texts[index]
    if (!item || text === undefined) return []
    if (centre === null || centre === undefined) {
      const alone = found[next++]
      return alone === null || alone === undefined
        ? []
        : [utilityGlyph(utility.said.kind, alone, topPx + 8, facts.palette)]
    }
    const left = centre - item.widthPx / 2
    return [
      utilityGlyph(utility.said.kind, left + 7, topPx + 8, facts.palette),
      label(text, left + 18, topPx + 12, { sizePx: SMALL_PX }),
    ]
  })
}

/** The bore seen from above: pits to size, how far it may run left or right, and the lines about it. */
export function planStrip(
  facts: SectionFacts,
  frame: Frame,
  topPx: number,
  idPrefix: string,
): { readonly node: SvgNode; readonly heightPx: number } {
  const sizes = stripOf(facts, frame)
  const namesPx = crossing(facts).length > 0 ? LABEL_ROW_PX : 0
  const heading =
    sizes.times === 1 ? facts.words('sideways') : facts.words('sidewaysScale', { times: sizes.times })
  const width = frame.rightPx - frame.leftPx
  const headingLines = wrapped(heading, LABEL_PX * BOLD, frame.wordsRightPx - frame.leftPx)
  const namesTop = topPx + 6 + headingLines.length * LINE_PX
  const stripTop = namesTop + namesPx
  const strip: Strip = { ...sizes, axisPx: stripTop + sizes.halfPx }
  const pits = facts.plan.pits.map((pit) => {
    const [fromM, toM] = pitSpanM(pit)
    const halfPx = (pit.widthM / 2) * strip.pxPerMSideways
    const body = rect(
      'void',
      frame.x(fromM),
      strip.axisPx - halfPx,
      frame.x(toM) - frame.x(fromM),
      2 * halfPx,
    )
    return group('pit-above', [
      body,
      { ...body, attributes: { ...body.attributes, class: pit.shored ? 'shore' : 'cut' } },
    ])
  })
  const axis = strip.axisPx
  const half = Math.max(0.5, facts.radiusM * strip.pxPerMSideways)
  const bore = rect('bore', frame.x(0), axis - half, frame.x(boredToM(facts)) - frame.x(0), 2 * half)
  const beside = alongside(facts, frame, strip)
  const clipId = `${idPrefix}-strip`
  const clip = node('clipPath', { id: clipId }, [rect('', frame.leftPx, stripTop, width, 2 * strip.halfPx)])
  const foot = stripTop + 2 * strip.halfPx
  const noteLines = beside.notes.flatMap((text) => wrapped(text, SMALL_PX, frame.wordsRightPx - frame.leftPx))
  const notes = noteLines.map((text, index) =>
    label(text, frame.leftPx, foot + 16 + index * 16, { sizePx: SMALL_PX }),
  )
  const drawn = group(
    'plan-drawing',
    [
      rect('earth', frame.leftPx, stripTop, width, 2 * strip.halfPx),
      ...envelopes(facts, frame, strip),
      ...pits,
      bore,
      ...looks(facts, frame, strip),
      ...beside.nodes,
      ...crossingLines(facts, frame, strip),
    ],
    { 'clip-path': `url(#${clipId})` },
  )
  return {
    node: group('plan-strip', [
      clip,
      ...headingLines.map((text, index) =>
        label(text, frame.leftPx, topPx + 14 + index * LINE_PX, { className: 'heading' }),
      ),
      ...nameRow(facts, frame, strip, namesTop),
      drawn,
      rect('frame', frame.leftPx, stripTop, width, 2 * strip.halfPx),
      ...notes,
    ]),
    heightPx: foot - topPx + notes.length * 16 + 8,
  }
}
