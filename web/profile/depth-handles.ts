import type { BoreLine } from '../../shared/core/plan/bore-line.ts'
import type { CrossingInput, DepthDatum } from '../../shared/core/plan/crossing-input.ts'
import { formatQuantity } from '../../shared/quantities/format-quantity.ts'
import type { UnitSystem } from '../../shared/quantities/shown-units.ts'
import type { Path } from '../state/document-path.ts'

/** A place of the bore whose depth the file holds, and which can be taken hold of. */
export type DepthHandle = {
  readonly path: Path
  readonly end: 'launch' | 'middle' | 'reception'
  /** Counts middle pits from the launch, from 1. */
  readonly number: number
  readonly stationM: number
  /** Depth as the file gives it, to its own datum. */
  readonly givenM: number
  readonly to: DepthDatum
  /** A bore may go so far up and down and still be planned. */
  readonly shallowestM: number
  readonly deepestM: number
}

/** A crossing file takes depths between these. */
const LEAST_GIVEN_M = 0.05
const MOST_GIVEN_M = 15

const INCH_M = 0.0254
/** What a crew can set by a tape, and a longer step for those who are far from it. */
const STEPS_M: Readonly<Record<UnitSystem, { readonly fine: number; readonly page: number }>> = {
  us: { fine: INCH_M / 2, page: INCH_M * 6 },
  si: { fine: 0.01, page: 0.1 },
}
/** A depth this near to a step is on it: the rest is rounding. */
const GRACE_STEPS = 1e-6

/** Launch, every pit between, reception. A middle depth that nobody gave is offered where the plan put it. */
export function depthHandles(input: CrossingInput, line: BoreLine, radiusM: number): readonly DepthHandle[] {
  const { launchM, receptionM, to } = input.depth
  // Depths are to one datum: the same way from it to the axis everywhere.
  const toAxisM = line.axisDepthM(0) - launchM
  const common = {
    to,
    shallowestM: Math.max(LEAST_GIVEN_M, radiusM - toAxisM),
    deepestM: MOST_GIVEN_M,
  }
  const middle = line.shots.slice(0, -1).flatMap((shot, index): DepthHandle[] =>
    input.shots[index] === undefined
      ? []
      : [
          {
            path: `shots.${index}.depth`,
            end: 'middle',
            number: index + 1,
            stationM: shot.toM,
            givenM: shot.depthToM - toAxisM,
            ...common,
          },
        ],
  )
  return [
    { path: 'depth.launch', end: 'launch', number: 0, stationM: 0, givenM: launchM, ...common },
    ...middle,
    {
      path: 'depth.reception',
      end: 'reception',
      number: 0,
      stationM: line.lengthM,
      givenM: receptionM,
      ...common,
    },
  ]
}

type Bounds = Pick<DepthHandle, 'shallowestM' | 'deepestM'>

/** The nearest depth a tape shows that the bore may have. */
export function snappedDepthM(
  wantedM: number,
  { shallowestM, deepestM }: Bounds,
  system: UnitSystem,
): number {
  const stepM = STEPS_M[system].fine
  const first = Math.floor(shallowestM / stepM + GRACE_STEPS) + 1
  const last = Math.floor(deepestM / stepM + GRACE_STEPS)
  return Math.min(Math.max(Math.round(wantedM / stepM), first), last) * stepM
}

/** Written as the user's units have it: '4 ft 2-1/2 in', '1.25 m'. */
export const depthText = (depthM: number, system: UnitSystem): string =>
  formatQuantity(depthM, 'depth', system)

/** Up is up: the arrow moves the handle as it points. Right and left go with down and up. */
const KEYS: Readonly<Record<string, readonly [step: 'fine' | 'page', direction: 1 | -1]>> = {
  ArrowDown: ['fine', 1],
  ArrowRight: ['fine', 1],
  ArrowUp: ['fine', -1],
  ArrowLeft: ['fine', -1],
  PageDown: ['page', 1],
  PageUp: ['page', -1],
}

/** Where a key takes a handle; null for keys that mean nothing to it. */
export function depthAfterKey(key: string, handle: DepthHandle, system: UnitSystem): number | null {
  if (key === 'Home') return snappedDepthM(handle.shallowestM, handle, system)
  if (key === 'End') return snappedDepthM(handle.deepestM, handle, system)
  const found = KEYS[key]
  if (found === undefined) return null
  const [step, direction] = found
  const { fine, page } = STEPS_M[system]
  if (step === 'page') return snappedDepthM(handle.givenM + direction * page, handle, system)
  // The next step of the tape that way, even from between two.
  const at = handle.givenM / fine
  const next = direction === 1 ? Math.floor(at + GRACE_STEPS) + 1 : Math.ceil(at - GRACE_STEPS) - 1
  return snappedDepthM(next * fine, handle, system)
}
