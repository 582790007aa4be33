import type { LimitedBy } from '../air/air-system.ts'

export type AirFlag = 'low' | 'weak' | 'good' | 'high'
export type ToolState = 'starved' | 'weak' | 'good' | 'high' | 'choked'

/** One tool of those that hammer together. */
export type AirTool = {
  /** The branch it stands on; empty in a plain line. */
  readonly branch: string
  /** The crossing's own. */
  readonly isOurs: boolean
  readonly gaugePa: number
  /** Free air it takes, inlet volume at the site; of several on one end, each. */
  readonly flowM3PerS: number
  readonly state: ToolState
}

/** Pressure at the tool with the hoses as bad and as good as they may be. Null: with the worst there is no pressure. */
export type AirBand = {
  readonly lowGaugePa: number | null
  readonly highGaugePa: number
  readonly why: 'wall-and-couplings' | 'reading'
}

export type AirSite = {
  readonly barometerPa: number
  readonly temperatureK: number
  readonly relativeHumidity: number
  /** Density over that at sea level and 20 °C: what is left of the mass in a volume drawn in. */
  readonly densityRatio: number
  /** Inlet volume a tool takes here over that at sea level, at the same gauge pressure. */
  readonly demandFactor: number
  readonly isEngineLimited: boolean
}

export type AirReceiver = {
  readonly volumeM3: number
  readonly timeS: number | null
  /** The time it makes up for a machine too small, or lasts once the machine stops. */
  readonly bridges: 'deficit' | 'stop'
}

export type AirWater = {
  /** What falls out by the time the air leaves the machine, what falls out in the hose, what reaches the tool as vapour. */
  readonly atMachineKgPerS: number
  readonly downLineKgPerS: number
  readonly vapourKgPerS: number
}

export type AirHazard = {
  /** The widest hose that is under pressure. */
  readonly boreM: number
  readonly lengthM: number
  readonly thrustN: number
  readonly energyJ: number
  readonly needsCutOff: boolean
  /** Highest pressure the line can see, and the lowest rating given on it. */
  readonly mostGaugePa: number
  readonly ratedGaugePa: number | null
}

export type AirPart = {
  readonly compressorGaugePa: number
  readonly toolGaugePa: number
  readonly hoseLossPa: number
  readonly demandM3PerS: number
  readonly capacityM3PerS: number
  readonly marginFraction: number
  readonly limitedBy: LimitedBy
  readonly unloadedGaugePa: number
  readonly flag: AirFlag
  readonly ladder: readonly {
    readonly element: string
    readonly inletGaugePa: number
    readonly outletGaugePa: number
  }[]
  /** By how much the compressor falls below what it is set to. */
  readonly sagPa?: number
  /** How high the pressure gets at the tool with nothing drawn, past the regulators. */
  readonly mostAtToolGaugePa?: number
  readonly band?: AirBand
  readonly tools?: readonly AirTool[]
  readonly site?: AirSite
  readonly receiver?: AirReceiver
  readonly fuel?: { readonly nowM3PerS: number; readonly fullM3PerS: number; readonly loadFraction: number }
  /** Null: nobody has said how damp the air is. */
  readonly water?: AirWater | null
  /** About how cold the exhaust gets. */
  readonly exhaustK?: number
  readonly oil?: { readonly lowM3PerS: number; readonly highM3PerS: number } | null
  readonly hazard?: AirHazard
}
