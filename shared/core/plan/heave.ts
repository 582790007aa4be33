import { surfaceHeave } from '../ground/surface-heave.ts'
import type { Trace } from '../trace.ts'
import type { BoreLine } from './bore-line.ts'
import type { GroundPart } from './plan.ts'
import type { Stretch } from './stretches.ts'

/** P10 is half the formula, P90 nearly twice it (a Gaussian trough of 0.70 h: 0.45 in place of 0.25). Our judgement. */
const P10_SHARE = 0.5
const P90_SHARE = 0.45 / 0.25
/** Below this many diameters of cover the roof lifts as a block instead of bulging. */
const BREAKOUT_D = 3
const PROFILE_POINTS = 13

/** Heave where it is greatest: the shallowest axis of any stretch, with that ground's volume factor. */
export function heavePart(
  line: BoreLine,
  stretches: readonly Stretch[],
  boreDiameterM: number,
  trace: Trace,
): GroundPart {
  let atM = 0
  let worst = -1
  let depthM = line.axisDepthM(0)
  let volumeFactor = 1
  for (const stationM of line.breaksM) {
    const state = stretches.find((s) => stationM >= s.fromM && stationM <= s.toM)?.state
    const factor = Math.max(0, state?.heaveVolumeFactor.mid ?? 1)
    const axisDepthM = line.axisDepthM(stationM)
    if (factor / axisDepthM > worst) {
      worst = factor / axisDepthM
      atM = stationM
      depthM = axisDepthM
      volumeFactor = factor
    }
  }
  const given = { diameterM: boreDiameterM, axisDepthM: depthM, poissonRatio: 0.5, volumeFactor }
  const peak = trace.run(surfaceHeave, { ...given, offsetM: 0 }, 'over the bore').heaveM
  const profile = Array.from({ length: PROFILE_POINTS }, (_, index) => {
    const offsetM = (index / (PROFILE_POINTS - 1)) * 3 * depthM
    return { offsetM, heaveM: surfaceHeave.fn({ ...given, offsetM }).heaveM }
  })
  return {
    heaveM: { p10: peak * P10_SHARE, p50: peak, p90: peak * P90_SHARE },
    profile,
    atM,
    breakout: (depthM - boreDiameterM / 2) / boreDiameterM < BREAKOUT_D,
  }
}
