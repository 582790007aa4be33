import { pathAt, type SectionFacts } from './section-facts.ts'
import type { Frame } from './section-frame.ts'
import { group, lineBetween, node, type Point, polygon, polyline, type SvgNode } from './svg-tree.ts'

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
        const { offM, p90M } = pathAt(plan, index, m, 'vertical')
        const levelM = axisLevelM(facts, index, m) - offM + sign * (radiusM + p90M)
        return frame.at(m, Math.min(levelM, line.groundLevelM(m)))
      })
    return polygon('envelope', [...edge(1), ...[...edge(-1)].reverse()], { 'data-shot': index })
  })
  return group('envelopes', bands)
}

/** Where the tool was found: a ring, with a bar as long as the reading may be out. */
export function lookMark([x, y]: Point, halfPx: number, isOverruled: boolean): SvgNode {
  const bar = lineBetween('look-bar', [x, y - halfPx], [x, y + halfPx])
  const ring = node('circle', { class: isOverruled ? 'look overruled' : 'look', cx: x, cy: y, r: 4 })
  return group('look-mark', [bar, ring])
}

/** The most likely path where the tool was found off its line, and every place it was found at. */
export function looksInSection(facts: SectionFacts, frame: Frame): SvgNode {
  const { plan } = facts
  const marks = plan.shots.flatMap((shot, index) => {
    if (shot.path.observations.length === 0) return []
    const path = stepsOf(shot.fromM, shot.toM).map((m) =>
      frame.at(m, axisLevelM(facts, index, m) - pathAt(plan, index, m, 'vertical').offM),
    )
    const looks = shot.path.observations.flatMap(({ stationM, lowM, errorM, isOverruled }) =>
      lowM === null
        ? []
        : [
            lookMark(
              frame.at(stationM, axisLevelM(facts, index, stationM) - lowM),
              errorM * frame.pxPerMDown,
              isOverruled,
            ),
          ],
    )
    return [polyline('likely-path', path), ...looks]
  })
  return group('looks', marks)
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
