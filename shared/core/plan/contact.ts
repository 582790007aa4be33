import { contactChance } from '../line/contact-chance.ts'
import type { Trace } from '../trace.ts'
import type { BoreLine, Shot } from './bore-line.ts'
import type { UtilityInput } from './crossing-input.ts'
import type { DriftFound } from './drift-to-line.ts'
import { extent } from './line-extent.ts'
import { HALF_WIDTH_TO_SIGMA } from './readings.ts'

/** Below this a chance is not shown and not for arithmetic. */
const LEAST_CHANCE = 0.001

type Facts = { readonly line: BoreLine; readonly shot: Shot; readonly boreDiameterM: number }

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
  if (utility.stationM === null) return null
  const apartM = facts.line.axisDepthM(utility.stationM) + drift.meanM - depths.centreM
  const reachM = facts.boreDiameterM / 2 + utility.diameterM / 2
  const sigmaM = Math.hypot(drift.sigmaM, errorM / HALF_WIDTH_TO_SIGMA)
  const { probability } = trace.run(contactChance, { separationM: apartM, reachM, sigmaM }, about)
  return Math.max(LEAST_CHANCE, probability)
}
