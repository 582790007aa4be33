import type { Nodes } from '../../tables/ground-families.ts'
import {
  CLAY,
  CLEAN,
  CLEAN_COMMON,
  DENSITY_BY_N,
  FRICTIONAL,
  FRICTIONAL_COMMON,
  GRANULAR_HEAVE,
  GRANULAR_MODEL_COV,
  GRANULAR_TIP_FACTOR,
  PEAT_HEAVE,
} from '../../tables/ground-families.ts'
import type { UscsSoil } from '../../tables/uscs-soils.ts'
import { between } from './between.ts'
import type { DecidedBy, Hardness } from './ground-evidence.ts'

const DEGREE_RAD = Math.PI / 180
const PA_PER_KPA = 1e3
const N_PER_KN = 1e3
const FRICTION_SD_RAD = 2 * DEGREE_RAD

/** Numbers of the penetration and heave models; null where the family has no such number. */
export type GroundParameters = {
  readonly family: 'clay' | 'frictional' | 'sand'
  readonly unitWeightNPerM3: number
  readonly undrainedStrengthPa: number | null
  /** G/su of clay. */
  readonly rigidityIndex: number | null
  /** Friction on the body over undrained strength, clay. */
  readonly shaftAdhesion: number | null
  /** Adhesion on the nose over undrained strength, clay. */
  readonly tipAdhesion: number | null
  readonly cohesionPa: number
  readonly frictionAngleRad: number
  readonly dilationAngleRad: number
  /** G over (c + p0 tan φ), soils with both. */
  readonly stiffnessRatio: number | null
  readonly relativeDensity: number | null
  readonly criticalAngleRad: number | null
  /** Friction on the body over pressure on the nose, before the 0.6 of the body; granular. */
  readonly shaftRatio: number | null
  /** Soil on steel. */
  readonly interfaceAngleRad: number | null
  readonly rateFactor: number
  /** Quake = diameter over this. */
  readonly quakeDivisor: number
  readonly tipFactor: number
  /** 1.3 in gravelly soil. */
  readonly tipMultiplier: number
  /** Clay: of su; cohesion and friction: of c; clean sand: 0, its density varies instead. */
  readonly strengthCov: number
  readonly frictionAngleSdRad: number
  readonly relativeDensitySd: number
  readonly modelCov: number
  readonly heaveVolumeFactor: { readonly low: number; readonly mid: number; readonly high: number }
}

/** The less was measured, the wider the strength scatters. Our judgement. */
const SPREAD: Readonly<Record<DecidedBy, number>> = {
  'undrained-strength': 1,
  vane: 1,
  'relative-density': 1,
  'friction-angle': 1,
  'pocket-penetrometer': 1,
  dcp: 1,
  spt: 1,
  consistency: 1.15,
  digging: 1.15,
  word: 1.5,
  group: 1.5,
}

const heaveAt = (n: number, nodes: { readonly low: Nodes; readonly mid: Nodes; readonly high: Nodes }) => ({
  low: between(n, nodes.low),
  mid: between(n, nodes.mid),
  high: between(n, nodes.high),
})

const CLAY_HEAVE = { low: CLAY.heaveLow, mid: CLAY.heaveMid, high: CLAY.heaveHigh }
const NOT_CLAY = {
  undrainedStrengthPa: null,
  rigidityIndex: null,
  shaftAdhesion: null,
  tipAdhesion: null,
} as const

function clay(offsetKn: number, isPeat: boolean, hard: Hardness): GroundParameters {
  const strengthKpa =
    hard.undrainedStrengthPa === undefined
      ? between(hard.n, CLAY.strengthKpaByN)
      : hard.undrainedStrengthPa / PA_PER_KPA
  return {
    family: 'clay',
    unitWeightNPerM3: (between(strengthKpa, CLAY.unitWeightKn) + offsetKn) * N_PER_KN,
    undrainedStrengthPa: strengthKpa * PA_PER_KPA,
    rigidityIndex: between(strengthKpa, CLAY.rigidityIndex),
    shaftAdhesion: between(strengthKpa, CLAY.shaftAdhesion),
    tipAdhesion: CLAY.tipAdhesion,
    cohesionPa: 0,
    frictionAngleRad: 0,
    dilationAngleRad: 0,
    stiffnessRatio: null,
    relativeDensity: null,
    criticalAngleRad: null,
    shaftRatio: null,
    interfaceAngleRad: null,
    rateFactor: between(strengthKpa, CLAY.rateFactor),
    quakeDivisor: between(strengthKpa, CLAY.quakeDivisor),
    tipFactor: CLAY.tipFactor,
    tipMultiplier: 1,
    strengthCov: CLAY.strengthCov * SPREAD[hard.decidedBy],
    frictionAngleSdRad: 0,
    relativeDensitySd: 0,
    modelCov: CLAY.modelCov,
    heaveVolumeFactor: isPeat ? PEAT_HEAVE : heaveAt(strengthKpa, CLAY_HEAVE),
  }
}

function frictional(row: keyof typeof FRICTIONAL, isSilt: boolean, hard: Hardness): GroundParameters {
  const values = FRICTIONAL[row]
  const spread = SPREAD[hard.decidedBy]
  return {
    ...NOT_CLAY,
    family: 'frictional',
    unitWeightNPerM3: between(hard.n, values.unitWeightKn) * N_PER_KN,
    cohesionPa: between(hard.n, values.cohesionKpa) * PA_PER_KPA,
    frictionAngleRad: hard.frictionAngleRad ?? between(hard.n, values.frictionDeg) * DEGREE_RAD,
    dilationAngleRad: between(hard.n, values.dilationDeg) * DEGREE_RAD,
    stiffnessRatio: values.stiffnessRatio,
    relativeDensity: hard.relativeDensity ?? null,
    criticalAngleRad: null,
    shaftRatio: FRICTIONAL_COMMON.shaftRatio,
    interfaceAngleRad: values.interfaceDeg * DEGREE_RAD,
    rateFactor: FRICTIONAL_COMMON.rateFactor,
    quakeDivisor: between(hard.n, values.quakeDivisor),
    tipFactor: GRANULAR_TIP_FACTOR,
    tipMultiplier: values.tipMultiplier,
    strengthCov: FRICTIONAL_COMMON.strengthCov * spread,
    frictionAngleSdRad: FRICTION_SD_RAD * spread,
    relativeDensitySd: 0,
    modelCov: GRANULAR_MODEL_COV,
    heaveVolumeFactor: isSilt
      ? heaveAt(between(hard.n, CLAY.strengthKpaByN), CLAY_HEAVE)
      : heaveAt(hard.n, GRANULAR_HEAVE),
  }
}

function clean(row: keyof typeof CLEAN, hard: Hardness): GroundParameters {
  const values = CLEAN[row]
  const density = hard.relativeDensity ?? between(hard.n, DENSITY_BY_N)
  const criticalAngleRad = between(density, values.criticalDeg) * DEGREE_RAD
  return {
    ...NOT_CLAY,
    family: 'sand',
    unitWeightNPerM3: between(density, values.unitWeightKn) * N_PER_KN,
    cohesionPa: 0,
    frictionAngleRad: criticalAngleRad,
    dilationAngleRad: 0,
    stiffnessRatio: null,
    relativeDensity: density,
    criticalAngleRad,
    shaftRatio: between(density, values.shaftRatio),
    interfaceAngleRad: values.interfaceDeg * DEGREE_RAD,
    rateFactor: CLEAN_COMMON.rateFactor,
    quakeDivisor: between(density, CLEAN_COMMON.quakeDivisor),
    tipFactor: GRANULAR_TIP_FACTOR,
    tipMultiplier: values.tipMultiplier,
    strengthCov: 0,
    frictionAngleSdRad: 0,
    relativeDensitySd: CLEAN_COMMON.densitySd * SPREAD[hard.decidedBy],
    modelCov: GRANULAR_MODEL_COV,
    heaveVolumeFactor: heaveAt(hard.n, GRANULAR_HEAVE),
  }
}

/** The numbers of a soil of this group at this hardness. */
export function groundParameters(soil: UscsSoil, hard: Hardness, gravelly: boolean): GroundParameters {
  const { profile } = soil
  if (profile.family === 'clay') return clay(profile.unitWeightOffsetKn, soil.symbol === 'PT', hard)
  if (profile.family === 'frictional') return frictional(profile.row, profile.scale === 'cohesive', hard)
  return clean(gravelly ? 'gravelly' : profile.row, hard)
}
