import { contactChance } from '../line/contact-chance.ts'
import { parallelContact } from '../line/parallel-contact.ts'
import type { Trace } from '../trace.ts'
import type { BoreLine, Shot } from './bore-line.ts'
import type { UtilityInput } from './crossing-input.ts'
import type { DriftFound } from './drift-to-line.ts'
import { extent, type ReachBeside, reachBeside } from './line-extent.ts'
import { HALF_WIDTH_TO_SIGMA } from './readings.ts'
import type { ShotPath } from './shot-path.ts'

/** Below this a chance is not shown and not for arithmetic. */
const LEAST_CHANCE = 0.001

/** Enough paths to tell one in a thousand from none; more only cost time. */
const MOST_PATHS = 2048

type Facts = {
  readonly line: BoreLine
  readonly shot: Shot
  readonly path: ShotPath
  readonly boreDiameterM: number
  readonly spread: { readonly seed: number; readonly draws: number }
}

/** A line alongside: whole paths are drawn beside it. */
function besideContact(
  { line, shot, path, spread }: Facts,
  reach: ReachBeside,
  offsetM: number,
  centreM: number,
  reachM: number,
  lineSigmaM: number,
  trace: Trace,
  about: string,
): number {
  const draws = Math.min(spread.draws, MOST_PATHS)
  const lengthM = shot.toM - shot.fromM
  const { sideways, vertical } = path
  const belowM = (stationM: number): number => centreM - line.axisDepthM(shot.fromM + stationM)
  const found = parallelContact({
    sideways,
    vertical,
    lengthM,
    fromM: reach.fromM - shot.fromM,
    toM: reach.toM - shot.fromM,
    offsetM,
    belowM,
    reachM,
    lineSigmaM,
    seed: spread.seed,
    draws,
  })
  trace.note(contactChance, { offsetM, reachM, sigmaM: lineSigmaM, paths: draws }, found, about)
  return found.probability
}

/**
 * Chance that the tool touches a listed line: only for one that was opened up and measured. It advises, and says
 * nothing about lines that are not listed; no figure is made for the bore.
 */
export function contactOf(
  facts: Facts,
  utility: UtilityInput,
  drift: DriftFound,
  errorM: number,
  trace: Trace,
  about: string,
): number | null {
  const depths = extent(utility)
  if (utility.evidence !== 'exposed' || depths === null || utility.diameterM === null) return null
  const reachM = facts.boreDiameterM / 2 + utility.diameterM / 2
  const lineSigmaM = errorM / HALF_WIDTH_TO_SIGMA
  if (utility.stationM === null) {
    if (utility.offsetM === null) return null
    const reach = reachBeside(utility, facts.shot)
    if (reach === null) return null
    const chance = besideContact(
      facts,
      reach,
      utility.offsetM,
      depths.centreM,
      reachM,
      lineSigmaM,
      trace,
      about,
    )
    return Math.max(LEAST_CHANCE, chance)
  }
  const apartM = facts.line.axisDepthM(utility.stationM) + drift.meanM - depths.centreM
  const sigmaM = Math.hypot(drift.sigmaM, lineSigmaM)
  const { probability } = trace.run(contactChance, { separationM: apartM, reachM, sigmaM }, about)
  return Math.max(LEAST_CHANCE, probability)
}
