import { planWord } from '../text/plan-words.ts'
import { type DrawnUtility, halfAlongM, isShort } from './drawn-utility.ts'
import { type Flag, type FlagItem, GLYPH_PX } from './flags.ts'
import { LINE_PX, label, SMALL_PX } from './label.ts'
import type { SectionFacts } from './section-facts.ts'
import type { Frame } from './section-frame.ts'
import { group, lineBetween, node, rect, rounded, type SvgNode } from './svg-tree.ts'
import { markColour, utilityGlyph } from './utility-marks.ts'

/** Lines that cross the bore; those alongside are in the strip seen from above. */
export const crossing = ({ utilities }: SectionFacts): readonly CrossingLine[] =>
  utilities.flatMap((each) =>
    each.said.stationM === null ? [] : [{ ...each, stationM: each.said.stationM }],
  )

/** Width of the band where nothing says how large the line is, or where it lies sideways. */
const BAND_DRAWN_M = 0.1
const LEAST_BAND_PX = 10
/** Smaller than this on the drawing, ticks beside it lead the eye. */
const SMALL_MARK_PX = 3

const DEPTH_WORDS = { top: 'toTop', centre: 'toCenter', bottom: 'toBottom' } as const

type CrossingLine = DrawnUtility & { readonly stationM: number }

/** What a line's flag says of its depth and of the room to the bore. */
function depthText({ said, depths, isMeasured }: DrawnUtility, { words }: SectionFacts): string {
  if (!said.depth || !depths) return words('depthUnknown')
  const depth = words(DEPTH_WORDS[said.depth.to], { m: said.depth.valueM })
  return isMeasured ? depth : `${depth}, ${words('depthNotMeasured')}`
}

export const shortText = (utility: DrawnUtility, { words }: SectionFacts): string | null =>
  isShort(utility) ? words('shortBy', { m: utility.clearance?.shortM ?? 0 }) : null

export function gapText({ depths, said, clearance }: DrawnUtility, { words }: SectionFacts): string | null {
  const gapM = clearance?.gapM ?? null
  if (gapM === null || (depths === null && said.stationM !== null)) return null
  return words('gap', { m: Math.max(0, gapM) })
}

/** What stands on a line's flag, the most needed first. */
function flagLines(utility: CrossingLine, facts: SectionFacts): readonly string[] {
  const name = facts.words('lineAt', { kind: utility.said.kind, m: utility.stationM })
  const rest = [shortText(utility, facts), depthText(utility, facts), gapText(utility, facts)]
  return [name, ...rest.filter((text) => text !== null)]
}

/** `isCompact`: names, and what is short; the rest is in the table. */
export function flagItems(
  facts: SectionFacts,
  x: (stationM: number) => number,
  isCompact: boolean,
): readonly FlagItem[] {
  return crossing(facts).map((utility) => {
    const lines = flagLines(utility, facts)
    const name = planWord('utility', utility.said.kind, facts.say)
    const shortLines = [name, ...lines.slice(1, isShort(utility) ? 2 : 1)]
    return {
      xPx: x(utility.stationM),
      priority: isShort(utility) ? 2 : utility.depths ? 0 : 1,
      lines: isCompact ? shortLines : lines,
      shortLines,
    }
  })
}

/** Gradients of the bands over unknown depth, one a colour; ids carry the drawing's own beginning. */
export function fadeGradients(facts: SectionFacts, idPrefix: string): readonly SvgNode[] {
  const colours = new Set(
    crossing(facts)
      .filter((each) => !each.depths)
      .map((each) => markColour(each.said.kind, facts.palette)),
  )
  const stop = (offset: string, opacity: string, colour: string): SvgNode =>
    node('stop', { class: `stop mark-${colour}`, offset, 'stop-opacity': opacity })
  return [...colours].map((colour) =>
    node('linearGradient', { id: `${idPrefix}-fade-${colour}`, x1: '0', y1: '0', x2: '0', y2: '1' }, [
      stop('0', '.6', colour),
      stop('1', '.06', colour),
    ]),
  )
}

function unknownDepth(
  utility: CrossingLine,
  facts: SectionFacts,
  frame: Frame,
  idPrefix: string,
): readonly SvgNode[] {
  const halfM = Math.max(BAND_DRAWN_M / 2, halfAlongM(utility)) + (utility.sideDoubtM ?? BAND_DRAWN_M)
  const halfPx = Math.max(LEAST_BAND_PX / 2, halfM * frame.pxPerM)
  const x = frame.x(utility.stationM)
  const top = frame.y(facts.line.groundLevelM(utility.stationM))
  const band = rect('fading-band', x - halfPx, top, 2 * halfPx, frame.bottomPx - top)
  const fill = `url(#${idPrefix}-fade-${markColour(utility.said.kind, facts.palette)})`
  return [{ ...band, attributes: { ...band.attributes, fill } }]
}

function knownDepth(utility: CrossingLine, facts: SectionFacts, frame: Frame): readonly SvgNode[] {
  const { depths, said, isMeasured, depthDoubtM, stationM } = utility
  if (!depths) return []
  const groundM = facts.line.groundLevelM(stationM)
  const [x, y] = frame.at(stationM, groundM - depths.centreM)
  const rx = halfAlongM(utility) * frame.pxPerM
  const ry = ((said.diameterM ?? 0) / 2) * frame.pxPerMDown
  const top = Math.max(frame.y(groundM), y - ry - depthDoubtM * frame.pxPerMDown)
  const bottom = Math.min(frame.bottomPx, y + ry + depthDoubtM * frame.pxPerMDown)
  const half = Math.max(LEAST_BAND_PX / 2, rx + 3)
  const doubt = rect('doubt', x - half, top, 2 * half, bottom - top)
  const className = isMeasured ? 'utility' : 'utility unproved'
  if (said.diameterM === null) {
    // Depth without a size: a cross at the place told, never a pipe of a made-up size.
    const arm = 5
    const cross = `M${rounded(x - arm)} ${rounded(y - arm)}l${2 * arm} ${2 * arm}m${-2 * arm} 0l${2 * arm} ${-2 * arm}`
    return [doubt, node('path', { class: `utility-edge ${className}`, d: cross })]
  }
  const ticks =
    Math.min(rx, ry) >= SMALL_MARK_PX
      ? []
      : [
          lineBetween('dimension', [x - rx - 8, y], [x - rx - 3, y]),
          lineBetween('dimension', [x + rx + 3, y], [x + rx + 8, y]),
        ]
  return [doubt, node('ellipse', { class: className, cx: x, cy: y, rx, ry }), ...ticks]
}

/** Every line that crosses, at its station: to size at its depth, or as a band where the depth is unknown. */
export function utilitiesInSection(facts: SectionFacts, frame: Frame, idPrefix: string): SvgNode {
  return group(
    'utilities',
    crossing(facts).map((utility) => {
      const colour = `mark-${markColour(utility.said.kind, facts.palette)}`
      const children = utility.depths
        ? [...knownDepth(utility, facts, frame), ...shortGap(utility, facts, frame)]
        : unknownDepth(utility, facts, frame, idPrefix)
      return group(`line-crossed ${colour}`, children, { 'data-utility': utility.index })
    }),
  )
}

/** Where the room is short, a heavy line spans what there is between line and bore. */
function shortGap(utility: CrossingLine, facts: SectionFacts, frame: Frame): readonly SvgNode[] {
  if (!isShort(utility) || !utility.depths) return []
  const { line, radiusM } = facts
  const depthM = line.axisDepthM(utility.stationM)
  const isUnder = depthM >= utility.depths.centreM
  const fromM = isUnder ? utility.depths.bottomM : depthM + radiusM
  const toM = isUnder ? depthM - radiusM : utility.depths.topM
  if (toM <= fromM) return []
  const groundM = line.groundLevelM(utility.stationM)
  return [
    lineBetween(
      'gap-short',
      frame.at(utility.stationM, groundM - fromM),
      frame.at(utility.stationM, groundM - toM),
    ),
  ]
}

/** Poles from each flag down to its line, and the flags with their words. */
export function flagNodes(
  facts: SectionFacts,
  frame: Frame,
  flags: readonly Flag[],
  footPx: number,
): readonly SvgNode[] {
  return crossing(facts).flatMap((utility, index) => {
    const flag = flags[index]
    if (!flag) return []
    const x = frame.x(utility.stationM)
    const groundM = facts.line.groundLevelM(utility.stationM)
    const ry = ((utility.said.diameterM ?? 0) / 2) * frame.pxPerMDown
    const end = utility.depths ? frame.y(groundM - utility.depths.centreM) - ry : frame.y(groundM)
    const topPx = footPx - flag.top
    const outward = flag.side === 'right' ? 1 : -1
    const glyphX = x + outward * (4 + GLYPH_PX / 2)
    const textX = (line: number) => x + outward * (line === 0 ? 8 + GLYPH_PX : 4)
    const anchor = flag.side === 'right' ? ('start' as const) : ('end' as const)
    const lines = flag.lines.map((text, line) =>
      label(text, textX(line), topPx + line * LINE_PX + 12, {
        anchor,
        sizePx: SMALL_PX,
        className: line === 0 ? 'heading' : line === 1 && isShort(utility) ? 'bad' : '',
      }),
    )
    return [
      group('flag', [
        lineBetween('pole', [x, topPx], [x, end]),
        utilityGlyph(utility.said.kind, glyphX, topPx + LINE_PX / 2, facts.palette),
        ...lines,
      ]),
    ]
  })
}
