/** What is asked about lines nobody paints: private ones by name, and those overhead. */

export const PRIVATE_KINDS = [
  'lateral',
  'septic',
  'propane',
  'lighting',
  'irrigation',
  'pool',
  'well',
  'outbuilding-power',
  'dog-fence',
  'drains',
] as const
export type PrivateKind = (typeof PRIVATE_KINDS)[number]

/** `away`: there is one, it was located, and it comes nowhere near the bore. */
export const PRIVATE_ANSWERS = ['no', 'away', 'yes', 'unknown'] as const
export type PrivateAnswer = (typeof PRIVATE_ANSWERS)[number]

export type PrivateLinesInput = {
  /** Who answered, and when; null: nobody put a name to it. */
  readonly by: string | null
  readonly on: string | null
  /** null: not asked, which is no better than not known. */
  readonly answers: Readonly<Record<PrivateKind, PrivateAnswer | null>>
}

/** A line overhead that plant works under or beside. */
export type OverheadInput = {
  readonly stationM: number | null
  readonly heightM: number | null
  /** Voltage in kilovolts, as the owner gives it; null: not known. */
  readonly kilovolts: number | null
  readonly owner: string | null
}

/** When a line was opened and measured, by whom, and where the photo is. */
export type ExposedInput = {
  readonly on: string | null
  readonly by: string | null
  readonly photo: string | null
}

/** What of an owner's answer was found on the ground. */
export const FOUND_ON_GROUND = ['fits', 'nothing', 'differs'] as const
export type FoundOnGround = (typeof FOUND_ON_GROUND)[number]

/** What the emergency card says of this place. */
export type EmergencyInput = {
  readonly address: string | null
  /** Where the crew meets, upwind. */
  readonly meeting: string | null
  /** Who calls for help. */
  readonly caller: string | null
  /** What the gas owner wants done with engines, which published advice does not agree on. */
  readonly engines: string | null
  readonly numbers: readonly { readonly who: string; readonly phone: string }[]
}
