import { STRIP_EVERY_DAYS, STRIP_EVERY_S } from '../../tables/shop-house-values.ts'
import { dayOf, readCivil } from '../digsafe/civil.ts'
import { totalUseS } from './exposure.ts'
import type { Lives } from './forecast.ts'
import { eachOnce } from './part-history.ts'
import { lifeOf, type PartReport, partReport, type ShopFacts } from './part-report.ts'
import type { ToolTemplate } from './template.ts'
import { type HoldReason, holdReasons, inOrder, lastTilt, type PartState, partStates } from './tool-state.ts'

export type ToolFacts = {
  readonly id: string
  readonly template: ToolTemplate
  readonly isWithdrawn: boolean
  readonly hasComplaint: boolean
}

export type DueCode = 'strip-hours' | 'strip-year' | 'complaint' | 'parts' | 'never-stripped'

export type ToolCard = {
  readonly lengthM: number
  readonly hammerS: number
  readonly boreCount: number
  readonly lastStripOn: string | null
  /** Hammering since the last strip-down. */
  readonly sinceStripS: number
  readonly stripEveryS: number
  readonly due: readonly DueCode[]
  /** Not empty: do not issue. */
  readonly holds: readonly HoldReason[]
  /** The last tilt test that was passed or failed; null: none is written down, which is no clean bill. */
  readonly tiltOn: string | null
  readonly states: readonly PartState[]
  readonly parts: readonly PartReport[]
}

const dayNumberOf = (on: string): number => dayOf(readCivil(on) ?? 0)

/** Lives of one part over the fleet: what was replaced has ended, what sits in a tool still runs. */
function fleetLives(key: string, tools: readonly ToolFacts[], facts: ShopFacts): Lives {
  const endedS: number[] = []
  const runningS: number[] = []
  for (const tool of tools) {
    const part = tool.template.parts.find((each) => each.key === key)
    if (part === undefined) continue
    const ends = inOrder(facts.sheets).filter(
      (sheet) => sheet.tool === tool.id && sheet.replaced.includes(key),
    )
    let from = ''
    for (const { on } of ends) {
      const bores = eachOnce(facts.bores).filter(
        (bore) => bore.tool === tool.id && bore.on >= from && bore.on < on,
      )
      endedS.push(totalUseS(part.driver, bores))
      from = on
    }
    runningS.push(totalUseS(part.driver, lifeOf(tool.id, key, facts).bores))
  }
  return { endedS, runningS }
}

/** The card of one tool. Statistics and chances are beside it; they never make the hold. */
export function toolCard(tool: ToolFacts, tools: readonly ToolFacts[], facts: ShopFacts): ToolCard {
  const bores = eachOnce(facts.bores).filter((bore) => bore.tool === tool.id)
  const sheets = inOrder(facts.sheets).filter((sheet) => sheet.tool === tool.id)
  const lastStripOn = sheets.filter(({ stripped }) => stripped).at(-1)?.on ?? null
  const since = bores.filter((bore) => lastStripOn === null || bore.on >= lastStripOn)
  const sinceStripS = since.reduce((sum, each) => sum + each.hammerS, 0)
  const stripEveryS = tool.template.stripEveryS ?? STRIP_EVERY_S
  const parts = tool.template.parts.map((part) =>
    partReport(tool.id, part, facts, fleetLives(part.key, tools, facts)),
  )
  const isYearOld =
    lastStripOn !== null && dayNumberOf(facts.today) - dayNumberOf(lastStripOn) >= STRIP_EVERY_DAYS
  const due: DueCode[] = [
    ...(tool.hasComplaint ? (['complaint'] as const) : []),
    ...(sinceStripS >= stripEveryS ? (['strip-hours'] as const) : []),
    ...(isYearOld ? (['strip-year'] as const) : []),
    ...(lastStripOn === null ? (['never-stripped'] as const) : []),
    ...(parts.some(({ dueBefore }) => dueBefore !== null) ? (['parts'] as const) : []),
  ]
  return {
    lengthM: bores.reduce((sum, each) => sum + each.lengthM, 0),
    hammerS: bores.reduce((sum, each) => sum + each.hammerS, 0),
    boreCount: bores.length,
    lastStripOn,
    sinceStripS,
    stripEveryS,
    due,
    holds: holdReasons(tool.template, sheets, tool.isWithdrawn),
    tiltOn: lastTilt(sheets)?.on ?? null,
    states: partStates(tool.template, sheets),
    parts,
  }
}

export type KitLine = { readonly key: string; readonly orderBy: string; readonly neededOn: string }

/** What to have on the bench, soonest first. */
export const kitOf = (card: ToolCard): readonly KitLine[] =>
  card.parts
    .flatMap(({ key, dueBefore, orderBy }) =>
      dueBefore === null || orderBy === null ? [] : [{ key, orderBy, neededOn: dueBefore.on }],
    )
    .sort((a, b) => (a.orderBy < b.orderBy ? -1 : 1))

/** Pieces on the shelf that could go in for a part that is due; whoever swaps decides. */
export const swapsFor = (card: ToolCard, facts: ShopFacts) =>
  card.parts
    .filter(({ dueBefore }) => dueBefore !== null)
    .flatMap(({ key }) =>
      facts.pieces
        .filter((piece) => piece.key === key && piece.tool === null)
        .map((piece) => ({ key, piece })),
    )
