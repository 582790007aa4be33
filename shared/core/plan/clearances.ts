import { positionTolerance } from '../digsafe/position-tolerance.ts'
import { requiredClearance } from '../digsafe/required-clearance.ts'
import type { Trace } from '../trace.ts'
import type { Assumed } from './assumptions.ts'
import type { BoreLine, Shot } from './bore-line.ts'
import { contactOf } from './contact.ts'
import type { UtilityInput } from './crossing-input.ts'
import { type DriftFound, driftToLine, holesIn, plannedDriftM, type Side } from './drift-to-line.ts'
import { type Extent, extent, reachBeside, separationOf } from './line-extent.ts'
import { neighbour } from './neighbour.ts'
import type { ClearancePart } from './plan.ts'
import type { ShotPath } from './shot-path.ts'
import type { Stretch } from './stretches.ts'

/** Depth of a line found with a locator: 40 % of its depth and not under 250 mm (one method, PAS 128 B2, second hand). */
const DETECTED_SHARE = 0.4
const DETECTED_LEAST_M = 0.25

export type ClearanceFacts = {
  readonly line: BoreLine
  readonly shot: Shot
  readonly stretches: readonly Stretch[]
  readonly path: ShotPath
  readonly boreDiameterM: number
  readonly blowEnergyJ: number
  /** Error of setting out the bore; null: nobody said. */
  readonly layoutM: number | null
  readonly spread: { readonly seed: number; readonly draws: number }
}

const isExposed = (utility: UtilityInput): boolean => utility.evidence === 'exposed'

/** What the class of the evidence promises of a depth, either way; null where it promises none, or no class is given. */
function promisedM({ quality }: UtilityInput, centreM: number | null): number | null {
  if (quality === null || centreM === null) return null
  return positionTolerance.fn({ ...quality, depthM: centreM }).depthErrorM
}

/** How far off its told depth a line may be, either way, 19 times in 20. An opened one is never better than a tape. */
function errorOf(utility: UtilityInput, centreM: number | null, exposureErrorM: number): number {
  const byClassM = promisedM(utility, centreM)
  if (isExposed(utility)) return Math.max(exposureErrorM, byClassM ?? 0)
  const usualM = Math.max(DETECTED_LEAST_M, DETECTED_SHARE * (centreM ?? 0))
  return utility.evidence === 'detected' ? (byClassM ?? usualM) : usualM
}

/** What the clearance is made of, and their sum with its working. */
function required(
  facts: ClearanceFacts,
  utility: UtilityInput,
  driftM: number,
  errorM: number,
  assumed: Assumed,
  trace: Trace,
  index: number,
) {
  const about = `line ${index + 1}`
  if (utility.ownerClearanceM !== null) {
    const value = {
      value: utility.ownerClearanceM,
      unit: 'm',
      standing: 'your value',
      source: 'YourValue',
    } as const
    assumed.note({ name: `utilities.${index}.ownerClearance`, ...value })
  }
  const parts = {
    standardM: assumed.or(utility.ownerClearanceM, 'clearance.standard'),
    toolRadiusM: facts.boreDiameterM / 2,
    driftM,
    exposureM: errorM,
    layoutM: assumed.or(facts.layoutM, 'clearance.layoutError'),
  }
  const { requiredM } = trace.run(
    requiredClearance,
    {
      standardM: parts.standardM,
      toolRadiusM: parts.toolRadiusM,
      driftAllowanceM: parts.driftM,
      exposureErrorM: parts.exposureM,
      layoutErrorM: parts.layoutM,
    },
    about,
  )
  return { parts, requiredM }
}

/** Where along the shot the tool can last meet the line: one that slants across is met later by a tool that strays. */
function metAtM(facts: ClearanceFacts, utility: UtilityInput): number {
  const { shot, path, boreDiameterM } = facts
  // A line alongside is met at its far end, where drift is most.
  if (utility.stationM === null) return (reachBeside(utility, shot)?.toM ?? shot.toM) - shot.fromM
  const stationM = utility.stationM - shot.fromM
  const angle = utility.crossingAngleRad ?? Math.PI / 2
  const slant = Math.abs(Math.cos(angle) / Math.max(0.05, Math.sin(angle)))
  if (slant < 0.01) return stationM
  const strayM = plannedDriftM(path.wandering, stationM, [], 0) + boreDiameterM / 2
  return Math.min(shot.toM - shot.fromM, stationM + slant * strayM)
}

function sideOf(utility: UtilityInput, depths: Extent | null, axisM: number): Side {
  if (utility.stationM === null) return (utility.offsetM ?? 0) >= 0 ? 1 : -1
  if (depths === null) return 0
  // Positive is down: a line above lies on the negative side.
  return axisM >= depths.centreM ? -1 : 1
}

function driftOf(
  facts: ClearanceFacts,
  all: readonly UtilityInput[],
  utility: UtilityInput,
  towards: Side,
  about: string,
  assumed: Assumed,
  trace: Trace,
): DriftFound {
  const asked = {
    shot: facts.shot,
    path: facts.path,
    holesM: holesIn(
      facts.shot,
      all.filter((each) => each !== utility),
    ),
    stationM: metAtM(facts, utility),
    plane: utility.stationM === null ? ('rightM' as const) : ('lowM' as const),
    towards,
    tapeErrorM: assumed.use('clearance.exposureError'),
    about,
  }
  return driftToLine(asked, trace)
}

/** One listed line against one shot. Rules decide on `shortM`; the chance only advises. */
function clearanceOf(
  facts: ClearanceFacts,
  all: readonly UtilityInput[],
  index: number,
  assumed: Assumed,
  trace: Trace,
): ClearancePart | null {
  const utility = all[index]
  if (!utility) return null
  const stationM = utility.stationM ?? reachBeside(utility, facts.shot)?.toM ?? Number.NaN
  if (!(stationM >= facts.shot.fromM && stationM <= facts.shot.toM)) return null
  const about = `line ${index + 1}`
  const isParallel = utility.stationM === null
  const depths = isParallel ? null : extent(utility)
  const axisM = facts.line.axisDepthM(stationM)
  const drift = driftOf(facts, all, utility, sideOf(utility, depths, axisM), about, assumed, trace)
  const errorM = errorOf(utility, depths?.centreM ?? null, assumed.use('clearance.exposureError'))
  const { parts, requiredM } = required(facts, utility, drift.driftM, errorM, assumed, trace, index)
  const separationM = separationOf(utility, depths, axisM)
  const shortM = separationM === null ? null : Math.max(0, requiredM - separationM)
  const near =
    separationM === null || depths === null
      ? null
      : neighbour(facts, stationM, separationM, depths.centreM, trace, about)
  const contactProbability = contactOf(facts, utility, drift, errorM, trace, about)
  return {
    utility: index,
    kind: utility.kind,
    stationM: utility.stationM,
    axisDepthM: axisM,
    separationM,
    gapM: separationM === null ? null : separationM - facts.boreDiameterM / 2,
    requiredM,
    shortM,
    parts,
    driftFrom: drift.from,
    displacementM: near?.displacementM ?? null,
    ppvMPerS: near?.ppvMPerS ?? null,
    contactProbability,
    reason: reasonOf(utility, contactProbability),
    wayOut:
      shortM === null || shortM === 0 || depths === null
        ? null
        : wayOut(facts, all, stationM, axisM >= depths.centreM, shortM, parts.driftM, assumed),
  }
}

function reasonOf(utility: UtilityInput, contact: number | null): ClearancePart['reason'] {
  if (contact !== null) return null
  if (utility.stationM === null && !isExposed(utility)) return 'parallel'
  if (utility.depth === null) return utility.stationM === null ? 'parallel' : 'no-depth'
  if (utility.diameterM === null) return 'no-size'
  return 'depth-not-measured'
}

/**
 * Two ways out of a short clearance: away from the line by what is missing, or launch from the nearer end, where drift is
 * less. Deeper only where the bore passes under: over a line, deeper would go into it.
 */
function wayOut(
  facts: ClearanceFacts,
  all: readonly UtilityInput[],
  stationM: number,
  isUnder: boolean,
  shortM: number,
  driftM: number,
  assumed: Assumed,
) {
  const { shot, path } = facts
  const lengthM = shot.toM - shot.fromM
  const holesM = holesIn(shot, all).map((each) => lengthM - each)
  const tapeErrorM = assumed.use('clearance.exposureError')
  const savedM = driftM - plannedDriftM(path.wandering, shot.toM - stationM, holesM, tapeErrorM)
  return {
    direction: isUnder ? ('deeper' as const) : ('shallower' as const),
    moveM: shortM,
    otherEndShortM: savedM > 0 && path.observed.length === 0 ? Math.max(0, shortM - savedM) : null,
  }
}

/** Every listed line this shot passes. */
export function clearancesPart(
  facts: ClearanceFacts,
  utilities: readonly UtilityInput[] | null,
  assumed: Assumed,
  trace: Trace,
): ClearancePart[] {
  if (!utilities) return []
  return utilities.flatMap((_, index) => {
    const found = clearanceOf(facts, utilities, index, assumed, trace)
    return found ? [found] : []
  })
}
