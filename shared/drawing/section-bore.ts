import { deviationP90M, type SectionFacts } from './section-facts.ts'
import type { Frame } from './section-frame.ts'
import { group, lineBetween, type Point, polygon, type SvgNode } from './svg-tree.ts'

/** Points an envelope is drawn through: it is a curve, and straight enough between so many. */
const ENVELOPE_STEPS = 24

const stepsOf = (fromM: number, toM: number): readonly number[] =>
  Array.from({ length: ENVELOPE_STEPS + 1 }, (_, step) => fromM + ((toM - fromM) * step) / ENVELOPE_STEPS)

/** Bored up to here: a bore into a wall stops short of it. */
export const boredToM = ({ line, stopShortM }: SectionFacts): number => line.lengthM - (stopShortM ?? 0)

/** Where the bore may run, high or low, grown anew from each pit. The ground is the limit upwards. */
export function envelope(facts: SectionFacts, frame: Frame): SvgNode {
  const { line, plan, radiusM } = facts
  const bands = plan.shots.map((shot, index) => {
    const stations = stepsOf(shot.fromM, shot.toM)
    const edge = (sign: 1 | -1): readonly Point[] =>
      stations.map((m) => {
        const offM = radiusM + deviationP90M(plan, index, m - shot.fromM)
        return frame.at(m, Math.min(axisLevelM(facts, index, m) + sign * offM, line.groundLevelM(m)))
      })
    return polygon('envelope', [...edge(1), ...[...edge(-1)].reverse()], { 'data-shot': index })
  })
  return group('envelopes', bands)
}

/** The axis within one shot; at a pit the next shot may start at another depth. */
function axisLevelM({ line }: SectionFacts, shotIndex: number, stationM: number): number {
  const shot = line.shots[shotIndex]
  if (!shot || shot.toM === shot.fromM) return line.axisLevelM(stationM)
  const share = (stationM - shot.fromM) / (shot.toM - shot.fromM)
  return shot.levelFromM + share * (shot.levelToM - shot.levelFromM)
}

/** The bore as the band it is: as thick as its diameter to the vertical scale. */
export function boreBand(facts: SectionFacts, frame: Frame): SvgNode {
  const { plan, radiusM } = facts
  const bands = plan.shots.flatMap((shot, index) => {
    const toM = Math.min(shot.toM, boredToM(facts))
    const fromLevelM = axisLevelM(facts, index, shot.fromM)
    const toLevelM = axisLevelM(facts, index, toM)
    const band = polygon(
      'bore',
      [
        frame.at(shot.fromM, fromLevelM + radiusM),
        frame.at(toM, toLevelM + radiusM),
        frame.at(toM, toLevelM - radiusM),
        frame.at(shot.fromM, fromLevelM - radiusM),
      ],
      { 'data-shot': index },
    )
    if (toM === shot.toM) return [band]
    // The rest to the wall is not hammered.
    const rest = lineBetween(
      'bore-line',
      frame.at(toM, toLevelM),
      frame.at(shot.toM, axisLevelM(facts, index, shot.toM)),
    )
    return [band, rest]
  })
  return group('bores', bands)
}
