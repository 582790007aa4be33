import type { AirReference, Engine } from '../air/site-air.ts'

/** An oiler or separator: by ISO 6358, or by what it loses at a flow of free air. */
export type ComponentInput =
  | { readonly conductanceM3PerSPa: number; readonly criticalRatio: number }
  | { readonly lossPa: number; readonly atM3PerS: number }

export type HoseInput = {
  readonly boreM: number
  readonly lengthM: number
  readonly couplings: number | null
  /** Bore of its couplings where they are narrower than the hose. */
  readonly couplingBoreM: number | null
  readonly ratedGaugePa: number | null
  /** Like hoses side by side. */
  readonly parallel: number
  /** What a reading says it loses over what it is reckoned to. */
  readonly lossFactor: number | null
  /** The day of that reading. */
  readonly measuredOn: string | null
}

export const VALVE_KINDS = ['ball', 'gate', 'globe', 'angle'] as const
export type ValveInput = { readonly kind: (typeof VALVE_KINDS)[number]; readonly boreM: number }

export type AirBranchInput = {
  readonly name: string
  /** The branch it starts from; null: the end of the common hoses. */
  readonly from: string | null
  readonly hoses: readonly HoseInput[]
  readonly regulatorGaugePa: number | null
  /** null: the crossing's own tool, or one like it. */
  readonly tool: { readonly airDemandM3PerS: number; readonly ratedGaugePa: number | null } | null
}

export type AirInput = {
  readonly compressor: {
    readonly freeAirDeliveryM3PerS: number
    readonly gaugePa: number
    readonly unloadGaugePa: number | null
    readonly reference: AirReference
    readonly engine: Engine | null
  }
  readonly separator: ComponentInput | null
  readonly valves: readonly ValveInput[]
  readonly regulatorGaugePa: number | null
  /** The common line: all of it where there are no branches. */
  readonly hoses: readonly HoseInput[]
  readonly lubricator: boolean | null
  readonly oiler: ComponentInput | null
  readonly whip: { readonly boreM: number; readonly lengthM: number } | null
  readonly receiverM3: number | null
  readonly branches: readonly AirBranchInput[]
  readonly altitudeM: number | null
  readonly temperatureK: number | null
  readonly relativeHumidity: number | null
  readonly tools: number
  readonly exponent: number | null
}

const below = (air: AirInput, from: string | null): readonly AirBranchInput[] =>
  air.branches.filter((branch) => branch.from === from)

/** The branches from the common line to this crossing's own tool: the first end without a tool of its own. Empty in a chain. */
export function branchesToTool(air: AirInput, from: string | null = null): readonly AirBranchInput[] {
  for (const branch of below(air, from)) {
    const further = below(air, branch.name)
    if (further.length === 0 && branch.tool === null) return [branch]
    const rest = branchesToTool(air, branch.name)
    if (rest.length > 0) return [branch, ...rest]
  }
  return []
}

/** Every hose the air passes on its way to this crossing's tool. */
export const hosesToTool = (air: AirInput): readonly HoseInput[] => [
  ...air.hoses,
  ...branchesToTool(air).flatMap((branch) => branch.hoses),
]

/** Every hose there is. */
export const allHoses = (air: AirInput): readonly HoseInput[] => [
  ...air.hoses,
  ...air.branches.flatMap((branch) => branch.hoses),
]
