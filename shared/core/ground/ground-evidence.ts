import type { Nodes } from '../../tables/ground-families.ts'
import {
  CLAY,
  COHESIVE_STATES,
  DENSITY_BY_N,
  FRICTIONAL,
  GRANULAR_STATES,
  N_BY_DCP,
  N_BY_DIGGING,
  N_BY_FRICTION_DEG,
} from '../../tables/ground-families.ts'
import type { StonesWord } from '../../tables/trade-soil-words.ts'
import type { UscsSoil } from '../../tables/uscs-soils.ts'
import type { Issue } from '../outcome.ts'
import { backwards, between } from './between.ts'
import type { SoilPhrase } from './soil-phrase.ts'

const DEGREE_RAD = Math.PI / 180
const PA_PER_KPA = 1e3

/** What is known of the ground of one stretch; null where nothing was said. */
export type GroundEvidence = {
  readonly word: string | null
  readonly uscs: string | null
  readonly sptN: number | null
  readonly consistency: string | null
  readonly undrainedStrengthPa: number | null
  readonly relativeDensity: number | null
  readonly frictionAngleRad: number | null
  readonly dcpMPerBlow: number | null
  /** The reading, an unconfined strength: twice the undrained strength. */
  readonly pocketPenetrometerPa: number | null
  /** The reading of a shear vane, an undrained strength. */
  readonly vanePa: number | null
  readonly dug: 'easy' | 'firm' | 'bar' | 'struggled' | null
  readonly stones: StonesWord | null
  readonly waterTableM: number | null
  readonly fill: boolean
  /** Frost in the ground at the depth of the bore. */
  readonly frozen: boolean
}

export const DECIDERS = [
  'undrained-strength',
  'vane',
  'relative-density',
  'friction-angle',
  'pocket-penetrometer',
  'dcp',
  'spt',
  'consistency',
  'digging',
  'word',
  'group',
] as const
export type DecidedBy = (typeof DECIDERS)[number]

/** How hard the ground is, on one scale: the blow count that would say the same. */
export type Hardness = {
  readonly n: number
  readonly decidedBy: DecidedBy
  /** The measured value itself, where one decided. */
  readonly undrainedStrengthPa?: number
  readonly relativeDensity?: number
  readonly frictionAngleRad?: number
  readonly moistureFactor?: number
}

/** Key, least and most of each number; outside is a slip of the pen. */
const RANGES = [
  ['sptN', 'sptN', 0, 200],
  ['undrainedStrengthPa', 'undrainedStrength', 500, 2e6],
  ['relativeDensity', 'relativeDensity', 0, 1],
  ['frictionAngleRad', 'frictionAngle', 12 * DEGREE_RAD, 56 * DEGREE_RAD],
  ['dcpMPerBlow', 'dcp', 0.0005, 0.3],
  ['pocketPenetrometerPa', 'pocketPenetrometer', 1000, 2e6],
  ['vanePa', 'vane', 500, 2e6],
  ['waterTableM', 'waterTable', 0, 100],
] as const

export function evidenceIssues(evidence: GroundEvidence): Issue[] {
  const issues: Issue[] = []
  for (const [key, path, least, most] of RANGES) {
    const value = evidence[key]
    if (value === null || (value >= least && value <= most)) continue
    issues.push({
      path,
      code: Number.isFinite(value) ? 'out-of-range' : 'not-finite',
      given: String(value),
      values: { least, most },
    })
  }
  return issues
}

export const scaleOf = (soil: UscsSoil): 'cohesive' | 'granular' =>
  soil.profile.family === 'clay'
    ? 'cohesive'
    : soil.profile.family === 'sand'
      ? 'granular'
      : soil.profile.scale

const COHESIVE_FOR: Readonly<Record<string, string>> = {
  'very-loose': 'very-soft',
  loose: 'soft',
  'medium-dense': 'medium-stiff',
  dense: 'very-stiff',
  'very-dense': 'hard',
}
const GRANULAR_FOR: Readonly<Record<string, string>> = {
  'very-soft': 'very-loose',
  soft: 'loose',
  'medium-stiff': 'medium-dense',
  stiff: 'dense',
  'very-stiff': 'very-dense',
  hard: 'very-dense',
}

/** Blow count in the middle of a named state; a word of the other scale is carried over. */
export function nOfState(code: string, scale: 'cohesive' | 'granular'): number | null {
  const states = scale === 'cohesive' ? COHESIVE_STATES : GRANULAR_STATES
  const other = scale === 'cohesive' ? COHESIVE_FOR[code] : GRANULAR_FOR[code]
  const found = states.find((each) => each.code === code) ?? states.find((each) => each.code === other)
  return found?.n ?? null
}

export type StateCode = (typeof COHESIVE_STATES)[number]['code'] | (typeof GRANULAR_STATES)[number]['code']

export function stateOfN(n: number, scale: 'cohesive' | 'granular'): StateCode {
  if (scale === 'cohesive') return COHESIVE_STATES.find((each) => n <= each.below)?.code ?? 'hard'
  return GRANULAR_STATES.find((each) => n <= each.below)?.code ?? 'very-dense'
}

const N_BY_STRENGTH_KPA = backwards(CLAY.strengthKpaByN)
const N_BY_DENSITY = backwards(DENSITY_BY_N)

const logNodes = (nodes: Nodes): Nodes => nodes.map(([x, y]) => [Math.log(x), Math.log(y)] as const)
const DCP_COHESIVE = logNodes(N_BY_DCP.cohesive)
const DCP_GRANULAR = logNodes(N_BY_DCP.granular)

function byStrength(strengthPa: number, decidedBy: DecidedBy): Hardness {
  const n = between(strengthPa / PA_PER_KPA, N_BY_STRENGTH_KPA)
  return { n, decidedBy, undrainedStrengthPa: strengthPa }
}

/** What was measured of strength or density and belongs to this kind of soil, the most direct first. */
function measured(evidence: GroundEvidence, soil: UscsSoil): readonly Hardness[] {
  const { undrainedStrengthPa, vanePa, pocketPenetrometerPa, relativeDensity, frictionAngleRad } = evidence
  const found: Hardness[] = []
  if (scaleOf(soil) === 'cohesive') {
    if (undrainedStrengthPa !== null) found.push(byStrength(undrainedStrengthPa, 'undrained-strength'))
    if (vanePa !== null) found.push(byStrength(vanePa, 'vane'))
  }
  const { profile } = soil
  if (profile.family !== 'clay') {
    if (frictionAngleRad !== null && profile.family === 'frictional') {
      const nodes = backwards(FRICTIONAL[profile.row].frictionDeg)
      found.push({
        n: between(frictionAngleRad / DEGREE_RAD, nodes),
        decidedBy: 'friction-angle',
        frictionAngleRad,
      })
    }
    if (relativeDensity !== null) {
      found.push({
        n: between(relativeDensity, N_BY_DENSITY),
        decidedBy: 'relative-density',
        relativeDensity,
      })
    }
    if (frictionAngleRad !== null && profile.family === 'sand') {
      found.push({
        n: between(frictionAngleRad / DEGREE_RAD, N_BY_FRICTION_DEG),
        decidedBy: 'friction-angle',
      })
    }
  }
  if (pocketPenetrometerPa !== null && scaleOf(soil) === 'cohesive') {
    found.push(byStrength(pocketPenetrometerPa / 2, 'pocket-penetrometer'))
  }
  return found
}

/** Drier is harder, wetter softer, where only the word is known; clean sand and gravel are left as they are. Our judgement. */
const MOISTURE_FACTOR = { dry: 1.5, moist: 1, wet: 0.7 } as const

/**
 * How hard, by each thing that was said of it, the most direct first: measured strength, vane, density or angle, pocket
 * penetrometer, cone, SPT, consistency, how it dug, and the word's own habit last. The caller has read the words; an unknown
 * consistency is its issue.
 */
export function hardnesses(
  evidence: GroundEvidence,
  soil: UscsSoil,
  phrase: SoilPhrase | null,
  stateCode: string | null,
): readonly [Hardness, ...Hardness[]] {
  const scale = scaleOf(soil)
  const found: Hardness[] = [...measured(evidence, soil)]
  if (evidence.dcpMPerBlow !== null) {
    const nodes = scale === 'cohesive' ? DCP_COHESIVE : DCP_GRANULAR
    found.push({ n: Math.exp(between(Math.log(evidence.dcpMPerBlow), nodes)), decidedBy: 'dcp' })
  }
  if (evidence.sptN !== null) found.push({ n: evidence.sptN, decidedBy: 'spt' })
  const named = stateCode === null ? null : nOfState(stateCode, scale)
  if (named !== null) found.push({ n: named, decidedBy: 'consistency' })
  if (evidence.dug !== null) found.push({ n: N_BY_DIGGING[evidence.dug][scale], decidedBy: 'digging' })
  const [first, ...others] = found
  if (first) return [first, ...others]
  const fromWord = phrase?.soil?.uscs === soil.symbol ? phrase.soil : null
  const moistureFactor = soil.profile.family === 'sand' ? 1 : MOISTURE_FACTOR[phrase?.moisture ?? 'moist']
  const n = (fromWord?.n ?? soil.defaultN) * moistureFactor
  return [{ n, decidedBy: fromWord ? 'word' : 'group', moistureFactor }]
}
