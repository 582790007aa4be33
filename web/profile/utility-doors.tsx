import type { DrawnUtility } from '../../shared/drawing/drawn-utility.ts'
import type { LongSection } from '../../shared/drawing/long-section.ts'
import type { Say } from '../../shared/text/language.ts'
import { planWord } from '../../shared/text/plan-words.ts'
import { saidQuantity } from '../../shared/text/say-quantity.ts'
import { focusField } from '../fields/focus-field.ts'
import { profileWord } from './profile-words.ts'

/** A line crossed, where it stands on the drawing. */
type UtilityDoor = {
  readonly index: number
  readonly name: string
  readonly xPx: number
  readonly yPx: number
}

export function utilityDoors(
  utilities: readonly DrawnUtility[],
  { frame, line }: Pick<LongSection, 'frame' | 'line'>,
  say: Say,
): readonly UtilityDoor[] {
  return utilities.flatMap(({ index, said, depths }): UtilityDoor[] => {
    if (said.stationM === null) return []
    const kind = planWord('utility', said.kind, say)
    const groundM = line.groundLevelM(said.stationM)
    const yPx = frame.y(groundM - (depths?.centreM ?? 0))
    return [
      {
        index,
        name: `${kind} ${saidQuantity(said.stationM, 'length', say)}`,
        xPx: frame.x(said.stationM),
        yPx,
      },
    ]
  })
}

export const openUtility = (index: number): void => focusField(`utilities.${index}`)

/** As wide as a thumb. */
const NEAR_PX = 24

/** The line a tap means: the one touched, the one whose flag was, else the nearest within a thumb of it. */
export function utilityTapped(
  target: Element,
  at: { readonly x: number; readonly y: number },
  doors: readonly UtilityDoor[],
): number | null {
  const touched = target.closest('[data-utility]')?.getAttribute('data-utility')
  if (touched) return Number(touched)
  const flag = target.closest('.flag')
  const flags = flag?.parentElement?.querySelectorAll('.flag') ?? []
  const door = flag === null ? undefined : doors[[...flags].indexOf(flag)]
  if (door !== undefined) return door.index
  const near = doors
    .map(({ index, xPx, yPx }) => ({ index, awayPx: Math.hypot(xPx - at.x, yPx - at.y) }))
    .filter(({ awayPx }) => awayPx <= NEAR_PX)
    .sort((a, b) => a.awayPx - b.awayPx)
  return near[0]?.index ?? null
}

/** By key and for those who listen; the hand touches the drawing itself, where lines stand close together. */
export function UtilityDoors({ doors, say }: { readonly doors: readonly UtilityDoor[]; readonly say: Say }) {
  return (
    <>
      {doors.map(({ index, name, xPx, yPx }) => (
        <button
          key={index}
          type="button"
          class="utility-door"
          style={{ left: `${xPx}px`, top: `${yPx}px` }}
          aria-label={profileWord('toRow', say, { what: name })}
          onClick={() => openUtility(index)}
        />
      ))}
    </>
  )
}
