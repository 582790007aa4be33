import type { OverKind } from '../core/plan/crossing-input.ts'
import { colourWord } from '../text/drawing-words.ts'
import { planWord } from '../text/plan-words.ts'
import { LABEL_PX, LINE_PX, label, SMALL_PX } from './label.ts'
import { lookMark } from './section-bore.ts'
import type { SectionFacts } from './section-facts.ts'
import { soilReaches, surfacePattern, waterMark, waterReaches } from './section-ground.ts'
import { group, lineBetween, node, polyline, rect, type SvgNode } from './svg-tree.ts'
import { textWidth, wrapped } from './text-width.ts'
import { markColour, utilityGlyph } from './utility-marks.ts'

type Entry = { readonly swatch: (x: number, y: number) => SvgNode; readonly text: string }

const SWATCH_PX = 28
const GAP_PX = 18
const ROW_PX = 22

const HARD_PX: Readonly<Partial<Record<OverKind, number>>> = {
  walk: 6,
  pavers: 8,
  drive: 8,
  slab: 11,
  road: 12,
}

function surfaceSwatch(kind: OverKind): Entry['swatch'] {
  return (x, y) => {
    const top = y - 5
    const thick = HARD_PX[kind]
    const body = thick === undefined ? [] : [rect('hard', x, top, SWATCH_PX, thick)]
    const road = kind === 'road' ? [rect('hard road-top', x, top, SWATCH_PX, 5)] : []
    const line = polyline('ground-line', [
      [x, top],
      [x + SWATCH_PX, top],
    ])
    return group(`surface surface-${kind}`, [
      ...body,
      ...road,
      ...surfacePattern(kind, x, x + SWATCH_PX, () => top),
      line,
    ])
  }
}

function lineEntries(facts: SectionFacts, idPrefix: string): readonly Entry[] {
  const { say, utilities, words } = facts
  const kinds = [...new Set(utilities.map(({ said }) => said.kind))]
  const entries: Entry[] = kinds.map((kind) => ({
    swatch: (x, y) => utilityGlyph(kind, x + SWATCH_PX / 2, y, facts.palette),
    text: words('colour', { kind, colour: colourWord(markColour(kind, facts.palette), say.lang) }),
  }))
  const first = utilities.find((each) => each.depths !== null)
  if (first)
    entries.push({
      swatch: (x, y) =>
        group(`mark-${markColour(first.said.kind, facts.palette)}`, [rect('doubt', x, y - 7, SWATCH_PX, 14)]),
      text: words('doubt'),
    })
  const unknown = utilities.find((each) => each.depths === null && each.said.stationM !== null)
  if (unknown) {
    const fill = `url(#${idPrefix}-fade-${markColour(unknown.said.kind, facts.palette)})`
    entries.push({
      swatch: (x, y) =>
        node('rect', { class: 'fading-band', x: x + 8, y: y - 9, width: 12, height: 18, fill }),
      text: words('fading'),
    })
  }
  const unproved = utilities.find((each) => each.depths !== null && !each.isMeasured)
  if (unproved)
    entries.push({
      swatch: (x, y) =>
        group(`mark-${markColour(unproved.said.kind, facts.palette)}`, [
          rect('utility unproved', x + 4, y - 6, 20, 12),
        ]),
      text: words('unproved'),
    })
  return entries
}

/** Where the tool was found, once it was looked for. */
function lookEntries({ plan, words }: SectionFacts): readonly Entry[] {
  if (plan.shots.every((shot) => shot.path.observations.length === 0)) return []
  return [
    { swatch: (x, y) => lookMark([x + SWATCH_PX / 2, y], 8, false), text: words('look') },
    {
      swatch: (x, y) => lineBetween('likely-path', [x, y], [x + SWATCH_PX, y]),
      text: words('likelyPath'),
    },
  ]
}

function entriesOf(facts: SectionFacts, idPrefix: string): readonly Entry[] {
  const { line, say, words } = facts
  const surfaces = [...new Set(line.reaches.map((reach) => reach.kind))]
  const entries: Entry[] = [
    { swatch: (x, y) => rect('bore', x, y - 3, SWATCH_PX, 6), text: words('bore') },
    {
      swatch: (x, y) => rect('envelope', x, y - 7, SWATCH_PX, 14),
      text: words('envelope'),
    },
    ...lookEntries(facts),
    ...surfaces.map((kind) => ({ swatch: surfaceSwatch(kind), text: planWord('surface', kind, say) })),
    ...lineEntries(facts, idPrefix),
  ]
  if (waterReaches(facts).length > 0)
    entries.push({ swatch: (x, y) => waterMark(x + SWATCH_PX / 2, y + 2), text: words('groundwaterLegend') })
  if (soilReaches(facts).length > 1)
    entries.push({
      swatch: (x, y) => lineBetween('separator', [x + SWATCH_PX / 2, y - 9], [x + SWATCH_PX / 2, y + 9]),
      text: words('separator'),
    })
  return entries
}

/** Every sign of the drawing with its words, only those it uses; runs on over as many rows as it needs. */
export function legend(
  facts: SectionFacts,
  place: { readonly leftPx: number; readonly rightPx: number; readonly topPx: number },
  idPrefix: string,
): { readonly node: SvgNode; readonly heightPx: number } {
  const nodes: SvgNode[] = [
    label(facts.words('legend'), place.leftPx, place.topPx + 14, { className: 'heading', sizePx: LABEL_PX }),
  ]
  const roomPx = place.rightPx - place.leftPx - SWATCH_PX - 8
  let x = place.leftPx
  let y = place.topPx + 22
  let rowPx = 0
  for (const entry of entriesOf(facts, idPrefix)) {
    const lines = wrapped(entry.text, SMALL_PX, roomPx)
    const width = SWATCH_PX + 8 + Math.max(...lines.map((text) => textWidth(text, SMALL_PX)))
    if (x > place.leftPx && x + width > place.rightPx) {
      x = place.leftPx
      y += rowPx
      rowPx = 0
    }
    nodes.push(entry.swatch(x, y + 10))
    nodes.push(
      ...lines.map((text, index) =>
        label(text, x + SWATCH_PX + 8, y + 14 + index * LINE_PX, { sizePx: SMALL_PX }),
      ),
    )
    rowPx = Math.max(rowPx, ROW_PX + (lines.length - 1) * LINE_PX)
    x += width + GAP_PX
  }
  return { node: group('legend', nodes), heightPx: y + rowPx - place.topPx }
}
