/** What was learned of the rate before this bore: a posterior brought along, or the bores themselves. */

export const GROUND_FAMILIES = ['clay', 'frictional', 'sand'] as const
/** How the ground is computed: clay; silt, clayey and silty ground; clean sand and gravel. */
export type GroundFamily = (typeof GROUND_FAMILIES)[number]

/** Observed over planned rate in a family of ground, worked out elsewhere. */
export type LearnedInput = {
  readonly family: GroundFamily
  readonly multiplier: number
  /** What is left of the spread of ln(multiplier). */
  readonly spread: number
  readonly bores: number
  /** Where and with what: area, tool, crew. */
  readonly scope: string | null
}

/** A bore already made in this kind of ground with this tool. */
export type PastBoreInput = {
  readonly family: GroundFamily
  /** Between two marks on the hose, and the clock between them; null where it stalled. */
  readonly lengthM: number | null
  readonly hammerTimeS: number | null
  /** At the tool; null: what its blow is stated for. */
  readonly toolGaugePa: number | null
  readonly hasStalled: boolean
  readonly isExcluded: boolean
  readonly note: string | null
}

/** What a plan learned of a family of ground, with how many bores it rests on. */
export type LearnedPart = {
  readonly family: GroundFamily
  readonly multiplier: number
  readonly multiplierP10: number
  readonly multiplierP90: number
  readonly spread: number
  readonly bores: number
  /** Of them stalled; null for a posterior brought along. */
  readonly stalled: number | null
  readonly excluded: number
  readonly scope: string | null
  readonly from: 'bores' | 'file'
}
