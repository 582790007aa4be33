import { requiredClearance } from '../digsafe/required-clearance.ts'
import { groundDisplacement } from '../ground/ground-displacement.ts'
import { vibrationPpv } from '../ground/vibration-ppv.ts'
import { contactChance } from '../line/contact-chance.ts'
import { deviation } from '../line/deviation.ts'
import { observedDeviation } from '../line/observed-deviation.ts'
import { normalQuantile } from '../statistics/normal.ts'
import type { Trace } from '../trace.ts'
import type { Assumed } from './assumptions.ts'
import type { BoreLine, Shot } from './bore-line.ts'
import type { UtilityInput } from './crossing-input.ts'
import type { Wandering } from './deviation.ts'
import { type Extent, extent, separationOf } from './line-extent.ts'
import type { ClearancePart } from './plan.ts'
import type { Stretch } from './stretches.ts'

/** Below this a chance is not shown and not for arithmetic. */
const LEAST_CHANCE = 0.001
/** A published tolerance is taken as a 95 % half-width. */
const HALF_WIDTH_TO_SIGMA = 1.96
/** Depth of a line found with a locator: 40 % of its depth and not under 250 mm (one method, PAS 128 B2, second hand). */
const DETECTED_SHARE = 0.4
const DETECTED_LEAST_M = 0.25

export type ClearanceFacts = {
  readonly line: BoreLine
  readonly shot: Shot
  readonly stretches: readonly Stretch[]
  readonly wandering: Wandering
  readonly boreDiameterM: number
  readonly blowEnergyJ: number
}

const isExposed = (utility: UtilityInput): boolean => utility.evidence === 'exposed'

/**
 * Doubt about the bore at a station, counted from the launch or from the last exposed line the tool is watched through
 * before it. The sighting carries the error of reading a tape in a hole.
 */
function sigmaAt(
  facts: ClearanceFacts,
  all: readonly UtilityInput[],
  stationM: number,
  sightingErrorM: number,
  trace: Trace,
  about: string,
): number {
  const localM = stationM - facts.shot.fromM
  const seen = all
    .filter(
      (u) => isExposed(u) && u.stationM !== null && u.stationM > facts.shot.fromM && u.stationM < stationM,
    )
    .map((u) => (u.stationM as number) - facts.shot.fromM)
  if (seen.length === 0) return trace.run(deviation, { stationM: localM, ...facts.wandering }, about).sigmaM
  const sightingM = Math.max(...seen)
  return trace.run(
    observedDeviation,
    { stationM: localM, sightingM, sightingErrorM, ...facts.wandering },
    about,
  ).sigmaM
}

function errorOf(utility: UtilityInput, centreM: number | null, exposureErrorM: number): number {
  if (isExposed(utility)) return exposureErrorM
  return Math.max(DETECTED_LEAST_M, DETECTED_SHARE * (centreM ?? 0))
}

/** Blow energy through ground of this state, by the factor of the published relation. */
function groundFactorAt(facts: ClearanceFacts, stationM: number): number {
  const state = facts.stretches.find((s) => stationM >= s.fromM && stationM <= s.toM)?.state
  if (!state) return 1.5
  if (['very-stiff', 'hard', 'dense', 'very-dense'].includes(state.stateCode)) return 3
  return ['very-soft', 'soft', 'very-loose', 'loose'].includes(state.stateCode) ? 1 : 1.5
}

const heaveFactorAt = (facts: ClearanceFacts, stationM: number): number =>
  facts.stretches.find((s) => stationM >= s.fromM && stationM <= s.toM)?.state.heaveVolumeFactor.mid ?? 1

/** What the ground does to the neighbour: how far it is pushed and shaken; separate checks beside the clearance. */
function neighbour(
  facts: ClearanceFacts,
  stationM: number,
  separationM: number,
  centreM: number,
  trace: Trace,
  about: string,
) {
  const axisDepthM = facts.line.axisDepthM(stationM)
  const moved = trace.run(
    groundDisplacement,
    {
      diameterM: facts.boreDiameterM,
      axisDepthM,
      offsetM: 0,
      depthM: centreM,
      poissonRatio: 0.5,
      volumeFactor: heaveFactorAt(facts, stationM),
    },
    about,
  )
  const shaken = trace.run(
    vibrationPpv,
    {
      energyJ: facts.blowEnergyJ,
      distanceM: Math.max(separationM, facts.boreDiameterM / 2),
      groundFactor: groundFactorAt(facts, stationM),
    },
    about,
  )
  return {
    displacementM: Math.abs(moved.verticalM),
    ppvMPerS: shaken.ppvMPerS,
  }
}

function contactOf(
  utility: UtilityInput,
  axesM: number,
  reachM: number,
  sigmaM: number,
  errorM: number,
  trace: Trace,
  about: string,
): number | null {
  if (!isExposed(utility) || utility.diameterM === null) return null
  const combinedM = Math.hypot(sigmaM, errorM / HALF_WIDTH_TO_SIGMA)
  const { probability } = trace.run(contactChance, { separationM: axesM, reachM, sigmaM: combinedM }, about)
  return Math.max(LEAST_CHANCE, probability)
}

/** What the clearance is made of, and their sum with its working. */
function required(
  facts: ClearanceFacts,
  utility: UtilityInput,
  sigmaM: number,
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
    driftM: sigmaM * normalQuantile(0.95),
    exposureM: errorM,
    layoutM: assumed.use('clearance.layoutError'),
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

/** One listed line against one shot. Rules decide on `shortM`; the chance only advises. */
function clearanceOf(
  facts: ClearanceFacts,
  all: readonly UtilityInput[],
  index: number,
  assumed: Assumed,
  trace: Trace,
): ClearancePart | null {
  const utility = all[index]
  const stationM = utility?.stationM ?? facts.shot.toM
  if (!utility || stationM < facts.shot.fromM || stationM > facts.shot.toM) return null
  const about = `line ${index + 1}`
  const isParallel = utility.stationM === null
  const depths = isParallel ? null : extent(utility)
  const radiusM = facts.boreDiameterM / 2
  const exposureErrorM = assumed.use('clearance.exposureError')
  const sigmaM = sigmaAt(facts, all, stationM, exposureErrorM / HALF_WIDTH_TO_SIGMA, trace, about)
  const errorM = errorOf(utility, depths?.centreM ?? null, exposureErrorM)
  const { parts, requiredM } = required(facts, utility, sigmaM, errorM, assumed, trace, index)
  const axisM = facts.line.axisDepthM(stationM)
  const separationM = separationOf(utility, depths, axisM)
  const shortM = separationM === null ? null : Math.max(0, requiredM - separationM)
  const near =
    separationM === null || depths === null
      ? null
      : neighbour(facts, stationM, separationM, depths.centreM, trace, about)
  const reachM = radiusM + (utility.diameterM ?? 0) / 2
  const contactProbability =
    depths === null ? null : contactOf(utility, axisM - depths.centreM, reachM, sigmaM, errorM, trace, about)
  return {
    utility: index,
    kind: utility.kind,
    stationM: utility.stationM,
    axisDepthM: axisM,
    separationM,
    gapM: separationM === null ? null : separationM - radiusM,
    requiredM,
    shortM,
    parts,
    displacementM: near?.displacementM ?? null,
    ppvMPerS: near?.ppvMPerS ?? null,
    contactProbability,
    reason: reasonOf(isParallel, depths, contactProbability, utility.diameterM === null),
    wayOut:
      shortM === null || shortM === 0 || depths === null
        ? null
        : wayOut(facts, stationM, axisM >= depths.centreM, shortM, parts.driftM, trace),
  }
}

function reasonOf(
  isParallel: boolean,
  depths: Extent | null,
  contact: number | null,
  isSizeUnknown: boolean,
): ClearancePart['reason'] {
  if (isParallel) return 'parallel'
  if (depths === null) return 'no-depth'
  if (isSizeUnknown) return 'no-size'
  return contact === null ? 'depth-not-measured' : null
}

/**
 * Two ways out of a short clearance: away from the line by what is missing, or launch from the nearer end, where drift is
 * less. Deeper only where the bore passes under: over a line, deeper would go into it.
 */
function wayOut(
  facts: ClearanceFacts,
  stationM: number,
  isUnder: boolean,
  shortM: number,
  driftM: number,
  trace: Trace,
) {
  const fromOtherM = facts.shot.toM - stationM
  const other = trace.run(
    deviation,
    { stationM: fromOtherM, ...facts.wandering },
    'from the other end',
  ).sigmaM
  const savedM = driftM - other * normalQuantile(0.95)
  return {
    direction: isUnder ? ('deeper' as const) : ('shallower' as const),
    moveM: shortM,
    otherEndShortM: savedM > 0 ? Math.max(0, shortM - savedM) : null,
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
