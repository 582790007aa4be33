import { bracketedRoot } from '../numerics/bracketed-root.ts'
import { createTrace } from '../trace.ts'
import { treeFacts } from './air.ts'
import { type AirInput, branchesToTool, type HoseInput } from './air-input.ts'
import { solveAir } from './air-solve.ts'
import { createAssumed } from './assumptions.ts'
import type { CrossingInput } from './crossing-input.ts'
import { toolFacts } from './tool-facts.ts'

/** A hose that loses a twentieth or twenty times of what it is reckoned to is another hose. */
const LEAST_FACTOR = 0.05
const MOST_FACTOR = 20

function withFactor(air: AirInput, lossFactor: number): AirInput {
  const ours = new Set(branchesToTool(air))
  const read = (hose: HoseInput): HoseInput => ({ ...hose, lossFactor })
  return {
    ...air,
    hoses: air.hoses.map(read),
    branches: air.branches.map((branch) =>
      ours.has(branch) ? { ...branch, hoses: branch.hoses.map(read) } : branch,
    ),
  }
}

/**
 * By how much the hoses on the way lose more, or less, than they are reckoned to, if a gauge at the tool shows `readGaugePa`
 * while it hammers. One factor for all of them: a reading at one end cannot tell them apart. Null where no factor between a
 * twentieth and twenty gives that reading.
 */
export function hoseFactorOfReading(input: CrossingInput, readGaugePa: number): number | null {
  const tool = toolFacts(input.tool, createAssumed(), createTrace())
  const over = (lossFactor: number): number => {
    const air = withFactor(input.air, lossFactor)
    const point = solveAir(treeFacts({ ...input, air }, tool, createAssumed()), 'likely')
    return (point.ok ? point.toolGaugePa : 0) - readGaugePa
  }
  return bracketedRoot(over, LEAST_FACTOR, MOST_FACTOR, { relative: 1e-9, steps: 80 })
}
