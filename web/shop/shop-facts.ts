import type { z } from 'zod'
import { boreLogFile } from '../../shared/contracts/bore-log.ts'
import { dayFile } from '../../shared/contracts/day.ts'
import { partFile } from '../../shared/contracts/part-file.ts'
import { sheetOf, templateOf } from '../../shared/contracts/shop-documents.ts'
import { toolFile } from '../../shared/contracts/tool-file.ts'
import type { Piece, ToolBore } from '../../shared/core/shop/part-history.ts'
import type { PlannedBore, ShopFacts } from '../../shared/core/shop/part-report.ts'
import type { AdvanceSeen } from '../../shared/core/shop/slow-advance.ts'
import type { Inspection, ToolTemplate } from '../../shared/core/shop/template.ts'
import type { ToolFacts } from '../../shared/core/shop/tool-card.ts'
import { isHeldByShop } from '../../shared/core/shop/tool-state.ts'
import { GENERIC_TOOL_TEMPLATE } from '../../shared/tables/generic-tool-template.ts'
import type { Entry } from './shop-requests.ts'
import type { ShopDocuments, WaitingSheet } from './shop-store.ts'

type Tool = z.infer<typeof toolFile>
export type ShopTool = {
  readonly entry: Entry
  readonly file: Tool
  readonly template: ToolTemplate
  /** null: the list that comes with the program. */
  readonly templateEntry: Entry | null
}

/** Everything the pages work with; documents of a later version that cannot be read are left out. */
export type ShopView = {
  readonly tools: readonly ShopTool[]
  readonly toolFacts: readonly ToolFacts[]
  readonly sheets: readonly Inspection[]
  readonly bores: readonly ToolBore[]
  readonly pieces: readonly Piece[]
  readonly pieceEntries: readonly Entry[]
  /** By a failed tilt test, a part to be replaced, or its owner: it must not be put to a bore. */
  readonly isHeld: (tool: string) => boolean
  readonly factsOf: (tool: string) => ShopFacts
  readonly advanceOf: (tool: string) => readonly AdvanceSeen[]
}

function boreOf({ id, document }: Entry, tools: readonly ShopTool[]): ToolBore | null {
  const read = boreLogFile.safeParse(document)
  if (!read.success || read.data.tool === undefined) return null
  const { tool, on, length, hammerTime, pressure, abrasivity, oil, air } = read.data
  const file = tools.find((each) => each.entry.id === tool)?.file
  const rated = file?.ratedPressure
  return {
    id,
    tool,
    on,
    lengthM: length ?? 0,
    hammerS: hammerTime ?? 0,
    blowRateHz: file?.blowRate ?? null,
    strokeM: file?.stroke ?? null,
    pressureRatio: pressure === undefined || rated === undefined ? null : pressure / rated,
    abrasivity: abrasivity ?? null,
    oil: oil ?? null,
    air: air ?? null,
  }
}

function pieceOf({ id, document }: Entry): Piece | null {
  const read = partFile.safeParse(document)
  if (!read.success) return null
  const { name, key, tool, fitted, usedBefore } = read.data
  return {
    id,
    name,
    key,
    tool: tool ?? null,
    fitted: (fitted ?? []).map((each) => ({ tool: each.tool, on: each.on, off: each.off ?? null })),
    usedBeforeS: usedBefore ?? 0,
  }
}

/** Bores that are planned for a tool from today on, in the order of days and of the day. */
function plannedFor(tool: ShopTool, documents: ShopDocuments, today: string): readonly PlannedBore[] {
  const days = documents.days
    .flatMap(({ document }) => {
      const read = dayFile.safeParse(document)
      return read.success && read.data.on >= today ? [read.data] : []
    })
    .sort((a, b) => (a.on < b.on ? -1 : 1))
  return days.flatMap((day) => {
    const mine = (day.tools ?? []).filter((each) => each.tool === tool.entry.id)
    const order = day.crossings ?? []
    return [...mine]
      .sort((a, b) => order.indexOf(a.crossing) - order.indexOf(b.crossing))
      .flatMap(({ crossing }): readonly PlannedBore[] => {
        const plan = documents.crossings[crossing]
        if (plan === undefined) return []
        const { lengthM, hammerS, blowRateHz, oiled, name } = plan
        return [
          {
            id: crossing,
            name,
            on: day.on,
            lengthM,
            hammerS,
            blowRateHz,
            strokeM: tool.file.stroke ?? null,
            pressureRatio: null,
            abrasivity: null,
            oil: oiled === null ? null : oiled ? 'good' : 'none',
            air: null,
          },
        ]
      })
  })
}

const found = <Value>(value: Value | null): readonly Value[] => (value === null ? [] : [value])

/** How the bores of a tool went against their plans, oldest first. */
function advanceSeen(
  tool: string,
  documents: ShopDocuments,
  bores: readonly ToolBore[],
): readonly AdvanceSeen[] {
  const crossingOf = new Map(documents['bore-logs'].map(({ id, document }) => [id, document.crossing]))
  return bores
    .filter((bore) => bore.tool === tool && bore.hammerS > 0)
    .sort((a, b) => (a.on < b.on ? -1 : 1))
    .map((bore) => ({
      advanceMPerS: bore.lengthM / bore.hammerS,
      expectedMPerS: documents.crossings[String(crossingOf.get(bore.id))]?.advanceMPerS ?? null,
      pressureRatio: bore.pressureRatio,
    }))
}

export function shopView(
  documents: ShopDocuments,
  waiting: readonly WaitingSheet[],
  today: string,
): ShopView {
  const tools = documents.tools
    .flatMap((entry): readonly ShopTool[] => {
      const read = toolFile.safeParse(entry.document)
      if (!read.success) return []
      const templateEntry = documents['tool-templates'].find(({ id }) => id === read.data.template) ?? null
      const template = templateEntry === null ? null : templateOf(templateEntry.document)
      return [{ entry, file: read.data, template: template ?? GENERIC_TOOL_TEMPLATE, templateEntry }]
    })
    .sort((a, b) => a.file.name.localeCompare(b.file.name))
  const known = new Set(documents.inspections.map(({ id }) => id))
  const sheets = [...documents.inspections, ...waiting.filter(({ id }) => !known.has(id))].flatMap(
    ({ id, document }) => found(sheetOf(id, document)),
  )
  const bores = documents['bore-logs'].flatMap((entry) => found(boreOf(entry, tools)))
  const pieces = documents.parts.flatMap((entry) => found(pieceOf(entry)))
  const toolOf = (id: string) => tools.find(({ entry }) => entry.id === id)
  return {
    tools,
    toolFacts: tools.map(({ entry, file, template }) => ({
      id: entry.id,
      template,
      isWithdrawn: file.withdrawn !== undefined,
      hasComplaint: hasOpenComplaint(entry.id, file, sheets),
    })),
    sheets,
    bores,
    pieces,
    pieceEntries: documents.parts,
    isHeld: (id) => {
      const tool = toolOf(id)
      if (tool === undefined) return false
      const own = sheets.filter((sheet) => sheet.tool === id)
      return isHeldByShop(tool.template, own, tool.file.withdrawn !== undefined)
    },
    factsOf: (id) => {
      const tool = toolOf(id)
      const planned = tool === undefined ? [] : plannedFor(tool, documents, today)
      return { sheets, bores, pieces, planned, today }
    },
    advanceOf: (id) => advanceSeen(id, documents, bores),
  }
}

/** A complaint is answered by the next strip-down. */
function hasOpenComplaint(id: string, file: Tool, sheets: readonly Inspection[]): boolean {
  const { complaint } = file
  if (complaint === undefined) return false
  return !sheets.some((sheet) => sheet.tool === id && sheet.stripped && sheet.on >= complaint.on)
}
