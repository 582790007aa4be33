import type { Trace } from '../trace.ts'
import type { Assumed } from './assumptions.ts'
import type { BoreLine } from './bore-line.ts'
import { clearancesPart } from './clearances.ts'
import type { CrossingInput } from './crossing-input.ts'
import { deviationPart } from './deviation.ts'
import type { DrawFactors } from './draw-factors.ts'
import { hammerTimes } from './draws.ts'
import type { Proposal } from './path-parts.ts'
import { type Blow, type SolvedStretch, solveStretch } from './penetration.ts'
import type { RunPart, ShotPart } from './plan.ts'
import { proposalsPart } from './proposals.ts'
import { giveUpTimeS, type RunTimes, runTimes, type SiteTime } from './run.ts'
import { pathPart, shotPath } from './shot-path.ts'
import type { Stretch } from './stretches.ts'
import type { ToolFacts } from './tool-facts.ts'

export type ShotFacts = {
  readonly input: CrossingInput
  readonly line: BoreLine
  readonly stretches: readonly Stretch[]
  readonly tool: ToolFacts
  readonly blow: Blow
  readonly boreDiameterM: number
  /** Along the whole line, to the top of the bore. */
  readonly leastCoverM: number
  readonly factors: DrawFactors
  readonly assumed: Assumed
  readonly trace: Trace
}

export type SolvedShot = {
  readonly part: ShotPart
  readonly proposals: readonly Proposal[]
  readonly hammerS: Float64Array
  readonly hazard: number
  readonly solved: readonly SolvedStretch[]
}

/** Obstructions per length are given for a shot of this length. */
const HAZARD_LENGTH_M = 12
/** The shot alone needs no pits of its own: those are the crossing's. */
const NO_SITE_TIME: SiteTime = { likelyS: 0, cov: 0 }

/** ∫ hazard over the shot: chance per 12 m turned into a rate. */
const hazardOf = (stretches: readonly Stretch[]): number =>
  stretches.reduce(
    (sum, stretch) =>
      sum - (Math.log1p(-stretch.state.obstructionPer12M.likely) * stretch.lengthM) / HAZARD_LENGTH_M,
    0,
  )

/** Median run of the shot: slowest ground decides what a blow does, the length-weighted pace what the clock says. */
export function withMedian(times: RunTimes, solved: readonly SolvedStretch[], blow: Blow): RunPart {
  const least = solved.reduce(
    (worst, each) => (each.median.setM < worst.median.setM ? each : worst),
    solved[0] as SolvedStretch,
  )
  return { ...times, blowRateHz: blow.rateHz, blowEnergyJ: blow.energyJ, setPerBlowM: least.median.setM }
}

/** The hammered length: a bore into a wall stops short of it. */
const shortened = (stretches: readonly Stretch[], stopShortM: number): readonly Stretch[] =>
  stretches.map((stretch, index) =>
    index === stretches.length - 1
      ? { ...stretch, lengthM: Math.max(0.05, stretch.lengthM - stopShortM) }
      : stretch,
  )

const stretchPart = ({ stretch, median }: SolvedStretch): ShotPart['stretches'][number] => ({
  fromM: stretch.fromM,
  toM: stretch.toM,
  uscs: stretch.state.uscs,
  stateCode: stretch.state.stateCode,
  setPerBlowM: median.setM,
  advanceMPerS: median.advanceMPerS,
  tipResistancePa: median.tipPa,
  buriedToGripM: median.gripM,
})

/** One shot: ground it passes, the draws, where it may arrive, what it passes by. */
export function solveShot(facts: ShotFacts, index: number): SolvedShot | null {
  const shot = facts.line.shots[index]
  if (!shot) return null
  const isLast = index === facts.line.shots.length - 1
  const stopShortM =
    isLast && facts.input.ends.reception.kind === 'wall' ? facts.assumed.use('wall.stopShort') : 0
  const stretches = shortened(
    facts.stretches.filter((stretch) => stretch.shot === index),
    stopShortM,
  )
  const about = `shot ${index + 1}`
  const solved = stretches.map((stretch) => solveStretch(stretch, facts.tool, facts.blow, facts.trace))
  const hammerS = hammerTimes(solved, facts.tool, facts.blow, facts.factors)
  const hazard = hazardOf(stretches)
  const times = runTimes(
    {
      lengthM: stretches.reduce((sum, stretch) => sum + stretch.lengthM, 0),
      hammerS,
      giveUpS: giveUpTimeS(hammerS, facts.assumed.use('giveUp.least')),
      obstructionHazard: hazard,
      site: NO_SITE_TIME,
      shots: 1,
      factors: facts.factors,
    },
    facts.assumed,
  )
  const path = shotPath(
    shot,
    facts.line,
    stretches,
    facts.tool,
    facts.input,
    facts.assumed,
    facts.trace,
    about,
  )
  const isGravity = facts.input.grade !== null
  const clearanceFacts = {
    line: facts.line,
    shot,
    stretches,
    path,
    boreDiameterM: facts.boreDiameterM,
    blowEnergyJ: facts.blow.energyJ,
    layoutM: facts.input.aim.layoutM,
    spread: facts.input.spread,
  }
  const clearances = clearancesPart(clearanceFacts, facts.input.utilities, facts.assumed, facts.trace)
  const part: ShotPart = {
    fromM: shot.fromM,
    toM: shot.toM,
    depthFromM: shot.depthFromM,
    depthToM: shot.depthToM,
    run: withMedian(times, solved, facts.blow),
    deviation: deviationPart(shot, path, isGravity, facts.assumed, facts.trace, about),
    path: pathPart(shot, path),
    clearances,
    stretches: solved.map(stretchPart),
  }
  const proposals = proposalsPart({
    ...clearanceFacts,
    index,
    utilities: facts.input.utilities ?? [],
    clearances,
    driftBase: facts.assumed.use('line.drift'),
    tapeErrorM: facts.assumed.use('clearance.exposureError'),
    leastCoverM: facts.leastCoverM,
  })
  return { part, proposals, hammerS, hazard, solved }
}
