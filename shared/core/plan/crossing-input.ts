import type { QualityLevel, QualityScheme } from '../digsafe/quality-levels.ts'
import type { GeoPosition } from '../kinds.ts'
import type { AirInput } from './air-input.ts'
import type {
  EmergencyInput,
  ExposedInput,
  FoundOnGround,
  OverheadInput,
  PrivateLinesInput,
} from './asked-input.ts'
import type { LearnedInput, PastBoreInput } from './learned-input.ts'

/** One crossing as the engine takes it: SI, defaults not filled in, null where nothing was said. */
export type CrossingInput = {
  readonly name: string
  readonly line:
    | { readonly lengthM: number }
    | { readonly launch: GeoPosition; readonly reception: GeoPosition }
  readonly depth: {
    readonly launchM: number
    readonly receptionM: number
    readonly to: DepthDatum
  }
  /** A gravity line: fall per length it must be laid to; null when grade does not matter. */
  readonly grade: number | null
  readonly shots: readonly ShotInput[]
  readonly ends: { readonly launch: EndInput; readonly reception: EndInput }
  readonly over: readonly OverInput[]
  readonly surface: readonly { readonly stationM: number; readonly levelM: number }[]
  readonly ground: readonly GroundInput[]
  readonly pipes: readonly PipeInput[]
  readonly pull: PullMethod | null
  readonly tool: ToolInput
  readonly air: AirInput
  /** null: nobody has been asked. An empty list counts only with `utilitiesAsked`. */
  readonly utilities: readonly UtilityInput[] | null
  readonly utilitiesAsked: { readonly by: string; readonly on: string } | null
  readonly locate: LocateInput | null
  /** Where the tool was found to be, once it runs. */
  readonly observations: readonly ObservationInput[]
  readonly aim: AimInput
  /** null: nobody was asked about private lines. */
  readonly privateLines: PrivateLinesInput | null
  readonly overhead: readonly OverheadInput[]
  readonly emergency: EmergencyInput | null
  readonly learned: readonly LearnedInput[]
  readonly pastBores: readonly PastBoreInput[]
  readonly rates: RateBook | null
  readonly spread: { readonly seed: number; readonly draws: number }
}

export const DEPTH_DATUMS = ['centre', 'top', 'bottom', 'floor'] as const
export type DepthDatum = (typeof DEPTH_DATUMS)[number]

export type ShotInput = { readonly toM: number; readonly depthM: number | null }

export const END_KINDS = ['pit', 'keyhole', 'bank', 'handhole', 'wall', 'inside'] as const
export type EndKind = (typeof END_KINDS)[number]
export type EndInput = {
  readonly kind: EndKind
  readonly thicknessM: number | null
  readonly footingDepthM: number | null
  /** Somebody said so; otherwise a pit is assumed, and listed. */
  readonly isSaid: boolean
}

export const OVER_KINDS = ['lawn', 'walk', 'pavers', 'drive', 'slab', 'road', 'ditch', 'other'] as const
export type OverKind = (typeof OVER_KINDS)[number]
export type OverInput = { readonly fromM: number; readonly toM: number; readonly kind: OverKind }

export const STONES = ['none', 'few', 'many', 'cobbles'] as const
export const DUG = ['easy', 'firm', 'bar', 'struggled'] as const
export type GroundInput = {
  /** null: from the launch face, or to the reception face. */
  readonly fromM: number | null
  readonly toM: number | null
  readonly word: string | null
  readonly uscs: string | null
  readonly sptN: number | null
  readonly consistency: string | null
  readonly undrainedStrengthPa: number | null
  readonly relativeDensity: number | null
  readonly frictionAngleRad: number | null
  readonly dcpMPerBlow: number | null
  readonly pocketPenetrometerPa: number | null
  readonly vanePa: number | null
  readonly dug: (typeof DUG)[number] | null
  readonly stones: (typeof STONES)[number] | null
  readonly waterTableM: number | null
  readonly fill: boolean
  readonly frozen: boolean
}

export type PipeInput = {
  readonly system: string | null
  readonly size: string | null
  /** Dimension ratio, schedule or wall letter, as written: '9', 'SCH40', 'K'. */
  readonly wall: string | null
  readonly outsideDiameterM: number | null
  /** Largest thing that goes through with it: bell, coupling, grip. */
  readonly largestDiameterM: number | null
  readonly count: number
  readonly material: string | null
  readonly coilLengthM: number | null
}

export const PULL_METHODS = ['push', 'cable', 'tow', 'reverse', 'expander'] as const
export type PullMethod = (typeof PULL_METHODS)[number]

export const HEADS = ['taper', 'stepped', 'chisel'] as const
export type ToolInput = {
  readonly diameterM: number
  readonly lengthM: number | null
  readonly massKg: number | null
  readonly blowEnergyJ: number | null
  readonly blowRateHz: number | null
  readonly airDemandM3PerS: number | null
  readonly ratedGaugePa: number | null
  readonly head: (typeof HEADS)[number] | null
  readonly reversible: boolean | null
}

export const OBSERVATION_METHODS = ['first-metre', 'seen', 'sonde', 'hose-wire', 'ear'] as const
export type ObservationMethod = (typeof OBSERVATION_METHODS)[number]
/** A look at the tool on its way. At least one plane is given. */
export type ObservationInput = {
  readonly stationM: number
  readonly method: ObservationMethod
  /** Right of the planned line, looking from launch to reception; left is negative. */
  readonly rightM: number | null
  /** Below the planned line; above is negative. */
  readonly lowM: number | null
  /** Reading error, either way, 19 times in 20; null: the usual one of the method. */
  readonly errorM: number | null
  readonly by: string | null
}

export const AIM_METHODS = ['frame', 'eye'] as const
export type AimMethod = (typeof AIM_METHODS)[number]
/** How the tool is aimed: out over the length of its body, one standard deviation. */
export type AimInput = {
  readonly method: AimMethod | null
  readonly errorM: number | null
  /** How far the bore may be set out beside where it is drawn; counted in every clearance. */
  readonly layoutM: number | null
}

export const UTILITY_KINDS = [
  'gas',
  'electric',
  'telecom',
  'water',
  'sewer',
  'storm',
  'reclaimed',
  'irrigation',
  'steam',
  'oil',
  'propane',
  'lighting',
  'septic',
  'other',
] as const
export type UtilityKind = (typeof UTILITY_KINDS)[number]
export const EVIDENCE = ['records', 'marked', 'detected', 'exposed', 'proved'] as const
export type Evidence = (typeof EVIDENCE)[number]
export const UTILITY_DEPTH_DATUMS = ['top', 'centre', 'bottom'] as const

export type UtilityInput = {
  readonly kind: UtilityKind
  /** Where it crosses; null for a parallel line, which gives `offsetM`. */
  readonly stationM: number | null
  readonly offsetM: number | null
  /** The reach a line alongside runs; null: the whole bore. */
  readonly fromM: number | null
  readonly toM: number | null
  readonly depth: { readonly valueM: number; readonly to: (typeof UTILITY_DEPTH_DATUMS)[number] } | null
  readonly diameterM: number | null
  readonly crossingAngleRad: number | null
  readonly evidence: Evidence
  readonly private: boolean
  readonly owner: string | null
  readonly ownerClearanceM: number | null
  /** Who said so, when an owner's clearance is given. */
  readonly ownerClearanceBy: string | null
  readonly material: string | null
  readonly quality: { readonly scheme: QualityScheme; readonly level: QualityLevel } | null
  readonly exposed: ExposedInput | null
}

export type LocateInput = {
  readonly jurisdiction: string | null
  /** Who read the rules of a place that has no row of ours, and when. */
  readonly rulesRead: { readonly by: string; readonly on: string } | null
  /** Civil date-time as written: no zone is guessed. */
  readonly called: string | null
  readonly ticket: {
    readonly starts: string
    readonly expires: string
    readonly number: string | null
    /** The place it is for, as printed: a ticket belongs to a site. */
    readonly site: string | null
    readonly renewBy: string | null
  } | null
  /** A meeting with the operators on site was asked for. */
  readonly meeting: boolean
  readonly responses: readonly OwnerResponse[]
}

export type OwnerResponse = {
  readonly owner: string
  /** '': none yet. */
  readonly answer: string
  readonly on: string | null
  readonly found: FoundOnGround | null
  readonly photo: string | null
  readonly phone: string | null
}

/** Money in integer minor units per unit named; hours are 3600 s. Invented books are marked so. */
export type RateBook = {
  readonly name: string
  readonly invented: boolean
  readonly currency: string
  readonly quoteStepMinorUnits: number
  readonly crewPerHourMinorUnits: number
  readonly crewSize: number
  readonly watcherPerHourMinorUnits: number
  readonly mobilisationMinorUnits: number
  readonly pitMinorUnits: number
  readonly shoringPerPitMinorUnits: number
  readonly potholeMinorUnits: number
  readonly permitMinorUnits: number
  readonly fuelPerLitreMinorUnits: number
  readonly pipePerMetreMinorUnits: number
  readonly wearPerMetreMinorUnits: number
  readonly restorationMinorUnits: Readonly<Record<OverKind, number>>
  readonly wallEntryMinorUnits: number
  readonly openCutPerMetreMinorUnits: number
  readonly minimumCallOutMinorUnits: number
  readonly overheadFraction: number
  readonly marginFraction: number
}
