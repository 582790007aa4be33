import { relation } from '../relation.ts'
import { dryAirDensityKgPerM3, REFERENCE_TEMPERATURE_K } from './dry-air.ts'
import { sitePressureAbsPa } from './standard-atmosphere.ts'

/** FM 5-434 Table 9-1, rotary column: altitude in m (2000 to 12 000 ft), part of the sea-level inlet volume kept. */
const ROTARY_EFFICIENCY = [
  { altitudeM: 609.6, kept: 1 },
  { altitudeM: 1524, kept: 1 },
  { altitudeM: 2133.6, kept: 1 },
  { altitudeM: 2438.4, kept: 0.999 },
  { altitudeM: 3657.6, kept: 0.986 },
] as const

/** Linear between the printed altitudes, 1 below them, on along the last line above: outside the table the range note says so. */
export function rotaryVolumetricEfficiency(altitudeM: number): number {
  let below: (typeof ROTARY_EFFICIENCY)[number] = ROTARY_EFFICIENCY[0]
  let efficiency = below.kept as number
  for (const above of ROTARY_EFFICIENCY.slice(1)) {
    if (altitudeM <= below.altitudeM) break
    const slope = (above.kept - below.kept) / (above.altitudeM - below.altitudeM)
    efficiency = below.kept + slope * (altitudeM - below.altitudeM)
    below = above
    if (altitudeM <= above.altitudeM) break
  }
  return efficiency
}

/**
 * What a rotary screw compressor delivers at a site.
 *
 * ṁ = η_v(z) · Q_FAD · p(z) / (R T)
 * ṁ kg/s, Q_FAD m³/s the rated free air delivery (inlet volume, ISO 1217), η_v the part of it kept at altitude z,
 * p(z) standard barometer Pa, T K of the air drawn in. The volume hardly falls with altitude; the mass does.
 * Error: dry air; 35 °C and 80 % humidity take another 4 %. The engine may limit sooner than the air end.
 */
export const compressorDelivery = relation({
  id: 'compressor-delivery',
  title: 'Compressor delivery at a site',
  formula: 'ṁ = η_v(z)·Q_FAD·p(z)/(R·T)',
  sources: ['Fm5434', 'UsStandardAtmosphere1976'],
  inputs: {
    freeAirDelivery: {
      kind: 'volumeFlow',
      words: 'rated free air delivery',
      range: { min: 0.005, max: 1, hardMin: 0, hardMax: 100 },
    },
    altitude: {
      kind: 'altitude',
      words: 'altitude of the site',
      range: { min: -450, max: 3657.6, hardMin: -1000, hardMax: 9000 },
      default: 0,
    },
    temperature: {
      kind: 'temperature',
      words: 'temperature of the air drawn in',
      range: { min: 233.15, max: 328.15, hardMin: 200, hardMax: 400 },
      default: REFERENCE_TEMPERATURE_K,
    },
  },
  outputs: {
    massFlow: { kind: 'massFlow', words: 'mass of air delivered' },
    freeAir: { kind: 'volumeFlow', words: 'free air delivered, inlet volume at the site' },
    volumetricEfficiency: { kind: 'ratio', words: 'part of the rated inlet volume kept' },
  },
  fn: ({ freeAirDeliveryM3PerS, altitudeM, temperatureK }) => {
    const volumetricEfficiency = rotaryVolumetricEfficiency(altitudeM)
    const freeAirM3PerS = volumetricEfficiency * freeAirDeliveryM3PerS
    const densityKgPerM3 = dryAirDensityKgPerM3(sitePressureAbsPa(altitudeM), temperatureK)
    return { massFlowKgPerS: freeAirM3PerS * densityKgPerM3, freeAirM3PerS, volumetricEfficiency }
  },
  checks: ['fm-5-434-altitude', 'usbr-altitude-table'],
  remarks: 'Single- and two-stage piston machines lose more: 84 and 97 % of the volume at 10 000 ft.',
})
