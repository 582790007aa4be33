import { type AirPoint, type NoAirPoint, solveAirSystem } from '../air/air-system.ts'
import { airTreeOf, type HoseGrade, type TreeFacts, toolsOfInput } from './air-line-of-input.ts'

/** Where the line and the tools meet, with hoses of a grade. */
export function solveAir(facts: TreeFacts, grade: HoseGrade): AirPoint | NoAirPoint {
  const { air, site } = facts
  const tools = toolsOfInput(air)
  return solveAirSystem({
    site,
    setGaugePa: air.compressor.gaugePa,
    unloadGaugePa: air.compressor.unloadGaugePa,
    root: airTreeOf(facts, grade),
    path: (tools.find(({ branch }) => branch === null || branch.tool === null) ?? { path: [] }).path,
    ratedGaugePa: facts.toolRatedGaugePa,
  })
}
