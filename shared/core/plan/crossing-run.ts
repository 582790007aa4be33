import type { Assumed } from './assumptions.ts'
import type { DrawFactors } from './draw-factors.ts'
import type { Blow } from './penetration.ts'
import type { RunPart } from './plan.ts'
import { runTimes, type SiteTime } from './run.ts'
import { type SolvedShot, withMedian } from './shots.ts'

const LEAST_CHANCE = 0.001
const within = (chance: number): number => Math.min(1 - LEAST_CHANCE, Math.max(LEAST_CHANCE, chance))

/** Hammering of the whole crossing in every draw: the shots' times added, draw by draw. */
function added(shots: readonly SolvedShot[], count: number): Float64Array {
  const total = new Float64Array(count)
  for (const shot of shots) {
    for (let i = 0; i < count; i++) total[i] = (total[i] as number) + (shot.hammerS[i] as number)
  }
  return total
}

/** Draws in which some shot takes longer than its crew would stay at it. */
function gaveUpIn(shots: readonly SolvedShot[], count: number): Uint8Array {
  const gaveUp = new Uint8Array(count)
  for (const { hammerS, part } of shots) {
    for (let i = 0; i < count; i++) if ((hammerS[i] as number) > part.run.giveUpTimeS) gaveUp[i] = 1
  }
  return gaveUp
}

/** The crossing as one: times add, arrival multiplies, a draw stalls if any shot does. */
export function crossingRun(
  shots: readonly SolvedShot[],
  lengthM: number,
  site: SiteTime,
  factors: DrawFactors,
  blow: Blow,
  assumed: Assumed,
): RunPart {
  const hazard = shots.reduce((sum, shot) => sum + shot.hazard, 0)
  const hammerS = added(shots, factors.count)
  const giveUpS = shots.reduce((sum, shot) => sum + shot.part.run.giveUpTimeS, 0)
  const gaveUp = gaveUpIn(shots, factors.count)
  const counts = { obstructionHazard: hazard, shots: shots.length, site, factors }
  const times = runTimes({ lengthM, hammerS, giveUpS, gaveUp, ...counts }, assumed)
  const arrival = shots.reduce((product, shot) => product * shot.part.run.arrivalProbability, 1)
  return {
    ...withMedian(
      times,
      shots.flatMap((shot) => shot.solved),
      blow,
    ),
    arrivalProbability: within(arrival),
  }
}

/**
 * Crew time of every draw, for the price. One that stalls, runs past the give-up time or meets an obstruction costs the
 * give-up time and then plan B: a second bore of the likely length, and half of what the site took for digging and putting
 * back once more.
 */
export function crewSeconds(
  shots: readonly SolvedShot[],
  whole: RunPart,
  site: SiteTime,
  factors: DrawFactors,
  assumed: Assumed,
): Float64Array {
  const again = assumed.use('price.secondTrySite')
  const hazard = shots.reduce((sum, shot) => sum + shot.hazard, 0)
  const meetsBelow = 1 - Math.exp(-hazard)
  const hammerS = added(shots, factors.count)
  const gaveUp = gaveUpIn(shots, factors.count)
  const giveUpS = giveUpOfOne(shots)
  const likelyBoreS = whole.boreTimeS?.p50 ?? giveUpS
  const sigma = Math.sqrt(Math.log1p(site.cov ** 2)) * factors.scale
  const pace = whole.hammerTimeS ? likelyBoreS / whole.hammerTimeS.p50 : 1
  const crewS = new Float64Array(factors.count)
  for (let i = 0; i < factors.count; i++) {
    const siteS = site.likelyS * Math.exp(sigma * (factors.scores.normal.siteTime[i] as number))
    const meets = (factors.scores.uniform.obstruction[i] as number) < meetsBelow
    crewS[i] =
      gaveUp[i] === 1 || meets
        ? siteS * (1 + again) + giveUpS + likelyBoreS
        : siteS + (hammerS[i] as number) * pace
  }
  return crewS
}

/** What is lost before a crew gives up: the longest that any one shot is stayed at. */
const giveUpOfOne = (shots: readonly SolvedShot[]): number =>
  Math.max(...shots.map((shot) => shot.part.run.giveUpTimeS))
