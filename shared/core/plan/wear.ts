import { normalCdf } from '../statistics/normal.ts'
import type { Assumed } from './assumptions.ts'
import type { ServicePart, WearPart } from './plan.ts'
import type { Stretch } from './stretches.ts'

/** Outer-wear multiplier by abrasivity class 1 (not) to 5 (very): geometric middle of the LCPC class over 354. */
const SOIL_MULTIPLIER = [0.1, 0.2, 0.45, 1, 2.2] as const
/** Sliding parts live on oil: factors of the wear coefficient, well oiled to dry. */
const OIL_FACTOR = { oiled: 1, dry: 10 } as const
const VALVE_OIL_FACTOR = { oiled: 1, dry: 5 } as const

export type WearFacts = {
  readonly stretches: readonly Stretch[]
  /** Hours of hammering of a likely bore, in seconds. */
  readonly hammerS: number
  readonly isOiled: boolean
  /** Pressure at the tool over its rated pressure: blows are harder in proportion. */
  readonly pressureRatio: number
}

export type WearResult = { readonly wear: readonly WearPart[]; readonly service: ServicePart }

/** z of P10 and P90. */
const Z_TENTH = 1.2815515655446004

/**
 * What this crossing takes out of each part, in shares of its life, and how long is left at this bore's pace. Lives are
 * house factors: hours, blows and metres × soil × oil × pressure. No history is known here, so every part is taken as
 * fresh from service, and that is listed as assumed.
 */
export function wearPart(facts: WearFacts, assumed: Assumed): WearResult {
  assumed.use('wear.startsFresh')
  const sigma = Math.sqrt(Math.log(1 + assumed.use('wear.spread') ** 2))
  const wornM = facts.stretches.reduce(
    (sum, stretch) => sum + stretch.lengthM * (SOIL_MULTIPLIER[stretch.state.abrasivityClass - 1] ?? 1),
    0,
  )
  const oil = facts.isOiled ? 'oiled' : 'dry'
  const used: readonly (readonly [string, number])[] = [
    ['body-and-nose', wornM / assumed.use('wear.bodyLifeMediumSoil')],
    ['rings', (facts.hammerS * OIL_FACTOR[oil] * facts.pressureRatio) / assumed.use('wear.ringLife')],
    ['valve', (facts.hammerS * VALVE_OIL_FACTOR[oil]) / assumed.use('wear.valveLife')],
    ['hose', facts.hammerS / assumed.use('wear.hoseLife')],
  ]
  const wear = used.map(([part, usedFraction]): WearPart => {
    const left = (life: number): number => Math.max(0, (life / usedFraction - 1) * facts.hammerS)
    const remainingS =
      usedFraction > 0
        ? { p10: left(Math.exp(-Z_TENTH * sigma)), p50: left(1), p90: left(Math.exp(Z_TENTH * sigma)) }
        : null
    const due = usedFraction > 0 ? normalCdf(Math.log(usedFraction) / sigma) : 0
    return { part, usedFraction, remainingS, dueDuringThisCrossingProbability: due }
  })
  return { wear, service: nextService(wear, facts, assumed) }
}

/** The strip-down interval or the first part to wear out, whichever comes first. */
function nextService(wear: readonly WearPart[], facts: WearFacts, assumed: Assumed): ServicePart {
  const stripS = Math.max(0, assumed.use('service.stripInterval') - facts.hammerS)
  let next: ServicePart = {
    nextDueS: { p10: stripS, p50: stripS, p90: stripS },
    part: 'strip-down',
    tasks: ['oil-daily', 'tilt-test-daily', 'strip-100-hours'],
  }
  for (const each of wear) {
    if (each.remainingS && next.nextDueS && each.remainingS.p10 < next.nextDueS.p10) {
      next = {
        nextDueS: each.remainingS,
        part: each.part,
        tasks: ['oil-daily', 'tilt-test-daily', `replace-${each.part}`],
      }
    }
  }
  return next
}
