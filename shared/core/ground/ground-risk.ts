import { DRIFT, OBSTRUCTION_PER_12_M } from '../../tables/ground-families.ts'
import type { Moisture, OutsideWord, StonesWord } from '../../tables/trade-soil-words.ts'
import type { UscsSoil } from '../../tables/uscs-soils.ts'
import type { GroundEvidence } from './ground-evidence.ts'
import type { SoilPhrase } from './soil-phrase.ts'

export type Chances = { readonly low: number; readonly likely: number; readonly high: number }

/** What the ground does besides resisting. */
export type GroundRisk = {
  readonly stones: StonesWord | null
  readonly moisture: Moisture | null
  readonly fill: boolean
  readonly abrasivityClass: 1 | 2 | 3 | 4 | 5
  /** C unless a competent person says otherwise: street soil is disturbed and the tool shakes the face. */
  readonly oshaType: 'C'
  /** The best a competent person could find on this evidence. */
  readonly oshaBestType: 'B' | 'C'
  readonly obstructionPer12M: Chances
  readonly driftFactor: number
  /** The tool may hammer on the spot. */
  readonly poorGrip: boolean
  /** The hole may not stay open behind the tool. */
  readonly holeCloses: boolean
  /** Cemented, rock, cobbles, rubble, frozen: the model was not made for it; deflection governs, not rate. */
  readonly outsideModel: boolean
  readonly outsideReason: OutsideWord | null
}

type Facts = {
  readonly soil: UscsSoil
  readonly n: number
  readonly stones: StonesWord | null
  readonly phrase: SoilPhrase | null
  readonly gravelly: boolean
  readonly evidence: GroundEvidence
}

/** Bores lie about this deep: a higher water table is met. */
const USUAL_DEPTH_M = 1.5
const LOOSE_N = 10
const VERY_LOOSE_N = 4
const VERY_SOFT_N = 2
/** OSHA type B from an unconfined strength of 0.5 tsf; a pocket penetrometer errs by 30 %, so its reading is divided by 1.3. */
const TYPE_B_PA = 47.88e3
const READING_ERROR = 1.3

const most = (a: Chances, b: Chances): Chances => ({
  low: Math.max(a.low, b.low),
  likely: Math.max(a.likely, b.likely),
  high: Math.max(a.high, b.high),
})

const BY_STONES: Readonly<Record<StonesWord, Chances>> = {
  none: OBSTRUCTION_PER_12_M.clean,
  few: OBSTRUCTION_PER_12_M.ordinary,
  many: OBSTRUCTION_PER_12_M.stony,
  cobbles: OBSTRUCTION_PER_12_M.cobbles,
}

function obstruction({ stones, gravelly, soil }: Facts, fill: boolean, outside: OutsideWord | null): Chances {
  let chances: Chances = stones === null ? OBSTRUCTION_PER_12_M.unknown : BY_STONES[stones]
  if (fill) chances = most(chances, OBSTRUCTION_PER_12_M.ordinary)
  if (gravelly || soil.isGravel) chances = most(chances, OBSTRUCTION_PER_12_M.gravelly)
  if (outside !== null) chances = most(chances, OBSTRUCTION_PER_12_M.stony)
  if (outside === 'rock' || outside === 'rubble' || outside === 'cobbles') {
    chances = most(chances, OBSTRUCTION_PER_12_M.cobbles)
  }
  return chances
}

function drift(
  { stones, gravelly, soil, phrase }: Facts,
  fill: boolean,
  outside: OutsideWord | null,
): number {
  if (stones === 'cobbles' || outside === 'rock' || outside === 'rubble' || outside === 'cobbles')
    return DRIFT.cobbles
  if (stones === 'many' || gravelly || soil.isGravel) return DRIFT.gravelly
  const isFine = soil.profile.family === 'clay' || soil.symbol === 'ML'
  // Uniform only where somebody has looked and seen no stones.
  return isFine && stones === 'none' && !fill && phrase?.layered !== true ? DRIFT.uniform : DRIFT.layered
}

function bestType({ soil, evidence }: Facts, wet: boolean, fill: boolean): 'B' | 'C' {
  const readingPa =
    evidence.pocketPenetrometerPa === null ? null : evidence.pocketPenetrometerPa / READING_ERROR
  const strengthPa = evidence.undrainedStrengthPa ?? evidence.vanePa
  const unconfinedPa = strengthPa === null ? readingPa : 2 * strengthPa
  const isClay = soil.profile.family === 'clay' && soil.isOrganic !== true
  return isClay && !wet && !fill && unconfinedPa !== null && unconfinedPa >= TYPE_B_PA ? 'B' : 'C'
}

function grip({ soil, n }: Facts, wet: boolean, dry: boolean): { poorGrip: boolean; holeCloses: boolean } {
  const { profile } = soil
  if (profile.family === 'sand') {
    const loose = n <= LOOSE_N
    return { poorGrip: loose || wet, holeCloses: loose || wet || dry }
  }
  if (profile.family === 'clay' || profile.scale === 'cohesive') {
    const weak = n < VERY_SOFT_N || soil.symbol === 'PT'
    return { poorGrip: weak, holeCloses: weak }
  }
  return { poorGrip: wet && n <= LOOSE_N, holeCloses: wet || n <= VERY_LOOSE_N }
}

/** Obstruction, drift, grip, shoring class and whether the model reaches this ground at all. One more stone never lowers a figure. */
export function groundRisk(facts: Facts): GroundRisk {
  const { soil, phrase, stones, gravelly, evidence } = facts
  const fill = evidence.fill || phrase?.fill === true
  const moisture = phrase?.moisture ?? null
  const wet = moisture === 'wet' || (evidence.waterTableM !== null && evidence.waterTableM <= USUAL_DEPTH_M)
  const outsideReason =
    phrase?.soil?.outside ??
    (stones === 'cobbles' ? 'cobbles' : evidence.frozen || phrase?.frozen === true ? 'frozen' : null)
  return {
    stones,
    moisture,
    fill,
    abrasivityClass: gravelly ? 5 : soil.abrasivityClass,
    oshaType: 'C',
    oshaBestType: bestType(facts, wet, fill),
    obstructionPer12M: obstruction(facts, fill, outsideReason),
    driftFactor: drift(facts, fill, outsideReason),
    ...grip(facts, wet, moisture === 'dry'),
    outsideModel: outsideReason !== null,
    outsideReason,
  }
}
