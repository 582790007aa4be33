import { quantileInPlace, spreadInPlace } from '../numerics/select.ts'
import type { Assumed } from './assumptions.ts'
import type { DrawFactors } from './draw-factors.ts'
import type { RunPart, Spread } from './plan.ts'

/** Below this share arriving, a time would describe luck. */
const LEAST_ARRIVING = 0.05
/** A bore is never certain, either way. */
const LEAST_CHANCE = 0.001

export type SiteTime = {
  /** Everything on site but hammering: set-up, pits, aiming, pipe, reinstatement; likely value. */
  readonly likelyS: number
  /** Its coefficient of variation. */
  readonly cov: number
}

export type RunFacts = {
  readonly lengthM: number
  /** Hammering per draw; infinite where the draw stalls. */
  readonly hammerS: Float64Array
  /** Longest hammering before the crew gives up. */
  readonly giveUpS: number
  /** Draws that gave up in one shot though the whole is within its time; absent for a shot alone. */
  readonly gaveUp?: Uint8Array
  readonly obstructionHazard: number
  readonly site: SiteTime
  readonly shots: number
  readonly factors: DrawFactors
}

export type RunTimes = Pick<
  RunPart,
  | 'advanceMPerS'
  | 'hammerTimeS'
  | 'boreTimeS'
  | 'crossingTimeS'
  | 'timeReason'
  | 'giveUpTimeS'
  | 'arrivalProbability'
  | 'refusalProbability'
>

/** Elapsed time of a draw from start to breakout: hammering × 1.3–1.6 and 10–15 minutes a shot. */
function elapsedOf(hammerS: number, uniform: number, shots: number, assumed: ElapsedRule): number {
  const ratio = assumed.ratioLow + (assumed.ratioHigh - assumed.ratioLow) * uniform
  const startS = assumed.startLowS + (assumed.startHighS - assumed.startLowS) * uniform
  return hammerS * ratio + startS * shots
}

type ElapsedRule = { ratioLow: number; ratioHigh: number; startLowS: number; startHighS: number }

export const elapsedRule = (assumed: Assumed): ElapsedRule => ({
  ratioLow: assumed.use('elapsed.ratioLow'),
  ratioHigh: assumed.use('elapsed.ratioHigh'),
  startLowS: assumed.use('elapsed.startLow'),
  startHighS: assumed.use('elapsed.startHigh'),
})

/** Give-up time: the later of 90 minutes and twice the median of the draws that do not stall. */
export function giveUpTimeS(hammerS: Float64Array, leastS: number): number {
  const going = hammerS.filter(Number.isFinite)
  return going.length === 0 ? leastS : Math.max(leastS, 2 * quantileInPlace(going, 0.5))
}

/** Times, stall and arrival of a shot, or of a whole crossing, from its draws. */
export function runTimes(facts: RunFacts, assumed: Assumed): RunTimes {
  const { hammerS, factors, lengthM, giveUpS } = facts
  const count = factors.count
  const rule = elapsedRule(assumed)
  const advance = new Float64Array(count)
  const hammer = new Float64Array(count)
  const bore = new Float64Array(count)
  const crossing = new Float64Array(count)
  const sigmaSite = Math.sqrt(Math.log1p(facts.site.cov ** 2)) * factors.scale
  let stalled = 0
  let arriving = 0
  for (let i = 0; i < count; i++) {
    const t = hammerS[i] as number
    if (!Number.isFinite(t)) {
      stalled++
      continue
    }
    advance[i] = lengthM / t
    if (t > giveUpS || facts.gaveUp?.[i]) continue
    const uniform = factors.scale === 0 ? 0.5 : (factors.scores.uniform.elapsed[i] as number)
    const elapsedS = elapsedOf(t, uniform, facts.shots, rule)
    hammer[arriving] = t
    bore[arriving] = elapsedS
    crossing[arriving] =
      elapsedS + facts.site.likelyS * Math.exp(sigmaSite * (factors.scores.normal.siteTime[i] as number))
    arriving++
  }
  const share = arriving / count
  const isEnough = share >= LEAST_ARRIVING
  const spread = (values: Float64Array): Spread | null => (isEnough ? spreadInPlace(values, arriving) : null)
  const arrival = Math.exp(-facts.obstructionHazard) * share
  return {
    advanceMPerS: spreadInPlace(advance),
    hammerTimeS: spread(hammer),
    boreTimeS: spread(bore),
    crossingTimeS: spread(crossing),
    timeReason: isEnough ? null : 'too-few-arrive',
    giveUpTimeS: giveUpS,
    arrivalProbability: Math.min(1 - LEAST_CHANCE, Math.max(LEAST_CHANCE, arrival)),
    refusalProbability: stalled / count,
  }
}
