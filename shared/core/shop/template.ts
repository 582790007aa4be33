/** What of a tool is looked at, by its owner's own list: data, so that any design can be described. */

export const PART_GROUPS = ['outside', 'striking', 'seals', 'air-control', 'rear', 'threads', 'hose'] as const
export type PartGroup = (typeof PART_GROUPS)[number]

/** What wears a part: ground passed, sliding under blows, time under air, or dragging. */
export const WEAR_DRIVERS = ['ground', 'sliding', 'valve', 'blows', 'hose'] as const
export type WearDriver = (typeof WEAR_DRIVERS)[number]

/** Measured with a tool in the hand, and how: `up` grows with wear, `down` shrinks with it, `both` may drift either way. */
export const SIZED_MEASURES = {
  'stands-out': 'down',
  'end-gap': 'up',
  'side-play': 'up',
  diameter: 'down',
  length: 'both',
} as const
export type SizedMeasure = keyof typeof SIZED_MEASURES

/** Judged by eye and hand: what may be found, best first. */
export const GRADED_MEASURES = {
  seal: ['good', 'worn', 'spent'],
  crack: ['none', 'found'],
  thread: ['sound', 'dress', 'spoiled'],
  groove: ['square', 'rounded'],
  face: ['smooth', 'marked', 'broken'],
  hose: ['good', 'scuffed', 'damaged'],
} as const
export type GradedMeasure = keyof typeof GRADED_MEASURES

export const MEASURES = [
  'stands-out',
  'end-gap',
  'side-play',
  'diameter',
  'length',
  'seal',
  'crack',
  'thread',
  'groove',
  'face',
  'hose',
] as const satisfies readonly (SizedMeasure | GradedMeasure)[]
export type Measure = (typeof MEASURES)[number]

export const isSized = (measure: Measure): measure is SizedMeasure => Object.hasOwn(SIZED_MEASURES, measure)

/** One thing measured or judged on a part; the sizes come from the tool's own manual, entered by the owner. */
export type MeasureSpec = {
  readonly key: string
  readonly measure: Measure
  /** As new. */
  readonly nominalM: number | null
  /** The reading at which the part is done; for `length`, how far from nominal to either side. */
  readonly limitM: number | null
  /** How far off a reading may be, either way. */
  readonly errorM: number | null
}

export type PartSpec = {
  readonly key: string
  /** The owner's own name for it; null: the words that come with the key. */
  readonly name: string | null
  readonly group: PartGroup
  readonly driver: WearDriver
  /** As the manual prints it; nothing here is ever worked out. */
  readonly torque: string | null
  /** Days from ordering to having it; null: not said. */
  readonly leadDays: number | null
  readonly measures: readonly MeasureSpec[]
}

export type ToolTemplate = {
  readonly name: string
  readonly parts: readonly PartSpec[]
  /** Use between strip-downs; null: the house's. */
  readonly stripEveryS: number | null
}

/** What was found, as it was written down. */
export type Reading = {
  readonly part: string
  readonly key: string
  /** For a sized measure. */
  readonly valueM: number | null
  /** For a graded one. */
  readonly grade: string | null
}

export type Inspection = {
  readonly id: string
  readonly tool: string
  readonly on: string
  readonly by: string
  readonly readings: readonly Reading[]
  readonly tiltBefore: 'passed' | 'failed' | null
  readonly tiltAfter: 'passed' | 'failed' | null
  /** A strip-down, not only a look from outside. */
  readonly stripped: boolean
  /** Parts that went in new. */
  readonly replaced: readonly string[]
}

export type Verdict = 'keep' | 'watch' | 'replace'

/** The order of the work; timers and torques come from the owner's template only. */
export const INSPECTION_STEPS = [
  'outside',
  'tilt-before',
  'strip',
  'clean',
  'measure',
  'judge',
  'replace',
  'reassemble',
  'tilt-after',
] as const
