import { dayOf, readCivil, writeDay } from '../digsafe/civil.ts'
import { type DueBefore, dueBeforeBore, orderBy } from './due-before-bore.ts'
import { assumedOf, type BoreUse, equivalentS, totalUseS } from './exposure.ts'
import {
  forecastByDrift,
  forecastByLives,
  forecastByWear,
  type Lives,
  type PartForecast,
} from './forecast.ts'
import { readingOf } from './judge-inspection.ts'
import { USUAL_LENGTH_TOLERANCE_M } from './judge-measure.ts'
import { boresOfOwnPart, boresOfPiece, type Piece, pieceIn, type ToolBore } from './part-history.ts'
import type { Inspection, MeasureSpec, PartSpec, WearDriver } from './template.ts'
import { inOrder } from './tool-state.ts'
import { wearIntervals, wearLooks } from './wear-readings.ts'

export type PlannedBore = BoreUse & { readonly id: string; readonly name: string; readonly on: string }

/** All the shop knows that may bear on one tool. */
export type ShopFacts = {
  readonly sheets: readonly Inspection[]
  readonly bores: readonly ToolBore[]
  readonly pieces: readonly Piece[]
  /** Planned for this tool, in their order. */
  readonly planned: readonly PlannedBore[]
  readonly today: string
}

/** What a time on the part's own clock comes to at the pace of this tool. */
export type InUnits = {
  readonly hammerS: number
  readonly lengthM: number
  readonly bores: number
  /** null where the tool has not worked lately. */
  readonly on: string | null
}

export type PartReport = {
  readonly key: string
  /** null: the tool's own. */
  readonly piece: Piece | null
  /** Use on the part's own clock. */
  readonly ageS: number
  readonly hammerS: number
  readonly lengthM: number
  readonly boreCount: number
  readonly forecast: PartForecast
  readonly inUnits: (useS: number | null) => InUnits | null
  readonly due: DueBefore | null
  /** Wear of the bore the ring sits in, by its last look at both; null where it cannot be told. */
  readonly boreWornM: number | null
  /** The bore it falls before, and the day to order by. */
  readonly dueBefore: PlannedBore | null
  readonly orderBy: string | null
  /** How many of its bores leaned on the house's values for want of a record. */
  readonly assumedCount: number
}

/** A history of so many days tells the pace. */
const PACE_DAYS = 90

/** The bores, sheets and first day of what sits in the tool now under this key. */
export function lifeOf(tool: string, key: string, facts: ShopFacts) {
  const piece = pieceIn(tool, key, facts.today, facts.pieces)
  const sheets = inOrder(facts.sheets)
  if (piece !== null) {
    const inPiece = (sheet: Inspection): boolean => pieceIn(sheet.tool, key, sheet.on, [piece]) !== null
    return {
      piece,
      newOn: null,
      sheets: sheets.filter(inPiece),
      bores: boresOfPiece(piece, facts.bores),
    }
  }
  const own = sheets.filter((sheet) => sheet.tool === tool)
  const replacedOn = own.filter(({ replaced }) => replaced.includes(key)).at(-1)?.on ?? null
  const isOwn = (sheet: Inspection): boolean =>
    (replacedOn === null || sheet.on > replacedOn) && pieceIn(tool, key, sheet.on, facts.pieces) === null
  return {
    piece,
    newOn: replacedOn,
    sheets: own.filter(isOwn),
    bores: boresOfOwnPart(tool, key, facts.bores, facts.pieces, replacedOn),
  }
}

type Life = ReturnType<typeof lifeOf>

/** Use on the part's clock before a day: what was bored that very day comes after the look in the morning. */
const useUpTo =
  (driver: WearDriver, bores: readonly ToolBore[]) =>
  (on: string): number =>
    totalUseS(
      driver,
      bores.filter((bore) => bore.on < on),
    )

const allowanceOf = (spec: MeasureSpec | undefined): number | null => {
  if (spec === undefined || spec.nominalM === null || spec.limitM === null) return null
  const alongM = Math.abs(spec.limitM - spec.nominalM)
  return spec.measure === 'end-gap' ? alongM / (2 * Math.PI) : alongM
}

function forecastOf(part: PartSpec, life: Life, ageS: number, lives: Lives): PartForecast {
  const up = useUpTo(part.driver, life.bores)
  const looks = wearLooks(part, life.sheets, life.newOn)
  const last = looks.at(-1)
  if (last !== undefined) {
    const sinceS = ageS - up(last.on)
    const limited = part.measures.find((each) => allowanceOf(each) !== null)
    const intervals = wearIntervals(looks, up)
    const atLook = forecastByWear(part.driver, allowanceOf(limited), last.leftM, intervals)
    return sinceLook(atLook, sinceS)
  }
  const length = part.measures.find((each) => each.measure === 'length' && each.nominalM !== null)
  if (length !== undefined && length.nominalM !== null) {
    const readings = life.sheets.flatMap((sheet) => {
      const valueM = readingOf(sheet.readings, part.key, length.key)?.valueM ?? null
      return valueM === null ? [] : [{ useS: up(sheet.on), valueM }]
    })
    const lastS = readings.at(-1)?.useS ?? ageS
    return sinceLook(
      forecastByDrift(length.nominalM, length.limitM ?? USUAL_LENGTH_TOLERANCE_M, readings),
      ageS - lastS,
    )
  }
  return forecastByLives(lives, ageS)
}

/** A forecast made at the last look, as it stands after what was bored since. */
function sinceLook(at: PartForecast, sinceS: number): PartForecast {
  const left = (useS: number | null): number | null => (useS === null ? null : Math.max(0, useS - sinceS))
  const { chanceAfter } = at
  return {
    ...at,
    p10S: left(at.p10S),
    p50S: left(at.p50S),
    p90S: left(at.p90S),
    chanceAfter: chanceAfter === null ? null : (useS) => chanceAfter(sinceS + useS),
  }
}

/** The pace of a tool: from its own bores, and where it has none from those that are planned. */
function paceOf(tool: string, driver: WearDriver, facts: ShopFacts): (useS: number | null) => InUnits | null {
  const own = facts.bores.filter((bore) => bore.tool === tool)
  const from: readonly (BoreUse & { readonly on: string })[] = own.length > 0 ? own : facts.planned
  const total = totalUseS(driver, from)
  const today = dayOf(readCivil(facts.today) ?? 0)
  const lately = own.filter((bore) => today - dayOf(readCivil(bore.on) ?? 0) <= PACE_DAYS)
  const perDayS = totalUseS(driver, lately) / PACE_DAYS
  return (useS) => {
    if (useS === null || total <= 0) return null
    const share = useS / total
    return {
      hammerS: share * from.reduce((sum, each) => sum + each.hammerS, 0),
      lengthM: share * from.reduce((sum, each) => sum + each.lengthM, 0),
      bores: share * from.length,
      on: perDayS > 0 ? writeDay(Math.round(today + useS / perDayS)) : null,
    }
  }
}

export function partReport(tool: string, part: PartSpec, facts: ShopFacts, lives: Lives): PartReport {
  const life = lifeOf(tool, part.key, facts)
  const ageS = totalUseS(part.driver, life.bores) + (life.piece?.usedBeforeS ?? 0)
  const forecast = forecastOf(part, life, totalUseS(part.driver, life.bores), lives)
  const due = dueBeforeBore(
    forecast,
    facts.planned.map((bore) => equivalentS(part.driver, bore)),
  )
  const place = due?.serviceBefore ?? null
  const dueBefore = place === null ? null : (facts.planned[place] ?? null)
  return {
    key: part.key,
    piece: life.piece,
    ageS,
    hammerS: life.bores.reduce((sum, each) => sum + each.hammerS, 0),
    lengthM: life.bores.reduce((sum, each) => sum + each.lengthM, 0),
    boreCount: life.bores.length,
    forecast,
    inUnits: paceOf(tool, part.driver, facts),
    due,
    boreWornM: wearLooks(part, life.sheets, life.newOn).at(-1)?.boreWornM ?? null,
    dueBefore,
    orderBy: dueBefore === null ? null : orderBy(dueBefore.on, part.leadDays ?? 0),
    assumedCount: life.bores.filter((bore) => assumedOf(bore).length > 0).length,
  }
}
