import type { BoreLine } from '../core/plan/bore-line.ts'
import type { CrossingInput } from '../core/plan/crossing-input.ts'
import type { Plan } from '../core/plan/plan.ts'
import type { UnitSystem } from '../quantities/shown-units.ts'
import type { Language } from '../text/language.ts'
import { flagsHeight, placeFlags } from './flags.ts'
import { LABEL_PX, LINE_PX, label, SMALL_PX } from './label.ts'
import { legend } from './legend.ts'
import { longSectionTable, type SectionTable } from './long-section-table.ts'
import { planStrip } from './plan-strip.ts'
import { boreBand, envelope, looksInSection } from './section-bore.ts'
import { depthArrows, endNoteRow, lengthRows, scaleBar, soilRow, surfaceNames } from './section-dimensions.ts'
import { ends } from './section-ends.ts'
import { type SectionFacts, sectionFacts } from './section-facts.ts'
import { sectionFigures } from './section-figures.ts'
import { type Extent, extentOf, type Frame, frameOf } from './section-frame.ts'
import { earth, groundLine, groundwater, soilSeparators, surfaces } from './section-ground.ts'
import { sectionNotes } from './section-notes.ts'
import {
  chosenExaggeration,
  PX_PER_INCH,
  PX_PER_MM,
  SHEET_MM,
  type Sheet,
  scaleNote,
  sheetScalesM,
} from './section-scale.ts'
import { fadeGradients, flagItems, flagNodes, utilitiesInSection } from './section-utilities.ts'
import { group, node, rect, type SvgNode, textNode } from './svg-tree.ts'
import { BOLD, wrapped } from './text-width.ts'

export type LongSectionOptions = {
  readonly system: UnitSystem
  readonly lang: Language
  /** Width on a screen; a sheet has its own. */
  readonly widthPx: number
  /** Vertical over horizontal scale; absent or null: chosen. */
  readonly exaggeration?: number | null
  /** A sheet is drawn to a real scale, landscape. */
  readonly sheet?: 'screen' | Sheet
  /** The crossing's name over it: for a drawing that stands by itself. Sheets have it anyway. */
  readonly heading?: boolean
  /** Begins every id, for more than one drawing on a page. */
  readonly idPrefix?: string
}

export type LongSection = {
  readonly tree: SvgNode
  readonly exaggeration: number
  readonly scaleNote: string
  readonly table: SectionTable
  /** Where a station and a level stand on the drawing, for what the page lays over it. */
  readonly frame: Frame
  readonly line: BoreLine
}

const NARROW_PX = 640
/** On a narrow screen more flags than this are kept to names. */
const MOST_FULL_FLAGS = 4
const SIDE_PX = 10
/** Of an upright page under its name and verdict. */
const JOB_TALLEST_PX = 215 * PX_PER_MM
const SHEET_MARGIN_MM: Readonly<Record<Sheet, number>> = { letter: 10, a4: 10, job: 0.5 }

type Layout = {
  readonly widthPx: number
  readonly marginPx: number
  readonly pxPerM: number
  readonly exaggeration: number
  readonly metresPerInch: number | null
  readonly hasHeading: boolean
  /** Flags with names only, where many lines stand close. */
  readonly isCompact: boolean
  readonly idPrefix: string
}
type Drawn = { readonly nodes: readonly SvgNode[]; readonly heightPx: number; readonly frame: Frame }

/** A planned crossing in section along the bore, with the strip seen from above, signs and scale. Pure. */
export function longSection(input: CrossingInput, plan: Plan, options: LongSectionOptions): LongSection {
  const facts = sectionFacts(input, plan, options)
  const extent = extentOf(facts)
  const sheet = options.sheet === undefined || options.sheet === 'screen' ? null : options.sheet
  const layout =
    sheet === null ? screenLayout(facts, extent, options) : sheetLayout(facts, extent, options, sheet)
  const drawn = draw(facts, extent, layout)
  return {
    tree: root(facts, drawn, layout, sheet),
    exaggeration: layout.exaggeration,
    scaleNote: scaleNote(facts, layout.exaggeration, layout.metresPerInch),
    table: longSectionTable(facts),
    frame: drawn.frame,
    line: facts.line,
  }
}

function screenLayout(facts: SectionFacts, extent: Extent, options: LongSectionOptions): Layout {
  const lines = facts.utilities.filter((each) => each.said.stationM !== null).length
  const widthPx = Math.max(280, options.widthPx)
  const pxPerM = (widthPx - 2 * SIDE_PX) / (extent.toM - extent.fromM)
  return {
    widthPx,
    marginPx: SIDE_PX,
    pxPerM,
    exaggeration: options.exaggeration ?? chosenExaggeration(extent, pxPerM),
    metresPerInch: null,
    hasHeading: options.heading ?? false,
    isCompact: widthPx < NARROW_PX && lines > MOST_FULL_FLAGS,
    idPrefix: options.idPrefix ?? 'section',
  }
}

/** A drawing that takes less than this of the width it has is not worth its scale. */
const LEAST_OF_WIDTH = 0.6
const isLegible = (lengthM: number, { pxPerM, widthPx }: Layout): boolean =>
  lengthM * pxPerM >= LEAST_OF_WIDTH * widthPx

/** The largest real scale at which everything fits the sheet; depths drawn larger only as far as there is room. */
function sheetLayout(facts: SectionFacts, extent: Extent, options: LongSectionOptions, sheet: Sheet): Layout {
  const widthPx = SHEET_MM[sheet].width * PX_PER_MM
  const heightPx = SHEET_MM[sheet].height * PX_PER_MM
  const marginPx = SHEET_MARGIN_MM[sheet] * PX_PER_MM
  const lengthM = extent.toM - extent.fromM
  const scales = sheetScalesM(options.system, lengthM, widthPx - 2 * marginPx)
  const layouts = (scales.length > 0 ? scales : [lengthM]).flatMap((metresPerInch) => {
    const pxPerM = PX_PER_INCH / metresPerInch
    const wanted = options.exaggeration ?? chosenExaggeration(extent, pxPerM)
    const steps = options.exaggeration ? [wanted] : [wanted, 5, 2, 1].filter((times) => times <= wanted)
    return [false, true].flatMap((isCompact) =>
      steps.map(
        (exaggeration): Layout => ({
          widthPx,
          marginPx,
          pxPerM,
          exaggeration,
          metresPerInch,
          // A job sheet has the name over it already.
          hasHeading: sheet !== 'job',
          isCompact,
          idPrefix: options.idPrefix ?? 'section',
        }),
      ),
    )
  })
  const heightOf = (layout: Layout) => draw(facts, extent, layout).heightPx
  const smallest = layouts.at(-1)
  const fitting =
    layouts.find((layout) => isLegible(lengthM, layout) && heightOf(layout) <= heightPx) ??
    // An upright page has room below: rather a tall drawing than one too small to read.
    (sheet === 'job' ? layouts.find((layout) => heightOf(layout) <= JOB_TALLEST_PX) : undefined) ??
    layouts.find((layout) => heightOf(layout) <= heightPx)
  return fitting ?? smallest ?? screenLayout(facts, extent, options)
}

/** From top to foot: name, flags, the section, what stands under it, the strip from above, signs, notes. */
function draw(facts: SectionFacts, extent: Extent, layout: Layout): Drawn {
  const { marginPx, widthPx, idPrefix } = layout
  const left = marginPx
  const range = { left, right: widthPx - marginPx }
  const headingLines = layout.hasHeading ? wrapped(facts.input.name, 16 * BOLD, range.right - range.left) : []
  const heading = headingLines.map((text, index) =>
    label(text, left, marginPx + 16 + index * 20, { sizePx: 16, className: 'heading' }),
  )
  const isNarrow = widthPx < NARROW_PX
  const xOf = (stationM: number) => left + (stationM - extent.fromM) * layout.pxPerM
  const flags = placeFlags(flagItems(facts, xOf, layout.isCompact), range)
  const flagFoot = marginPx + headingLines.length * 20 + 6 + flagsHeight(flags)
  const topPx = flagFoot + 28
  const frame = frameOf(extent, layout, { leftPx: left, wordsRightPx: range.right, topPx, isNarrow })
  const figures = sectionFigures(facts, frame)
  const endRow = endNoteRow(facts, frame, frame.bottomPx + 2, figures.coverBelow)
  const soilTop = frame.bottomPx + 2 + endRow.heightPx
  const soils = soilRow(facts, frame, soilTop)
  const lengths = lengthRows(facts, frame, soilTop + soils.heightPx)
  const stripTop = soilTop + soils.heightPx + lengths.heightPx + 8
  const strip = planStrip(facts, frame, stripTop, idPrefix)
  const legendTop = stripTop + strip.heightPx + 8
  const signs = legend(facts, { leftPx: left, rightPx: range.right, topPx: legendTop }, idPrefix)
  let y = legendTop + signs.heightPx + 18
  const notes = sectionNotes(facts, frame, layout, flags).flatMap((text) =>
    wrapped(text, SMALL_PX, range.right - range.left).map((line) => {
      const placed = label(line, left, y, { sizePx: SMALL_PX })
      y += LINE_PX
      return placed
    }),
  )
  const section = group('section', [
    earth(facts, frame),
    group('ground', [groundLine(facts, frame)]),
    surfaces(facts, frame),
    soilSeparators(facts, frame, soilTop, soilTop + soils.heightPx - 2),
    groundwater(facts, frame),
    ends(facts, frame),
    envelope(facts, frame),
    boreBand(facts, frame),
    looksInSection(facts, frame),
    utilitiesInSection(facts, frame, idPrefix),
    depthArrows(facts, frame),
    ...flagNodes(facts, frame, flags, flagFoot),
    surfaceNames(facts, frame, topPx),
    figures.node,
  ])
  return {
    nodes: [
      node('defs', {}, fadeGradients(facts, idPrefix)),
      ...heading,
      section,
      endRow.node,
      soils.node,
      lengths.node,
      strip.node,
      signs.node,
      group('notes', notes),
      scaleBar(facts, frame, left, y + 4),
    ],
    heightPx: y + 12 + marginPx,
    frame,
  }
}

/** Paper of its own has its size; on a job sheet the drawing takes the height it needs. */
const sheetSizeMm = (sheet: Sheet, drawnPx: number) =>
  sheet === 'job' ? { width: SHEET_MM.job.width, height: drawnPx / PX_PER_MM } : SHEET_MM[sheet]

function root(facts: SectionFacts, drawn: Drawn, layout: Layout, sheet: Sheet | null): SvgNode {
  const { lengthM, diameterM, coverM, coverAtM } = facts.plan.bore
  const asDrawn = Math.ceil(drawn.heightPx)
  const size = sheet === null ? null : sheetSizeMm(sheet, asDrawn)
  const heightPx = size === null ? asDrawn : size.height * PX_PER_MM
  const titleId = `${layout.idPrefix}-title`
  const descId = `${layout.idPrefix}-desc`
  return node(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      class: 'underlane-drawing long-section',
      role: 'img',
      'aria-labelledby': `${titleId} ${descId}`,
      width: size === null ? layout.widthPx : `${size.width}mm`,
      height: size === null ? heightPx : `${size.height}mm`,
      viewBox: `0 0 ${Math.round(layout.widthPx * 1000) / 1000} ${Math.round(heightPx * 1000) / 1000}`,
      'font-size': LABEL_PX,
    },
    [
      textNode('title', { id: titleId }, facts.words('title', { name: facts.input.name })),
      textNode('desc', { id: descId }, facts.words('desc', { lengthM, diameterM, coverM, coverAtM })),
      rect('sheet', 0, 0, layout.widthPx, heightPx),
      ...drawn.nodes,
    ],
  )
}
