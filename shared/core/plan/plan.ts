import type { Standing } from '../../sources/shape.ts'
import type { SourceKey } from '../../sources.ts'
import type { Working } from '../trace.ts'
import type { AirPart } from './air-part.ts'
import type { ObservationMethod, PullMethod, UtilityKind } from './crossing-input.ts'
import type { LearnedPart } from './learned-input.ts'
import type { PathPart, Proposal, ToExpose } from './path-parts.ts'

/** Good day, likely, bad day. */
export type Spread = { readonly p10: number; readonly p50: number; readonly p90: number }

export type Assumption = {
  /** Dotted path of what was assumed: 'tool.blowEnergy', 'ground.1.sptN'. */
  readonly name: string
  /** SI number, or a code. */
  readonly value: number | string
  /** SI unit of a number, as in KINDS; '' for codes. */
  readonly unit: string
  readonly standing: Standing
  readonly source: SourceKey
}

export type BorePart = {
  readonly lengthM: number
  readonly diameterM: number
  readonly bundleDiameterM: number
  readonly radialGapM: number
  /** Bore over bundle. */
  readonly ratio: number
  readonly fit: 'tight' | 'tow-tight' | 'normal' | 'wide' | 'very-wide'
  readonly annulusM3PerM: number
  readonly coverM: number
  readonly coverRatio: number
  readonly coverAtM: number
  /** Each reach of surface with the least cover under it and what the rule for it says. */
  readonly coverByReach: readonly {
    readonly kind: string
    readonly fromM: number
    readonly toM: number
    readonly coverM: number
    readonly coverRatio: number
    readonly verdict: 'ok' | 'check' | 'hold'
    readonly wantedM: number
  }[]
}

export type RunPart = {
  readonly advanceMPerS: Spread
  /** null below 5 % arriving: `timeReason` says so. */
  readonly hammerTimeS: Spread | null
  readonly boreTimeS: Spread | null
  readonly crossingTimeS: Spread | null
  readonly timeReason: 'too-few-arrive' | null
  readonly giveUpTimeS: number
  readonly arrivalProbability: number
  readonly refusalProbability: number
  readonly blowRateHz: number
  readonly blowEnergyJ: number
  readonly setPerBlowM: number
}

export type DeviationPart = {
  readonly lateralM: { readonly p50: number; readonly p90: number }
  readonly verticalM: { readonly p50: number; readonly p90: number }
  readonly hitProbability: number
  readonly windowM: number
  /** For a gravity line: chance to arrive within an inch of grade; null where grade does not matter. */
  readonly gradeProbability: number | null
}

export type ClearancePart = {
  readonly utility: number
  readonly kind: UtilityKind
  readonly stationM: number | null
  /** Bore axis below the ground there; at the far end for a line alongside. */
  readonly axisDepthM: number
  readonly separationM: number | null
  /** Separation less the radius of the bore. */
  readonly gapM: number | null
  readonly requiredM: number
  readonly shortM: number | null
  readonly parts: {
    readonly standardM: number
    readonly toolRadiusM: number
    readonly driftM: number
    readonly exposureM: number
    readonly layoutM: number
  }
  /** Since when drift has been building up: the launch face, a hole the tool is watched through, or a look at the tool. */
  readonly driftFrom: { readonly by: 'launch' | 'hole' | ObservationMethod; readonly stationM: number }
  readonly displacementM: number | null
  readonly ppvMPerS: number | null
  readonly contactProbability: number | null
  /** Why a value is missing. */
  readonly reason: 'depth-not-measured' | 'no-depth' | 'no-size' | 'parallel' | null
  /** Other depth or other end that would give the room, when short. */
  readonly wayOut: {
    /** Away from the line: deeper where the bore passes under it, shallower where it passes over. */
    readonly direction: 'deeper' | 'shallower'
    readonly moveM: number
    readonly otherEndShortM: number | null
  } | null
}

export type ShotPart = {
  readonly fromM: number
  readonly toM: number
  readonly depthFromM: number
  readonly depthToM: number
  readonly run: RunPart
  readonly deviation: DeviationPart
  readonly path: PathPart
  readonly clearances: readonly ClearancePart[]
  /** Stretches of ground along it with what each resists. */
  readonly stretches: readonly {
    readonly fromM: number
    readonly toM: number
    readonly uscs: string
    readonly stateCode: string
    readonly setPerBlowM: number
    readonly advanceMPerS: number
    readonly tipResistancePa: number
    readonly buriedToGripM: number | null
  }[]
}

export type GroundPart = {
  readonly heaveM: Spread
  readonly profile: readonly { readonly offsetM: number; readonly heaveM: number }[]
  readonly atM: number
  readonly breakout: boolean
}

export type PipePart = {
  readonly pipe: string
  readonly outsideDiameterM: number
  readonly wallM: number | null
  readonly count: number
  readonly pullLimitN: number | null
  readonly pullLimitReason: 'enter-your-own' | 'jointed' | 'no-wall' | null
  readonly pullEstimateN: number | null
  readonly coilNeededM: number
  readonly coilLengthM: number | null
}

export type PullPart = {
  readonly method: PullMethod | null
  readonly others: readonly { readonly method: PullMethod; readonly why: string }[]
}

export type WearPart = {
  readonly part: string
  readonly usedFraction: number
  readonly remainingS: Spread | null
  readonly dueDuringThisCrossingProbability: number
}

export type ServicePart = {
  readonly nextDueS: Spread | null
  readonly part: string
  readonly tasks: readonly string[]
}

export type PriceLine = {
  readonly code: string
  readonly quantity: number
  readonly unit: string
  readonly minorUnits: number
}
export type PricePart = {
  readonly currency: string
  readonly book: string
  readonly invented: boolean
  readonly p50MinorUnits: number
  readonly p80MinorUnits: number
  readonly quotedMinorUnits: number
  /** Money is shown to this step. */
  readonly stepMinorUnits: number
  readonly belowMinimumCallOut: boolean
  readonly minimumCallOutMinorUnits: number
  /** Lines of the likely case, before overhead and margin; they are lines too. */
  readonly lines: readonly PriceLine[]
}

export type PitPart = {
  readonly atM: number
  readonly serves: 'launch' | 'middle' | 'reception'
  readonly kind: string
  readonly floorDepthM: number
  readonly lengthM: number
  readonly widthM: number
  readonly needsLadder: boolean
  readonly needsProtection: boolean
  readonly shored: boolean
  readonly volumeM3: number
}

export type ChecklistItem = { readonly id: string; readonly when: string; readonly source: SourceKey }
export type Caution = {
  readonly id: string
  readonly severity: 'danger' | 'warning' | 'advice'
  readonly source: SourceKey
  readonly values: Readonly<Record<string, number | string>>
}

export type ReasonKind = 'rule' | 'missing' | 'advice'
export type ReleaseReason = {
  readonly code: string
  readonly kind: ReasonKind
  readonly values: Readonly<Record<string, number | string>>
}
/** A plan never says ready. */
export type ReleasePart = { readonly status: 'hold' | 'check'; readonly reasons: readonly ReleaseReason[] }

export type CrewPart = { readonly people: number; readonly watchers: number }

export type Plan = {
  readonly bore: BorePart
  readonly air: AirPart
  readonly run: RunPart
  readonly shots: readonly ShotPart[]
  readonly pits: readonly PitPart[]
  readonly crew: CrewPart
  readonly ground: GroundPart
  readonly deviation: DeviationPart
  readonly clearances: readonly ClearancePart[]
  readonly toExpose: readonly ToExpose[]
  readonly proposals: readonly Proposal[]
  /** Absent where no past bore speaks of this ground. */
  readonly learned?: readonly LearnedPart[]
  readonly pipes: readonly PipePart[]
  readonly pull: PullPart
  readonly wear: readonly WearPart[]
  readonly service: ServicePart
  /** Absent when no rates were given. */
  readonly price?: PricePart
  readonly checklist: readonly ChecklistItem[]
  readonly cautions: readonly Caution[]
  readonly release: ReleasePart
  readonly assumptions: readonly Assumption[]
  readonly workings: readonly Working[]
}
