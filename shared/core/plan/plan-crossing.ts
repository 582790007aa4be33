import { done, type Outcome } from '../outcome.ts'
import { createTrace } from '../trace.ts'
import { airPart } from './air.ts'
import { createAssumed } from './assumptions.ts'
import { borePart, boreSize } from './bore.ts'
import { layBoreLine } from './bore-line.ts'
import { cautionsPart } from './cautions.ts'
import { checklistPart } from './checklist.ts'
import type { CrossingInput } from './crossing-input.ts'
import { crewSeconds, crossingRun } from './crossing-run.ts'
import { drawFactors } from './draw-factors.ts'
import { heavePart } from './heave.ts'
import { blowAt } from './penetration.ts'
import { findPipes, pipesPart } from './pipes.ts'
import { pitsPart } from './pits.ts'
import type { Plan } from './plan.ts'
import { pricePart } from './price.ts'
import { objection, pullPart } from './pull.ts'
import { pullFacts } from './pull-facts.ts'
import { releasePart } from './release.ts'
import { type SolvedShot, solveShot } from './shots.ts'
import { siteTime } from './site-time.ts'
import { layStretches } from './stretches.ts'
import { toolFacts } from './tool-facts.ts'
import { watchersOf } from './watchers.ts'
import { wearPart } from './wear.ts'

export type PlanOptions = {
  /** 0 switches every spread off: for the check that the draws then give the deterministic run. */
  readonly spreadScale?: number
}

/**
 * Plans one crossing: the order of the parts and nothing else. The same file gives the same plan on every machine.
 * Refuses only what has no physical answer; a bad idea is planned and held.
 */
export function planCrossing(input: CrossingInput, options: PlanOptions = {}): Outcome<Plan> {
  const trace = createTrace()
  const assumed = createAssumed()
  const pipes = findPipes(input, assumed)
  if (!pipes.ok) return pipes
  const size = boreSize(input, pipes.value, assumed, trace)
  if (!size.ok) return size
  const boreDiameterM = size.value.diameterM
  const line = layBoreLine(input, boreDiameterM, assumed, trace)
  if (!line.ok) return line
  const stretches = layStretches(input, line.value, assumed)
  if (!stretches.ok) return stretches
  const tool = toolFacts(input.tool, assumed, trace)
  const air = airPart(input, tool, assumed, trace)
  if (!air.ok) return air
  const { fuelLitresPerS, pressureRatio, ...airShown } = air.value

  const pipePart = pipesPart(input, pipes.value, line.value.lengthM, assumed, trace)
  const facts = pullFacts({
    input,
    line: line.value,
    size: size.value,
    pipes: pipes.value,
    stretches: stretches.value,
  })
  const pull = pullPart(facts)
  const bore = borePart(line.value, size.value, pull.method === 'tow', trace)
  const factors = drawFactors(input.spread.seed, input.spread.draws, options.spreadScale ?? 1)
  const blow = blowAt(tool, air.value.toolGaugePa, trace)
  const shotFacts = {
    input,
    line: line.value,
    stretches: stretches.value,
    tool,
    blow,
    boreDiameterM,
    factors,
    assumed,
    trace,
  }
  const shots = line.value.shots
    .map((_, index) => solveShot(shotFacts, index))
    .filter((shot): shot is SolvedShot => shot !== null)

  const pits = pitsPart(input, line.value, tool, assumed, trace)
  const likelyHammerS = shots.reduce(
    (sum, shot) => sum + (shot.part.run.hammerTimeS?.p50 ?? shot.part.run.giveUpTimeS),
    0,
  )
  const site = siteTime(input, line.value, pits, pull.method, likelyHammerS, assumed)
  const whole = crossingRun(shots, bore.lengthM, site, factors, blow, assumed)
  const ground = heavePart(line.value, stretches.value, boreDiameterM, trace)
  const clearances = shots.flatMap((shot) => shot.part.clearances)
  const worst = shots.reduce((far, shot) =>
    shot.part.deviation.lateralM.p90 > far.part.deviation.lateralM.p90 ? shot : far,
  )
  const passes = pull.method === 'expander' ? 2 : 1
  const hammerS = passes * (whole.hammerTimeS?.p50 ?? whole.giveUpTimeS)
  const isOiled = input.air.lubricator ?? true
  const { wear, service } = wearPart({ stretches: stretches.value, hammerS, isOiled, pressureRatio }, assumed)
  const watchers = watchersOf(input)
  const price =
    input.rates === null
      ? null
      : pricePart({
          input,
          rates: input.rates,
          line: line.value,
          pits,
          watchers,
          crewS: crewSeconds(shots, whole, site, factors, assumed),
          likelyCrewS: whole.crossingTimeS?.p50 ?? site.likelyS + whole.giveUpTimeS,
          hammerS,
          fuelLitresPerS,
          pipeLengthM: pipePart.reduce((sum, pipe) => sum + pipe.coilNeededM * pipe.count, 0),
        })
  const coilShortByM = Math.max(
    0,
    ...pipePart.map((pipe) => (pipe.coilLengthM === null ? 0 : pipe.coilNeededM - pipe.coilLengthM)),
  )
  const shotParts = shots.map((shot) => shot.part)
  const release = releasePart({
    input,
    bore,
    air: airShown,
    run: whole,
    deviation: worst.part.deviation,
    clearances,
    pull,
    pullObjection: objection(facts, pull.method),
    isOutsideModel: stretches.value.some((stretch) => stretch.state.outsideModel),
    coilShortByM,
  })
  const stopShortM = input.ends.reception.kind === 'wall' ? assumed.use('wall.stopShort') : null
  const cautions = cautionsPart({
    input,
    bore,
    air: airShown,
    ground,
    pits,
    pull,
    shots: shotParts,
    stretches: stretches.value,
    price,
    stopShortM,
  })
  return done({
    bore,
    air: airShown,
    run: whole,
    shots: shotParts,
    pits,
    crew: { people: (input.rates?.crewSize ?? 2) + watchers, watchers },
    ground,
    deviation: worst.part.deviation,
    clearances,
    pipes: pipePart,
    pull,
    wear,
    service,
    ...(price === null ? {} : { price }),
    checklist: checklistPart({ input, pits, stretches: stretches.value }),
    cautions,
    release,
    assumptions: assumed.list,
    workings: trace.workings,
  })
}
