import { relation } from '../relation.ts'
import { isentropicPowerW } from './compressor-power.ts'
import { SEA_LEVEL_PA } from './dry-air.ts'

/** 0.36 lb per brake horsepower and hour at 7 lb to the gallon: m³ per J. */
const DIESEL_M3_PER_J = (0.36 / 7) * (0.003_785_411_784 / (3600 * 745.699_871_582_270_2))
/** Part of a package's efficiency that its electric motor costs: a diesel drives the shaft. Our judgement. */
const MOTOR_EFFICIENCY = 0.92
/** The table's least efficient package allowed: 15 % of what is missing below the curve. */
const BELOW_CURVE = 0.15
/** The curve is written for litres a second. */
const LITRES_PER_M3 = 1000
const CURVE_LEAST = 0.3

/** Isentropic over shaft power of an oil-flooded rotary, by its delivery. */
function shaftEfficiency(freeAirM3PerS: number): number {
  const logFlow = Math.log(LITRES_PER_M3 * freeAirM3PerS)
  const curve = Math.min(1, Math.max(CURVE_LEAST, -0.00928 * logFlow ** 2 + 0.13911 * logFlow + 0.2711))
  return (curve - (1 - curve) * BELOW_CURVE) / MOTOR_EFFICIENCY
}

/**
 * Diesel a portable compressor burns.
 *
 * q = P c [ i + (1 − i) x ],  P = P_isentropic/η,  c = 0.36 lb/(bhp·h) at 7 lb/gal = 0.261 L/kWh
 * η = [η_c − 0.15 (1 − η_c)]/0.92,  η_c = −0.00928 ln²V + 0.13911 ln V + 0.2711, V L/s;  x load, i share burnt idling
 * Error: 10–20 % too low for fan, cooler and exhaust treatment; the share idling 0.35–0.5 is from memory.
 */
export const compressorFuel = relation({
  id: 'compressor-fuel',
  title: 'Diesel a portable compressor burns',
  formula: 'q = P_isentropic/η·c·[i + (1 − i)·x]',
  sources: ['Cfr431', 'UsaceEquipment', 'OurJudgement'],
  inputs: {
    freeAir: {
      kind: 'volumeFlow',
      words: 'free air delivery at full load',
      range: { min: 0.02, max: 0.5, hardMin: 1e-4, hardMax: 100 },
    },
    pressure: {
      kind: 'gaugePressure',
      words: 'gauge pressure held',
      range: { min: 300_000, max: 1.4e6, hardMin: 0, hardMax: 1e7 },
    },
    load: {
      kind: 'ratio',
      words: 'part of full flow drawn',
      range: { min: 0, max: 1, hardMin: 0, hardMax: 1 },
      default: 1,
    },
    idleShare: {
      kind: 'ratio',
      words: 'part of full-load fuel burnt with no air drawn',
      range: { min: 0.35, max: 0.5, hardMin: 0, hardMax: 1 },
      default: 0.4,
    },
    atmosphere: {
      kind: 'absolutePressure',
      words: 'barometer at the site',
      range: { min: 50_000, max: 107_000, hardMin: 30_000, hardMax: 115_000 },
      default: SEA_LEVEL_PA,
    },
  },
  outputs: { fuel: { kind: 'liquidFlow', words: 'diesel burnt' } },
  fn: ({ freeAirM3PerS, pressureGaugePa, load, idleShare, atmospherePa }) => {
    const idealW = isentropicPowerW(atmospherePa, atmospherePa + pressureGaugePa, freeAirM3PerS)
    const fullM3PerS = (idealW / shaftEfficiency(freeAirM3PerS)) * DIESEL_M3_PER_J
    return { fuelM3PerS: fullM3PerS * (idleShare + (1 - idleShare) * load) }
  },
  checks: ['engine-and-power'],
})
