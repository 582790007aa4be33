import type { Issue } from '../outcome.ts'
import type { CrossingInput } from './crossing-input.ts'

/** What lies beyond the line, or runs backwards: no plan can be made of it. */
export function lineRefusals(input: CrossingInput, lengthM: number): Issue[] {
  const issues: Issue[] = []
  const tooFar = (path: string, stationM: number): void => {
    // A millimetre of grace: sums of feet and inches do not close to the last bit.
    if (stationM > lengthM + 0.001) {
      issues.push({ path, code: 'stretch-outside-line', values: { stationM, lengthM } })
    }
  }
  const reversed = (path: string, fromM: number | null, toM: number | null): void => {
    if (fromM !== null && toM !== null && toM <= fromM) {
      issues.push({ path, code: 'inputs-conflict', accepted: '"to" beyond "from"', values: { fromM, toM } })
    }
  }
  input.ground.forEach((stretch, index) => {
    if (stretch.fromM !== null) tooFar(`ground.${index}.from`, stretch.fromM)
    if (stretch.toM !== null) tooFar(`ground.${index}.to`, stretch.toM)
    reversed(`ground.${index}`, stretch.fromM, stretch.toM)
  })
  input.over.forEach((reach, index) => {
    tooFar(`over.${index}.to`, reach.toM)
    reversed(`over.${index}`, reach.fromM, reach.toM)
  })
  input.shots.forEach((shot, index) => {
    tooFar(`shots.${index}.to`, shot.toM)
    reversed(`shots.${index}`, input.shots[index - 1]?.toM ?? 0, shot.toM)
  })
  input.utilities?.forEach((utility, index) => {
    if (utility.stationM !== null) tooFar(`utilities.${index}.station`, utility.stationM)
    if (utility.fromM !== null) tooFar(`utilities.${index}.from`, utility.fromM)
    if (utility.toM !== null) tooFar(`utilities.${index}.to`, utility.toM)
    reversed(`utilities.${index}`, utility.fromM, utility.toM)
  })
  input.observations.forEach((seen, index) => {
    tooFar(`observations.${index}.station`, seen.stationM)
  })
  return issues
}
