import { bracketedRoot } from '../numerics/bracketed-root.ts'
import { createTrace } from '../trace.ts'
import { treeFacts } from './air.ts'
import { type AirInput, branchesToTool, hosesToTool } from './air-input.ts'
import { solveAir } from './air-solve.ts'
import { createAssumed } from './assumptions.ts'
import type { CrossingInput } from './crossing-input.ts'
import { toolFacts } from './tool-facts.ts'

/** How far a thing goes; null with the reason when it does not, or when it goes further than anybody asks. */
export type Reach = { readonly value: number | null; readonly why: 'found' | 'not-even-now' | 'beyond' }

export type AirReach = {
  readonly wantedGaugePa: number
  /** Whole line to the tool, with more of its last hose, or less. */
  readonly longestHoseM: Reach
  /** Tools like this one hammering together off the same line. */
  readonly mostTools: Reach
  readonly highestSiteM: Reach
}

/** Asked no further than this. */
export const REACH_LIMITS = { hoseM: 300, tools: 12, siteM: 4000 } as const
const LOWEST_SITE_M = -450
/** A hose with no length has its couplings still. */
const LEAST_HOSE_M = 0.1
/** Tenths of a metre are all a line is cut to. */
const FINE = { relative: 1e-6, steps: 60 } as const

type Over = (air: AirInput) => number

/** Pressure at the tool above what is wanted; a line that cannot be run is far below. */
function overOf(input: CrossingInput, wantedGaugePa: number): Over {
  const tool = toolFacts(input.tool, createAssumed(), createTrace())
  return (air) => {
    const point = solveAir(treeFacts({ ...input, air }, tool, createAssumed()), 'likely')
    return (point.ok ? point.toolGaugePa : 0) - wantedGaugePa
  }
}

/** The same air with the hoses on the way to our tool brought to one length, the last of them taking the change. */
function withRun(air: AirInput, lengthM: number): AirInput {
  const whole = hosesToTool(air).reduce((sum, hose) => sum + hose.lengthM, 0)
  const scale = lengthM / whole
  const stretched = (hoses: AirInput['hoses']) =>
    hoses.map((hose) => ({ ...hose, lengthM: Math.max(LEAST_HOSE_M, hose.lengthM * scale) }))
  const ours = new Set(branchesToTool(air))
  return {
    ...air,
    hoses: stretched(air.hoses),
    branches: air.branches.map((branch) =>
      ours.has(branch) ? { ...branch, hoses: stretched(branch.hoses) } : branch,
    ),
  }
}

function reachOf(over: (x: number) => number, low: number, high: number): Reach {
  if (over(low) < 0) return { value: null, why: 'not-even-now' }
  if (over(high) >= 0) return { value: null, why: 'beyond' }
  return { value: bracketedRoot(over, low, high, FINE), why: 'found' }
}

function mostToolsOf(air: AirInput, over: Over): Reach {
  // Several tools off one end: with branches, as if they stood at the end of ours.
  const ours = branchesToTool(air)
  const chain: AirInput = {
    ...air,
    hoses: [...air.hoses, ...ours.flatMap((branch) => branch.hoses)],
    branches: [],
  }
  let most = 0
  for (let tools = 1; tools <= REACH_LIMITS.tools; tools++) {
    if (over({ ...chain, tools }) < 0) break
    most = tools
  }
  if (most === 0) return { value: null, why: 'not-even-now' }
  return most === REACH_LIMITS.tools ? { value: null, why: 'beyond' } : { value: most, why: 'found' }
}

/** The longest line, the most tools and the highest site at which the tool still gets the pressure wanted. */
export function airReach(input: CrossingInput, wantedGaugePa: number): AirReach {
  const { air } = input
  const over = overOf(input, wantedGaugePa)
  return {
    wantedGaugePa,
    longestHoseM: reachOf((lengthM) => over(withRun(air, lengthM)), LEAST_HOSE_M, REACH_LIMITS.hoseM),
    mostTools: mostToolsOf(air, over),
    highestSiteM: reachOf((altitudeM) => over({ ...air, altitudeM }), LOWEST_SITE_M, REACH_LIMITS.siteM),
  }
}
