import { relation } from '../relation.ts'
import { REFERENCE_TEMPERATURE_K, SEA_LEVEL_PA } from './dry-air.ts'

/** 22.7 standard cubic feet per minute, psi and °R, in m³/s, Pa and K: 22.7 · 0.3048³/60 / 6894.757 · √(1/1.8). */
const CV_CONSTANT = 1.158_149e-6
/** p2/p1 below which a valve chokes, as the text has it. */
const CHOKES_BELOW = 0.53

/**
 * Free air through a valve known by its Cv.
 *
 * Q = 22.7 Cv √( (p1 − p2) p2 / T1 ),  p2 ≥ 0.53 p1; choked below.   Q scfm, p psia, T °R (the constant is turned to SI)
 * Error: of the two-figure constant, 0.2 %; Cv is found with water.
 */
export const valveFlow = relation({
  id: 'valve-flow',
  title: 'Air through a valve of known Cv',
  formula: 'Q = 22.7·Cv·√((p1 − p2)·p2/T1), p2 ≥ 0.53·p1',
  sources: ['EspositoFluidPower'],
  inputs: {
    flowCoefficient: {
      kind: 'ratio',
      words: 'flow coefficient Cv',
      range: { min: 0.05, max: 100, hardMin: 0, hardMax: 10_000 },
    },
    pressure: {
      kind: 'gaugePressure',
      words: 'gauge pressure before the valve',
      range: { min: 0, max: 1.4e6, hardMin: 0, hardMax: 1e7 },
    },
    outlet: {
      kind: 'gaugePressure',
      words: 'gauge pressure behind it',
      range: { min: 0, max: 1.4e6, hardMin: 0, hardMax: 1e7 },
    },
    temperature: {
      kind: 'temperature',
      words: 'air temperature',
      range: { min: 233.15, max: 343.15, hardMin: 200, hardMax: 400 },
      default: REFERENCE_TEMPERATURE_K,
    },
  },
  outputs: {
    freeAir: { kind: 'volumeFlow', words: 'standard air passed' },
    delivery: { choices: ['passes', 'choked'], words: 'whether it runs at the speed of sound' },
  },
  fn: ({ flowCoefficient, pressureGaugePa, outletGaugePa, temperatureK }) => {
    const p1 = SEA_LEVEL_PA + pressureGaugePa
    const behind = SEA_LEVEL_PA + outletGaugePa
    const isChoked = behind < CHOKES_BELOW * p1
    const p2 = Math.min(p1, Math.max(behind, CHOKES_BELOW * p1))
    const freeAirM3PerS = CV_CONSTANT * flowCoefficient * Math.sqrt(((p1 - p2) * p2) / temperatureK)
    return { freeAirM3PerS, delivery: isChoked ? 'choked' : 'passes' }
  },
  checks: ['air-components'],
})
