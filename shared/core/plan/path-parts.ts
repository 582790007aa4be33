import type { ObservationMethod, UtilityKind } from './crossing-input.ts'

/** Where a shot runs, as far as aim, ground and what was seen of it tell. */
export type PathPart = {
  /** From launch to reception of the shot; stations are the crossing's. */
  readonly points: readonly {
    readonly stationM: number
    /** Most likely place: right of the planned line and below it are positive. */
    readonly rightM: number
    readonly lowM: number
    /** Nine in ten lie within this of it. */
    readonly sidewaysP90M: number
    readonly verticalP90M: number
  }[]
  readonly observations: readonly {
    /** Its place in the file. */
    readonly observation: number
    readonly method: ObservationMethod
    readonly stationM: number
    readonly rightM: number | null
    readonly lowM: number | null
    readonly errorM: number
    /** An instrument beside a hole in which the tool was seen. */
    readonly isOverruled: boolean
  }[]
  /** More than 1 where readings disagree: every doubt is that much wider. */
  readonly wideningSideways: number
  readonly wideningVertical: number
}

/** A change that would give every line its room, or comes nearest to it. */
export type Proposal = {
  readonly code: 'other-end' | 'deeper' | 'shallower' | 'extra-pit'
  readonly shot: number
  /** Where the extra pit goes; null for the others. */
  readonly stationM: number | null
  /** How much deeper or shallower; null for the others. */
  readonly moveM: number | null
  /** The most any line of the shot is short of, now and then. */
  readonly shortM: number
  readonly shortAfterM: number
}

/** A line still to be opened up, the most pressing first. */
export type ToExpose = {
  readonly utility: number
  readonly kind: UtilityKind
  /** Where to dig; for a line alongside the far end of each shot, where drift is most. */
  readonly atM: readonly number[]
  /** null: nobody can say, for its depth is not known. */
  readonly shortM: number | null
  /** What measuring it in a hole takes off the room it needs. */
  readonly savesM: number
}
