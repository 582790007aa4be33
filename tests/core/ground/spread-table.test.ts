import { describe, expect, it } from 'vitest'
import {
  DRAW_COV,
  LEAST_SET_M,
  logSigma,
  planningRateMPerS,
  rateFactorOfDraw,
  resistanceOfDraw,
  setPerBlowOfDraw,
  stalls,
} from '../../../shared/core/ground/set-of-draw.ts'
import {
  BODY_SHARE,
  clayTipPa,
  granularTipFactor,
  verticalStressPa,
} from '../../../shared/core/ground/tip-pressure.ts'
import { tipTable } from '../../../shared/core/ground/tip-table.ts'
import { ROWS, SECONDS_PER_MINUTE, stateOf, tool } from './penetration-of.ts'

/** P10, P50, P90 m/min, COV, share stalled; 75 mm at 1.0 m, tabulated with the model, calculated apart from this program. */
const SPREAD = {
  'soft clay N3': [0.92, 1.27, 1.46, 0.18, 0],
  'firm clay N6': [0.53, 0.89, 1.24, 0.31, 0],
  'stiff clay N11': [0.28, 0.55, 0.91, 0.42, 0],
  'very stiff clay N22': [0.1, 0.3, 0.57, 0.58, 0.06],
  'hard clay / till N40': [0, 0.13, 0.33, 0.82, 0.27],
  'stiff silt ML': [0.41, 0.74, 1.11, 0.35, 0],
  'clayey sand SC moist': [0.21, 0.5, 0.86, 0.47, 0.02],
  'loose sand': [0.28, 0.63, 1, 0.43, 0.02],
  'medium dense sand': [0.12, 0.34, 0.66, 0.56, 0.05],
  'dense sand': [0.03, 0.17, 0.38, 0.71, 0.18],
  'dense gravelly sand': [0, 0.04, 0.17, 1.2, 0.64],
} as const satisfies Record<keyof typeof ROWS, readonly [number, number, number, number, number]>

const DRAWS = 40_000
/** The table has two digits and the noise of its own draws, about a thousand of them: 0.02 on a quantile. */
const QUANTILE_SLACK = 0.025
const COV_SLACK = 0.03
const STALL_SLACK = 0.02

/** Small generator of its own (mulberry32), so that the test gives one answer everywhere. */
function normals(seed: number): () => number {
  let state = seed
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) | 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform())
}

function ratesOf(row: keyof typeof ROWS): { rates: number[]; stalled: number } {
  const state = stateOf(ROWS[row])
  const diameterM = 0.075
  const of = tool(diameterM)
  const table = tipTable(state, 1, null)
  const normal = normals(7)
  const times = (cov: number): number => Math.exp(logSigma(cov) * normal())
  const rates: number[] = []
  let stalled = 0
  for (let i = 0; i < DRAWS; i += 1) {
    let tip: number
    let shaft: number
    if (state.family === 'clay') {
      const strength = (state.undrainedStrengthPa ?? 0) * times(0.3)
      const rigidity = (state.rigidityIndex ?? 0) * times(DRAW_COV.rigidityIndex)
      const vertical = verticalStressPa(state.unitWeightNPerM3, 1)
      tip = clayTipPa(strength, rigidity, vertical, state.tipAdhesion ?? 0, state.tipFactor)
      shaft = (state.shaftAdhesion ?? 0) * strength
    } else {
      const x =
        state.family === 'sand'
          ? (state.relativeDensity ?? 0) + 0.1 * normal()
          : state.cohesionPa * times(0.4)
      const y = state.frictionAngleRad + (2 * Math.PI * normal()) / 180
      const factor = granularTipFactor(state.interfaceAngleRad ?? 0, state.tipFactor, state.tipMultiplier)
      tip = factor * table.evaluate(x, y)
      shaft = BODY_SHARE * (state.shaftRatio ?? 0) * tip
    }
    const k = rateFactorOfDraw(state.rateFactor, times(DRAW_COV.rateFactor))
    const resistance = resistanceOfDraw(
      tip,
      shaft * times(DRAW_COV.shaft),
      of.tipAreaM2,
      of.shaftAreaM2,
      k,
      times(state.modelCov),
    )
    const quake = (diameterM / state.quakeDivisor) * times(DRAW_COV.quake)
    const efficiency = of.efficiency * times(DRAW_COV.efficiency)
    const set = setPerBlowOfDraw(efficiency, of.blowEnergyJ * times(DRAW_COV.blowEnergy), resistance, quake)
    const rate = planningRateMPerS(set, of.blowRateHz)
    if (stalls(set, rate)) stalled += 1
    rates.push(rate * SECONDS_PER_MINUTE)
  }
  return { rates: rates.sort((a, b) => a - b), stalled: stalled / DRAWS }
}

describe('spread of the rate, 75 mm at 1.0 m', () => {
  it.each(Object.entries(SPREAD))('%s', (row, [p10, p50, p90, cov, stalled]) => {
    const found = ratesOf(row as keyof typeof ROWS)
    const at = (q: number): number => found.rates[Math.ceil(q * DRAWS) - 1] ?? Number.NaN
    const mean = found.rates.reduce((sum, rate) => sum + rate, 0) / DRAWS
    const deviation = Math.sqrt(found.rates.reduce((sum, rate) => sum + (rate - mean) ** 2, 0) / DRAWS)
    expect(Math.abs(at(0.1) - p10)).toBeLessThan(QUANTILE_SLACK)
    expect(Math.abs(at(0.5) - p50)).toBeLessThan(QUANTILE_SLACK)
    expect(Math.abs(at(0.9) - p90)).toBeLessThan(QUANTILE_SLACK)
    expect(Math.abs(deviation / mean - cov)).toBeLessThan(COV_SLACK)
    expect(Math.abs(found.stalled - stalled)).toBeLessThan(STALL_SLACK)
  })

  it('stalls below 0.15 mm a blow or 0.05 m/min', () => {
    expect(stalls(LEAST_SET_M * 0.99, 1)).toBe(true)
    expect(stalls(LEAST_SET_M, 0.05 / SECONDS_PER_MINUTE)).toBe(false)
    expect(stalls(1, 0.0499 / SECONDS_PER_MINUTE)).toBe(true)
  })
})
