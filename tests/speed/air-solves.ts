import type { AirElement } from '../../shared/core/air/air-element.ts'
import { type AirBranch, solveAirTree } from '../../shared/core/air/air-tree.ts'
import { hoseOutlet } from '../../shared/core/air/hose-outlet.ts'
import { toolEnd } from '../../shared/core/air/operating-point.ts'

const INCH_M = 0.0254
const FOOT_M = 0.3048
const CFM_M3_PER_S = FOOT_M ** 3 / 60
const hose = (boreIn: number, lengthFt: number): AirElement => ({
  kind: 'hose',
  boreM: boreIn * INCH_M,
  lengthM: lengthFt * FOOT_M,
})
const tool = toolEnd(60 * CFM_M3_PER_S, 620_528, 1)
const SUPPLY = { setAbsPa: 790_800, capacityKgPerS: 0.2 }
const K = 293.15

/** One tool on three hoses. */
export const CHAIN: AirBranch = { elements: [hose(1, 50), hose(1, 50), hose(0.75, 50)], end: tool }
/** Four tools, each on its own hose off a common one. */
export const TREE_OF_FOUR: AirBranch = {
  elements: [hose(1.25, 50)],
  end: [50, 75, 100, 125].map((lengthFt) => ({ elements: [hose(0.75, lengthFt)], end: tool })),
}

export const solve = (tree: AirBranch): number => solveAirTree(tree, SUPPLY, K).root.massFlowKgPerS

/** What no solve can do without: one walk through one hose. */
export const oneHose = (): number => {
  const found = hoseOutlet({
    boreM: INCH_M,
    lengthM: 50 * FOOT_M,
    roughnessM: 1e-5,
    couplings: 2,
    massFlowKgPerS: 0.05,
    inletAbsPa: SUPPLY.setAbsPa,
    temperatureK: K,
  })
  return found.ok ? found.outletAbsPa : 0
}
