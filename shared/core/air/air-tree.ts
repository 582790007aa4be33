import { bracketedRoot } from '../numerics/bracketed-root.ts'
import { type AirElement, type LineStep, lineEndAbsPa, lineSteps } from './air-element.ts'

/** What stands at the end of a branch: ṁ = ṁ_r (p/p_r)^α, absolute pressures; identical tools are counted into ṁ_r. */
export type ToolEnd = {
  readonly ratedKgPerS: number
  readonly ratedAbsPa: number
  readonly exponent: number
}

/** A piece of line and what it feeds: one tool, or further branches. A tree cannot hold a loop. */
export type AirBranch = {
  readonly elements: readonly AirElement[]
  readonly end: ToolEnd | readonly AirBranch[]
}

export type SolvedBranch = {
  readonly massFlowKgPerS: number
  readonly inletAbsPa: number
  readonly outletAbsPa: number
  readonly steps: readonly LineStep[]
  /** The line passes all it can and the end would take more. The outlet is then what its end gets by with. */
  readonly isChoked: boolean
  /** In the order of the branches given; empty at a tool. */
  readonly branches: readonly SolvedBranch[]
}

export type AirSupply = { readonly setAbsPa: number; readonly capacityKgPerS: number }

export type SolvedTree = {
  readonly root: SolvedBranch
  /** The machine cannot hold its pressure. */
  readonly sags: boolean
  /** What would be drawn if it could. */
  readonly demandKgPerS: number
}

const isTool = (end: AirBranch['end']): end is ToolEnd => 'ratedKgPerS' in end

/** Flows are settled to this share of themselves: well inside what keeps mass at every node to 1e-9. */
const FINEST = 1e-13

/** Beyond this share of the flow a residual is no rounding: the line chokes there. */
const JUMP_FROM = 1e-6

/** What the end of a branch takes at a pressure; rises with it. */
function endTakesKgPerS(end: AirBranch['end'], absPa: number, temperatureK: number): number {
  if (isTool(end)) return end.ratedKgPerS * (absPa / end.ratedAbsPa) ** end.exponent
  return end.reduce((sum, branch) => sum + drawnKgPerS(branch, absPa, temperatureK), 0)
}

/** Above zero while the end wants more than the flow sent; a line that chokes sends far too much. */
function wantKgPerS(
  branch: AirBranch,
  massFlowKgPerS: number,
  inletAbsPa: number,
  temperatureK: number,
): number {
  const outletAbsPa = lineEndAbsPa(branch.elements, massFlowKgPerS, inletAbsPa, temperatureK)
  if (outletAbsPa === null) return Number.NEGATIVE_INFINITY
  return endTakesKgPerS(branch.end, outletAbsPa, temperatureK) - massFlowKgPerS
}

/** Flow a branch draws from a pressure at its inlet: what its line leaves falls with flow, what its end takes rises with pressure. */
function drawnKgPerS(branch: AirBranch, inletAbsPa: number, temperatureK: number): number {
  const mostKgPerS = endTakesKgPerS(branch.end, inletAbsPa, temperatureK)
  if (branch.elements.length === 0 || mostKgPerS === 0) return mostKgPerS
  const want = (flow: number) => wantKgPerS(branch, flow, inletAbsPa, temperatureK)
  // With nothing flowing nothing is lost, so at the lower end it wants all it could ever take.
  return bracketedRoot(want, 0, mostKgPerS, { relative: FINEST, atLow: mostKgPerS }) ?? mostKgPerS
}

/** Pressure at which the end takes just a flow: what a choked line leaves it. */
function pressureTakenAbsPa(
  end: AirBranch['end'],
  flowKgPerS: number,
  mostAbsPa: number,
  temperatureK: number,
): number {
  const excess = (absPa: number) => endTakesKgPerS(end, absPa, temperatureK) - flowKgPerS
  return bracketedRoot(excess, 0, mostAbsPa) ?? mostAbsPa
}

function solvedBranch(
  branch: AirBranch,
  massFlowKgPerS: number,
  inletAbsPa: number,
  temperatureK: number,
): SolvedBranch {
  // The root of a choked line may lie a rounding past the choke: a touch less shows where it was on the way.
  const steps =
    lineSteps(branch.elements, massFlowKgPerS, inletAbsPa, temperatureK) ??
    lineSteps(branch.elements, massFlowKgPerS * (1 - 1e-9), inletAbsPa, temperatureK) ??
    []
  const lineEnd = steps.at(-1)?.outletAbsPa ?? inletAbsPa
  const takes = endTakesKgPerS(branch.end, lineEnd, temperatureK)
  const isChoked = takes > massFlowKgPerS * (1 + JUMP_FROM)
  const outletAbsPa = isChoked
    ? pressureTakenAbsPa(branch.end, massFlowKgPerS, lineEnd, temperatureK)
    : lineEnd
  const branches = isTool(branch.end)
    ? []
    : branch.end.map((each) =>
        solvedBranch(each, drawnKgPerS(each, outletAbsPa, temperatureK), outletAbsPa, temperatureK),
      )
  return { massFlowKgPerS, inletAbsPa, outletAbsPa, steps, isChoked, branches }
}

/**
 * Where a compressor, a tree of lines and all its tools settle together.
 *
 * At every fork the flows of the branches add up to the flow that comes. Where all together want more than the machine
 * gives, its pressure sags until they draw just that. Each level is one bracketed root, so the work is bounded; a line that
 * cannot pass what its end wants is reported as choked, with what it passes.
 */
export function solveAirTree(root: AirBranch, supply: AirSupply, temperatureK: number): SolvedTree {
  const { setAbsPa, capacityKgPerS } = supply
  const demandKgPerS = drawnKgPerS(root, setAbsPa, temperatureK)
  const sags = demandKgPerS > capacityKgPerS
  if (!sags) return { root: solvedBranch(root, demandKgPerS, setAbsPa, temperatureK), sags, demandKgPerS }
  const excess = (inletAbsPa: number) => wantKgPerS(root, capacityKgPerS, inletAbsPa, temperatureK)
  const inletAbsPa = bracketedRoot(excess, 0, setAbsPa) ?? setAbsPa
  return { root: solvedBranch(root, capacityKgPerS, inletAbsPa, temperatureK), sags, demandKgPerS }
}
