import { quantileInPlace } from '../numerics/select.ts'
import { done, type Outcome } from '../outcome.ts'
import { createTrace, type Trace } from '../trace.ts'
import { type Assumed, createAssumed } from './assumptions.ts'
import { borePart } from './bore.ts'
import { cautionsPart } from './cautions.ts'
import { checklistPart } from './checklist.ts'
import type { CrossingInput } from './crossing-input.ts'
import { crewSeconds, crossingRun } from './crossing-run.ts'
import { type DrawFactors, drawFactors } from './draw-factors.ts'
import type { Dimension } from './draw-scores.ts'
import { heavePart } from './heave.ts'
import { learnedParts, withLearned } from './learned.ts'
import type { LearnedPart } from './learned-input.ts'
import { blowAt } from './penetration.ts'
import { pipesPart } from './pipes.ts'
import { pitsPart } from './pits.ts'
import type { PipePart, PitPart, Plan, PricePart, PullPart, RunPart } from './plan.ts'
import { pricePart } from './price.ts'
import { objection, pullPart } from './pull.ts'
import { pullFacts } from './pull-facts.ts'
import { releasePart } from './release.ts'
import { type Resolved, resolveCrossing } from './resolve-crossing.ts'
import type { SiteTime } from './run.ts'
import { type SolvedShot, solveShot } from './shots.ts'
import { siteTime } from './site-time.ts'
import { toExposePart } from './to-expose.ts'
import { watchersOf } from './watchers.ts'
import { wearPart } from './wear.ts'

export type PlanOptions = {
  /** 0 switches every spread off: for the check that the draws then give the deterministic run. */
  readonly spreadScale?: number
  /** A dimension of the draws held at its middle, as if it were known: for what matters most. */
  readonly known?: Dimension
}

/** What the time of a crossing is made of. */
type Timed = {
  readonly shots: readonly SolvedShot[]
  readonly pits: readonly PitPart[]
  readonly site: SiteTime
  readonly run: RunPart
  readonly factors: DrawFactors
  readonly learned: readonly LearnedPart[]
}

function timed(
  known: Resolved,
  pull: PullPart,
  leastCoverM: number,
  factors: DrawFactors,
  assumed: Assumed,
  trace: Trace,
): Timed {
  const { input, line, tool, size, air } = known
  const blow = blowAt(tool, air.toolGaugePa, trace)
  const learned = learnedParts(known)
  const stretches = withLearned(known.stretches, learned)
  const boreDiameterM = size.diameterM
  const facts = { input, line, stretches, tool, blow, boreDiameterM, leastCoverM, factors, assumed, trace }
  const shots = line.shots.flatMap((_, index) => solveShot(facts, index) ?? [])
  const pits = pitsPart(input, line, tool, assumed, trace)
  const hammerS = shots.reduce(
    (sum, { part }) => sum + (part.run.hammerTimeS?.p50 ?? part.run.giveUpTimeS),
    0,
  )
  const site = siteTime(input, line, pits, pull.method, hammerS, assumed)
  const run = crossingRun(shots, line.lengthM, site, factors, blow, assumed)
  return { shots, pits, site, factors, learned, run }
}

/** Hammering of a likely bore: with an expander the tool goes through twice. */
const likelyHammerS = (run: RunPart, pull: PullPart): number =>
  (pull.method === 'expander' ? 2 : 1) * (run.hammerTimeS?.p50 ?? run.giveUpTimeS)

function priced(
  known: Resolved,
  times: Timed,
  pull: PullPart,
  pipes: readonly PipePart[],
  assumed: Assumed,
): PricePart | null {
  const { input, line, air } = known
  const { shots, pits, site, run, factors } = times
  if (input.rates === null) return null
  const crewS = crewSeconds(shots, run, site, factors, assumed)
  return pricePart({
    input,
    rates: input.rates,
    line,
    pits,
    watchers: watchersOf(input, line.shots),
    crewS,
    // Price rises with crew time alone, so the middle price is that of the middle crew time: the lines add up to it.
    likelyCrewS: quantileInPlace(crewS.slice(), 0.5),
    hammerS: likelyHammerS(run, pull),
    fuelLitresPerS: air.fuelLitresPerS,
    pipeLengthM: pipes.reduce((sum, pipe) => sum + pipe.coilNeededM * pipe.count, 0),
  })
}

const shortOfCoilM = (pipes: readonly PipePart[]): number =>
  Math.max(0, ...pipes.map((pipe) => (pipe.coilLengthM === null ? 0 : pipe.coilNeededM - pipe.coilLengthM)))

/** The shot that may land furthest off speaks for the crossing. */
const worstDeviation = (shots: readonly SolvedShot[]) =>
  shots
    .map((shot) => shot.part.deviation)
    .reduce((far, each) => (each.lateralM.p90 > far.lateralM.p90 ? each : far))

/** The parts of a plan in their order; each is made in its own file. */
function compose(known: Resolved, options: PlanOptions, assumed: Assumed, trace: Trace): Plan {
  const { input, line, stretches, size } = known
  const { fuelLitresPerS: _fuel, pressureRatio, ...air } = known.air
  const pipes = pipesPart(input, known.pipes, line.lengthM, assumed, trace)
  const facts = pullFacts(known)
  const pull = pullPart(facts)
  const bore = borePart(line, size, pull.method === 'tow', trace)
  const { seed, draws } = input.spread
  const factors = drawFactors(seed, draws, options.spreadScale ?? 1, options.known ?? null)
  const times = timed(known, pull, bore.coverM, factors, assumed, trace)
  const { pits, run } = times
  const shots = times.shots.map((shot) => shot.part)
  const ground = heavePart(line, stretches, size.diameterM, trace)
  const deviation = worstDeviation(times.shots)
  const clearances = shots.flatMap((shot) => shot.clearances)
  const isOiled = input.air.lubricator ?? true
  const worn = wearPart({ stretches, hammerS: likelyHammerS(run, pull), isOiled, pressureRatio }, assumed)
  const price = priced(known, times, pull, pipes, assumed)
  const watchers = watchersOf(input, line.shots)
  const stopShortM = input.ends.reception.kind === 'wall' ? assumed.use('wall.stopShort') : null
  const release = releasePart({
    input,
    bore,
    air,
    run,
    deviation,
    paths: shots.map((shot) => shot.path),
    clearances,
    pull,
    pullObjection: objection(facts, pull.method),
    isOutsideModel: stretches.some((stretch) => stretch.state.outsideModel),
    coilShortByM: shortOfCoilM(pipes),
    pits,
    wallAxisDepthM: stopShortM === null ? null : line.axisDepthM(line.lengthM),
  })
  return {
    bore,
    air,
    run,
    shots,
    pits,
    crew: { people: (input.rates?.crewSize ?? 2) + watchers, watchers },
    ground,
    deviation,
    clearances,
    toExpose: toExposePart(input, shots, assumed.use('clearance.exposureError')),
    ...(times.learned.length === 0 ? {} : { learned: times.learned }),
    proposals: times.shots.flatMap((shot) => shot.proposals),
    pipes,
    pull,
    ...worn,
    ...(price === null ? {} : { price }),
    checklist: checklistPart({ input, pits, stretches }),
    cautions: cautionsPart({ input, bore, air, ground, pits, pull, shots, stretches, price, stopShortM }),
    release,
    assumptions: assumed.list,
    workings: trace.workings,
  }
}

/**
 * Plans one crossing. The same file gives the same plan on every machine. Refuses only what has no physical answer; a
 * bad idea is planned and held.
 */
export function planCrossing(input: CrossingInput, options: PlanOptions = {}): Outcome<Plan> {
  const trace = createTrace()
  const assumed = createAssumed()
  const known = resolveCrossing(input, assumed, trace)
  return known.ok ? done(compose(known.value, options, assumed, trace)) : known
}
