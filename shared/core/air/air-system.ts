import type { AirElement } from './air-element.ts'
import { type AirBranch, type SolvedBranch, solveAirTree } from './air-tree.ts'
import type { SiteAir } from './site-air.ts'

/** Common practice: a 100 psi machine rides 115–125 psi with no air drawn, and in proportion between. */
const UNLOADED_RISE = 0.25

export type LimitedBy = 'tool' | 'compressor' | 'hose' | 'engine' | 'regulator'

export type PressureStep = {
  readonly element: AirElement['kind']
  readonly number: number
  readonly inletGaugePa: number
  readonly outletGaugePa: number
}

export type AirSystemInput = {
  readonly site: SiteAir
  /** Set at full load. */
  readonly setGaugePa: number
  /** Where the machine shuts its inlet; null: 1.25 times the set pressure. */
  readonly unloadGaugePa: number | null
  readonly root: AirBranch
  /** Which branch at each fork leads to the tool that is asked about. */
  readonly path: readonly number[]
  readonly ratedGaugePa: number
}

export type ToolPoint = {
  /** Which branch at each fork. */
  readonly path: readonly number[]
  readonly gaugePa: number
  readonly flowM3PerS: number
  readonly isChoked: boolean
}

export type AirPoint = {
  readonly ok: true
  readonly compressorGaugePa: number
  readonly toolGaugePa: number
  /** All that is lost between compressor and tool, the oiler's part with it; `steps` tells them apart. */
  readonly hoseLossPa: number
  /** Free air drawn, inlet volume at the site. */
  readonly flowM3PerS: number
  /** What the tools would draw if the compressor held its pressure; equals the flow unless it sags. */
  readonly demandM3PerS: number
  readonly capacityM3PerS: number
  readonly limitedBy: LimitedBy
  readonly steps: readonly PressureStep[]
  /** Where the pressure rides while the machine runs part loaded. */
  readonly unloadedGaugePa: number
  /** How high it gets at the tool with nothing flowing: past the regulators on the way. */
  readonly mostAtToolGaugePa: number
  /** Every tool, in the order of the branches. */
  readonly tools: readonly ToolPoint[]
  readonly sags: boolean
}
export type NoAirPoint = { readonly ok: false; readonly reason: 'choked' | 'no-pressure' }

function toolsOf(
  branch: SolvedBranch,
  site: SiteAir,
  path: readonly number[],
  choked: boolean,
): readonly ToolPoint[] {
  const isChoked = choked || branch.isChoked
  if (branch.branches.length > 0) {
    return branch.branches.flatMap((each, index) => toolsOf(each, site, [...path, index], isChoked))
  }
  const gaugePa = branch.outletAbsPa - site.siteAbsPa
  return [{ path, gaugePa, flowM3PerS: branch.massFlowKgPerS / site.dryKgPerM3, isChoked }]
}

/** The branches from the compressor to one tool; null where the path leads nowhere. */
function alongPath<Branch>(
  root: Branch,
  path: readonly number[],
  below: (branch: Branch) => readonly Branch[],
): readonly Branch[] {
  let branch: Branch | undefined = root
  const met: Branch[] = []
  for (const index of [...path, -1]) {
    if (branch === undefined) break
    met.push(branch)
    branch = index < 0 ? undefined : below(branch)[index]
  }
  return met
}

const branchesOf = ({ end }: AirBranch): readonly AirBranch[] => ('ratedKgPerS' in end ? [] : end)

/** A pressure set below the tool's rating is no fault of the hose. */
function limitOf(
  { site, setGaugePa, ratedGaugePa }: AirSystemInput,
  sags: boolean,
  toolGaugePa: number,
  mostAtToolGaugePa: number,
): LimitedBy {
  if (sags) return site.isEngineLimited ? 'engine' : 'compressor'
  if (toolGaugePa >= ratedGaugePa) return 'tool'
  if (setGaugePa < ratedGaugePa) return 'compressor'
  return mostAtToolGaugePa < ratedGaugePa ? 'regulator' : 'hose'
}

/** Numbered along the whole way, so that a second branch's first hose is hose 2. */
function stepsAlong(branches: readonly SolvedBranch[], siteAbsPa: number): readonly PressureStep[] {
  const counted = new Map<AirElement['kind'], number>()
  return branches.flatMap((branch) =>
    branch.steps.map(({ element, inletAbsPa, outletAbsPa }) => {
      const number = (counted.get(element) ?? 0) + 1
      counted.set(element, number)
      return {
        element,
        number,
        inletGaugePa: inletAbsPa - siteAbsPa,
        outletGaugePa: outletAbsPa - siteAbsPa,
      }
    }),
  )
}

/** Where compressor, lines and tools agree; a failure is a value with its reason. */
export function solveAirSystem(input: AirSystemInput): AirPoint | NoAirPoint {
  const { site, setGaugePa, root, path } = input
  const setAbsPa = site.siteAbsPa + setGaugePa
  const solved = solveAirTree(root, { setAbsPa, capacityKgPerS: site.capacityKgPerS }, site.temperatureK)
  const way = alongPath(solved.root, path, (branch) => branch.branches)
  if (way.some((branch) => branch.isChoked)) return { ok: false, reason: 'choked' }
  const toolGaugePa = (way.at(-1)?.outletAbsPa ?? 0) - site.siteAbsPa
  if (toolGaugePa <= 0) return { ok: false, reason: 'no-pressure' }
  const compressorGaugePa = solved.root.inletAbsPa - site.siteAbsPa
  const loadFraction = solved.root.massFlowKgPerS / site.capacityKgPerS
  const unloadGaugePa = input.unloadGaugePa ?? setGaugePa * (1 + UNLOADED_RISE)
  const unloadedGaugePa = solved.sags
    ? compressorGaugePa
    : compressorGaugePa + (unloadGaugePa - setGaugePa) * (1 - loadFraction)
  const regulators = alongPath(root, path, branchesOf).flatMap(({ elements }) =>
    elements.flatMap((each) => (each.kind === 'regulator' ? [each.setAbsPa - site.siteAbsPa] : [])),
  )
  const mostAtToolGaugePa = Math.min(unloadedGaugePa, ...regulators)
  return {
    ok: true,
    compressorGaugePa,
    toolGaugePa,
    hoseLossPa: compressorGaugePa - toolGaugePa,
    flowM3PerS: solved.root.massFlowKgPerS / site.dryKgPerM3,
    demandM3PerS: solved.demandKgPerS / site.dryKgPerM3,
    capacityM3PerS: site.capacityM3PerS,
    limitedBy: limitOf(input, solved.sags, toolGaugePa, Math.min(setGaugePa, ...regulators)),
    steps: stepsAlong(way, site.siteAbsPa),
    unloadedGaugePa,
    mostAtToolGaugePa,
    tools: toolsOf(solved.root, site, [], false),
    sags: solved.sags,
  }
}
