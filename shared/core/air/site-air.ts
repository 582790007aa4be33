import { compressorDelivery } from './compressor-delivery.ts'
import { isentropicPowerW } from './compressor-power.ts'
import { dryPartKgPerM3 } from './condensate-rate.ts'
import { REFERENCE_TEMPERATURE_K, SEA_LEVEL_PA } from './dry-air.ts'
import { type ENGINES, enginePower } from './engine-power.ts'
import { sitePressureAbsPa } from './standard-atmosphere.ts'

export type Engine = (typeof ENGINES)[number]

/** States a compressor's volume may be stated in: inlet volume (ISO 1217), or a standard state of its own. */
export const AIR_REFERENCES = ['inlet', 'iso', 'scfm', 'normal'] as const
export type AirReference = (typeof AIR_REFERENCES)[number]
const STATES: Readonly<Record<Exclude<AirReference, 'inlet'>, { readonly pa: number; readonly k: number }>> =
  {
    /** ISO 1217, and CAGI's standard cubic foot of today: 100 kPa, 20 °C. */
    iso: { pa: 100_000, k: 293.15 },
    /** 14.696 psia, 60 °F. */
    scfm: { pa: SEA_LEVEL_PA, k: 288.706 },
    /** 101.325 kPa, 0 °C. */
    normal: { pa: SEA_LEVEL_PA, k: 273.15 },
  }

/** Inlet volume of a machine whose delivery is stated in standard volumes, at the state it is rated in (100 kPa, 20 °C). */
export function inletVolumeM3PerS(statedM3PerS: number, reference: AirReference): number {
  if (reference === 'inlet') return statedM3PerS
  const { pa, k } = STATES[reference]
  return (statedM3PerS * (pa / k)) / (STATES.iso.pa / STATES.iso.k)
}

export type SiteAirInput = {
  /** Rated inlet volume. */
  readonly freeAirDeliveryM3PerS: number
  readonly compressorGaugePa: number
  readonly altitudeM: number
  readonly temperatureK: number | null
  readonly relativeHumidity: number
  /** null: not said, and not allowed for. */
  readonly engine: Engine | null
}

export type SiteAir = {
  readonly siteAbsPa: number
  readonly temperatureK: number
  /** Dry air in a cubic metre drawn in: turns volumes at the inlet into the mass all else is reckoned in. */
  readonly dryKgPerM3: number
  /** Inlet volume the machine draws at its set pressure here. */
  readonly capacityM3PerS: number
  readonly capacityKgPerS: number
  /** The engine gives out before the air end does. */
  readonly isEngineLimited: boolean
}

/**
 * What a compressor gives at a site. The inlet volume of a rotary hardly changes with altitude; its mass falls with the
 * density, and so does the power it takes, while an engine without a turbo loses power faster: the lesser of the two counts.
 * An engine is taken to be just large enough at sea level.
 */
export function siteAir(input: SiteAirInput): SiteAir {
  const { altitudeM, freeAirDeliveryM3PerS, relativeHumidity, engine, compressorGaugePa } = input
  const temperatureK = input.temperatureK ?? REFERENCE_TEMPERATURE_K
  const siteAbsPa = sitePressureAbsPa(altitudeM)
  const airEnd = compressorDelivery.fn({ freeAirDeliveryM3PerS, altitudeM, temperatureK })
  const needs =
    isentropicPowerW(siteAbsPa, siteAbsPa + compressorGaugePa, airEnd.freeAirM3PerS) /
    isentropicPowerW(SEA_LEVEL_PA, SEA_LEVEL_PA + compressorGaugePa, freeAirDeliveryM3PerS)
  const has = engine === null ? 1 : enginePower.fn({ ratedPowerW: 1, altitudeM, engine }).powerW
  const share = has < 1 ? Math.min(1, has / needs) : 1
  const dryKgPerM3 = dryPartKgPerM3(siteAbsPa, temperatureK, relativeHumidity)
  const capacityM3PerS = airEnd.freeAirM3PerS * share
  return {
    siteAbsPa,
    temperatureK,
    dryKgPerM3,
    capacityM3PerS,
    capacityKgPerS: capacityM3PerS * dryKgPerM3,
    isEngineLimited: share < 1,
  }
}
