import { type AirElement, type HoseElement, OUR_OILER } from '../air/air-element.ts'
import type { AirBranch } from '../air/air-tree.ts'
import { componentOfLoss } from '../air/component-outlet.ts'
import { couplingCoefficient } from '../air/coupling-loss.ts'
import { darcyFrictionFactor } from '../air/friction-methods.ts'
import { toolEnd } from '../air/operating-point.ts'
import type { SiteAir } from '../air/site-air.ts'
import type { AirBranchInput, AirInput, ComponentInput, HoseInput, ValveInput } from './air-input.ts'

/** How good the hoses are taken to be: smooth and without couplings, as they are reckoned, or as rough as steel. */
export type HoseGrade = 'best' | 'likely' | 'worst'

export type TreeFacts = {
  readonly air: AirInput
  readonly site: SiteAir
  readonly toolAirDemandM3PerS: number
  readonly toolRatedGaugePa: number
  readonly exponent: number
}

/** ε of commercial steel, m: the worst wall a hose is taken to have. */
const WORST_ROUGHNESS_M = 4.6e-5
/** How far a hose may stray from a reading of it. Our judgement. */
const READING_ERROR = 0.15
/** Equivalent lengths of valves in bores, as Crane lists them. */
const BORES_OF_VALVE: Readonly<Record<ValveInput['kind'], number>> = {
  ball: 3,
  gate: 13,
  globe: 340,
  angle: 145,
}
/** So turbulent that the friction factor is that of the wall alone. */
const FULLY_ROUGH_REYNOLDS = 1e9

function hoseElement(hose: HoseInput, grade: HoseGrade): HoseElement {
  const { boreM, lengthM } = hose
  const element: HoseElement = {
    kind: 'hose',
    boreM,
    lengthM,
    ...(hose.parallel === 1 ? {} : { parallel: hose.parallel }),
    ...(hose.couplings === null ? {} : { couplings: hose.couplings }),
    ...(hose.couplingBoreM === null
      ? {}
      : { couplingCoefficient: couplingCoefficient(Math.min(1, hose.couplingBoreM / boreM)) }),
  }
  if (hose.lossFactor !== null) {
    const stray = grade === 'best' ? 1 - READING_ERROR : grade === 'worst' ? 1 + READING_ERROR : 1
    return { ...element, lossFactor: hose.lossFactor * stray }
  }
  if (grade === 'best') return { ...element, couplings: 0, roughnessM: 0 }
  return grade === 'worst' ? { ...element, roughnessM: WORST_ROUGHNESS_M } : element
}

function valveElement({ kind, boreM }: ValveInput): AirElement {
  const friction = darcyFrictionFactor(FULLY_ROUGH_REYNOLDS, WORST_ROUGHNESS_M / boreM, 'colebrook')
  return { kind: 'valve', boreM, coefficient: friction * BORES_OF_VALVE[kind] }
}

/** A loss printed at a flow is taken at the pressure the compressor is set to. */
function componentElement(
  kind: 'separator' | 'lubricator',
  given: ComponentInput,
  { air, site }: TreeFacts,
): AirElement {
  if ('conductanceM3PerSPa' in given) return { kind, ...given }
  const inletAbsPa = site.siteAbsPa + air.compressor.gaugePa
  const lossPa = Math.min(given.lossPa, 0.9 * inletAbsPa)
  return {
    kind,
    ...componentOfLoss({ lossPa, massFlowKgPerS: given.atM3PerS * site.dryKgPerM3, inletAbsPa }),
  }
}

const regulator = (gaugePa: number | null, { site }: TreeFacts): readonly AirElement[] =>
  gaugePa === null ? [] : [{ kind: 'regulator', setAbsPa: site.siteAbsPa + gaugePa }]

/** What stands right before a tool: its oiler and its whip. */
function atTool(facts: TreeFacts): readonly AirElement[] {
  const { lubricator, oiler, whip } = facts.air
  const isOiled = lubricator ?? true
  return [
    ...(oiler !== null ? [componentElement('lubricator', oiler, facts)] : isOiled ? [OUR_OILER] : []),
    ...(whip === null ? [] : [{ kind: 'whip' as const, ...whip, couplings: 1 }]),
  ]
}

function branchOf(branch: AirBranchInput, facts: TreeFacts, grade: HoseGrade): AirBranch {
  const further = facts.air.branches.filter((each) => each.from === branch.name)
  const elements = [
    ...regulator(branch.regulatorGaugePa, facts),
    ...branch.hoses.map((hose) => hoseElement(hose, grade)),
  ]
  if (further.length > 0) return { elements, end: further.map((each) => branchOf(each, facts, grade)) }
  const { tool } = branch
  const end = toolEnd(
    tool?.airDemandM3PerS ?? facts.toolAirDemandM3PerS,
    tool?.ratedGaugePa ?? facts.toolRatedGaugePa,
    facts.exponent,
  )
  return { elements: [...elements, ...atTool(facts)], end }
}

/** The line of a crossing's file as the solver takes it: separator, valves and regulator at the machine, then the hoses. */
export function airTreeOf(facts: TreeFacts, grade: HoseGrade): AirBranch {
  const { air } = facts
  const elements = [
    ...(air.separator === null ? [] : [componentElement('separator', air.separator, facts)]),
    ...air.valves.map(valveElement),
    ...regulator(air.regulatorGaugePa, facts),
    ...air.hoses.map((hose) => hoseElement(hose, grade)),
  ]
  const first = air.branches.filter((branch) => branch.from === null)
  if (first.length > 0) return { elements, end: first.map((branch) => branchOf(branch, facts, grade)) }
  const { toolAirDemandM3PerS, toolRatedGaugePa, exponent } = facts
  return {
    elements: [...elements, ...atTool(facts)],
    end: toolEnd(air.tools * toolAirDemandM3PerS, toolRatedGaugePa, exponent),
  }
}

/** Which branch at each fork leads to the tools, in the solver's order, with the branch each stands on. */
export function toolsOfInput(
  air: AirInput,
  from: string | null = null,
  path: readonly number[] = [],
): readonly { readonly path: readonly number[]; readonly branch: AirBranchInput | null }[] {
  const next = air.branches.filter((branch) => branch.from === from)
  if (from === null && next.length === 0) return [{ path: [], branch: null }]
  return next.flatMap((branch, index) => {
    const here = [...path, index]
    const further = air.branches.some((each) => each.from === branch.name)
    return further ? toolsOfInput(air, branch.name, here) : [{ path: here, branch }]
  })
}

/** Tools on one end: a plain line's tools stand together, on branches each has its own. */
export const toolsOnOneEnd = ({ branches, tools }: AirInput): number => (branches.length > 0 ? 1 : tools)
