import type { DecidedBy } from '../ground/ground-evidence.ts'
import type { Issue } from '../outcome.ts'
import type { Dimension } from './draw-scores.ts'
import type { ReleaseReason } from './plan.ts'

/** What is answered about the ground and the tools beside a plan: shapes and codes only. */

export const AGREEMENTS = ['used', 'agrees', 'harder', 'softer'] as const
/** Beside what the plan goes by: is the other evidence of one mind with it? */
export type Agreement = (typeof AGREEMENTS)[number]

/** What a raw blow count would become; the plan takes counts as they are given and says so. */
export type CountCorrection = {
  readonly code: 'overburden' | 'fine-sand'
  readonly fromN: number
  readonly toN: number
  /** CN of the depth; null for fine sand. */
  readonly factor: number | null
}

export type SaidOfGround = {
  /** Which entry of the file's `ground`. */
  readonly ground: number
  readonly uscs: string
  readonly stateCode: string
  readonly evidence: readonly { readonly by: DecidedBy; readonly n: number; readonly agreement: Agreement }[]
  /** Some evidence is not of one mind with what decided. */
  readonly isDisputed: boolean
  readonly corrections: readonly CountCorrection[]
}

/** The dimensions of a draw that hammering hangs on; the others touch only the clock beside it. */
export const HAMMER_DIMENSIONS = [
  'model',
  'strength',
  'rate',
  'shaft',
  'energy',
  'efficiency',
  'rigidity',
  'quake',
  'frictionAngle',
] as const satisfies readonly Dimension[]
export type HammerDimension = (typeof HAMMER_DIMENSIONS)[number]

export type Matter = {
  readonly dimension: HammerDimension
  /** Pace of a bad day, were this known and in its middle; 0 where one in ten still stalls. */
  readonly badDayMPerS: number
  /** How much of the way from likely to bad day goes: 0.5 halves it. */
  readonly takesAway: number
  readonly refusalProbability: number
}

export type WhatMatters = {
  readonly badDayMPerS: number
  /** The most telling first; what takes away less than 3 % is left out. */
  readonly matters: readonly Matter[]
  /** Hammering of a bad day: half of what a second, differently scrambled set of draws gives otherwise. */
  readonly numericalErrorS: number | null
  /** The error is large enough to change a figure as it is shown. */
  readonly isErrorSeen: boolean
}

export type RankedTool = {
  readonly name: string
  readonly diameterM: number
  /** `none`: nothing against it; `check`: look at the reasons; `hold`: a rule is against it; `no`: it cannot do this job. */
  readonly verdict: 'none' | 'check' | 'hold' | 'no'
  readonly reasons: readonly ReleaseReason[]
  /** Why it cannot be planned with at all. */
  readonly issues: readonly Issue[]
  readonly withdrawn: string | null
  readonly coverRatio: number | null
  readonly toolGaugePa: number | null
  readonly arrivalProbability: number | null
  readonly hitProbability: number | null
  readonly hammerS: number | null
  readonly p50MinorUnits: number | null
}

/** Pits in between that bring the bore to where it should come out. */
export type ShorterShots = {
  /** Stations of the pits between launch and reception, all of them. */
  readonly pitsAtM: readonly number[]
  readonly longestM: number
  readonly hitProbability: number
  readonly hitNow: number
  readonly arrivalProbability: number
  /** What the whole crossing then takes, likely; null where too few arrive. */
  readonly crossingS: number | null
}
