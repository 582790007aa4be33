import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { OperatingPointInput } from '../../../shared/core/air/operating-point.ts'
import { solveOperatingPoint } from '../../../shared/core/air/operating-point.ts'
import { receiverTime } from '../../../shared/core/air/receiver-time.ts'

const SEEDED = { seed: 5434, numRuns: 300 }
const PSI_PA = 6894.757293168361
const CFM_M3_PER_S = 0.3048 ** 3 / 60
const INCH_M = 0.0254
const FOOT_M = 0.3048

const COMMON: OperatingPointInput = {
  freeAirDeliveryM3PerS: 185 * CFM_M3_PER_S,
  compressorGaugePa: 100 * PSI_PA,
  hoses: [{ boreM: INCH_M, lengthM: 100 * FOOT_M }],
  lubricator: true,
  toolAirDemandM3PerS: 100 * CFM_M3_PER_S,
  toolRatedGaugePa: 90 * PSI_PA,
  toolCount: 1,
  altitudeM: 0,
  temperatureK: null,
  exponent: 1,
}
const solve = (change: Partial<OperatingPointInput> = {}) => solveOperatingPoint({ ...COMMON, ...change })
const toolPsi = (change: Partial<OperatingPointInput> = {}): number => {
  const found = solve(change)
  return found.ok ? found.toolGaugePa / PSI_PA : 0
}
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const anyInput: fc.Arbitrary<OperatingPointInput> = fc.record({
  freeAirDeliveryM3PerS: between(0.01, 0.3),
  compressorGaugePa: between(3e5, 1.2e6),
  hoses: fc.array(fc.record({ boreM: between(0.012, 0.05), lengthM: between(1, 60) }), { maxLength: 5 }),
  lubricator: fc.boolean(),
  toolAirDemandM3PerS: between(0.005, 0.2),
  toolRatedGaugePa: between(4e5, 9e5),
  toolCount: fc.integer({ min: 1, max: 3 }),
  altitudeM: between(0, 4000),
  temperatureK: fc.oneof(fc.constant(null), between(250, 320)),
  exponent: between(0.8, 1.6),
})

describe('the operating point', () => {
  it('is a balance: a ladder without gaps, a flow within the capacity, a tool drawing what it gets', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const found = solveOperatingPoint(input)
        if (!found.ok) return
        let gaugePa = found.compressorGaugePa
        for (const step of found.steps) {
          expect(step.inletGaugePa).toBe(gaugePa)
          expect(step.outletGaugePa).toBeLessThanOrEqual(gaugePa)
          gaugePa = step.outletGaugePa
        }
        expect(gaugePa).toBe(found.toolGaugePa)
        expect(found.hoseLossPa).toBeCloseTo(found.compressorGaugePa - found.toolGaugePa, 6)
        expect(found.flowM3PerS).toBeLessThanOrEqual(found.capacityM3PerS * (1 + 1e-12))
        expect(found.compressorGaugePa).toBeLessThanOrEqual(input.compressorGaugePa * (1 + 1e-12))
        expect(found.demandM3PerS).toBeGreaterThanOrEqual(found.flowM3PerS * (1 - 1e-9))
        expect(found.unloadedGaugePa).toBeGreaterThanOrEqual(found.compressorGaugePa * (1 - 1e-12))
        for (const value of [found.toolGaugePa, found.flowM3PerS, found.unloadedGaugePa]) {
          expect(Number.isFinite(value)).toBe(true)
        }
      }),
      SEEDED,
    )
  })

  it('gives the tool more with every wider bore', () => {
    fc.assert(
      fc.property(anyInput, between(1.01, 1.5), (input, wider) => {
        const narrow = solveOperatingPoint(input)
        const wide = solveOperatingPoint({
          ...input,
          hoses: input.hoses.map((hose) => ({ ...hose, boreM: hose.boreM * wider })),
        })
        if (!narrow.ok || input.hoses.length === 0) return
        expect(wide.ok && wide.toolGaugePa).toBeGreaterThanOrEqual(narrow.toolGaugePa - 1e-3)
      }),
      SEEDED,
    )
  })

  it('does not care how a hose is cut, but for the couplings', () => {
    const piece = { boreM: INCH_M, lengthM: 50 * FOOT_M, couplings: 4 }
    const whole = { ...piece, lengthM: 100 * FOOT_M, couplings: 8 }
    expect(toolPsi({ hoses: [piece, piece] })).toBeCloseTo(toolPsi({ hoses: [whole] }), 9)
    const bare = { boreM: INCH_M, lengthM: 50 * FOOT_M }
    expect(toolPsi({ hoses: [bare, bare] })).toBeLessThan(
      toolPsi({ hoses: [{ ...bare, lengthM: 100 * FOOT_M }] }),
    )
  })

  it('holds on a long narrow hose, and turns it down past what it can pass', () => {
    expect(toolPsi({ hoses: [{ boreM: 0.019, lengthM: 60 }] })).toBeGreaterThan(0)
    const found = solve({ hoses: [{ boreM: 0.006, lengthM: 200 }] })
    expect(found.ok).toBe(false)
    expect(solve({ freeAirDeliveryM3PerS: 0.002, toolAirDemandM3PerS: 0.2 })).toEqual({
      ok: false,
      reason: 'no-pressure',
    })
  })

  it('says choked where the tools want more than the line can ever pass', () => {
    const hoses = [{ boreM: 0.0127, lengthM: 1 }]
    const found = solve({ freeAirDeliveryM3PerS: 5, toolAirDemandM3PerS: 5, hoses, lubricator: false })
    expect(found).toEqual({ ok: false, reason: 'choked' })
  })

  it('names what limits', () => {
    const limit = (change: Partial<OperatingPointInput>) => {
      const found = solve(change)
      return found.ok ? found.limitedBy : found.reason
    }
    expect(limit({})).toBe('tool')
    expect(limit({ hoses: [{ boreM: 0.75 * INCH_M, lengthM: 100 * FOOT_M }] })).toBe('hose')
    expect(limit({ toolCount: 2 })).toBe('compressor')
    expect(limit({ compressorGaugePa: 85 * PSI_PA })).toBe('compressor')
  })

  it('counts each tool: two of one demand are one of twice the demand', () => {
    const two = solve({ toolCount: 2, toolAirDemandM3PerS: 0.02 })
    expect(two).toEqual(solve({ toolCount: 1, toolAirDemandM3PerS: 0.04 }))
  })

  it('rides up by a quarter of the share of load that is missing', () => {
    const found = solve()
    if (!found.ok) throw new Error('no operating point')
    const load = found.flowM3PerS / found.capacityM3PerS
    expect(found.unloadedGaugePa).toBeCloseTo(found.compressorGaugePa * (1.25 - 0.25 * load), 3)
    expect(solve({ toolCount: 3 })).toMatchObject({ limitedBy: 'compressor' })
  })

  it('with nothing between gives the tool the compressor’s own pressure', () => {
    const found = solve({ hoses: [], lubricator: false })
    expect(found).toMatchObject({ ok: true, hoseLossPa: 0, steps: [] })
  })
})

describe('a receiver', () => {
  it('falls as the closed form of a choked outflow says: 8 to 6 bar in 5.542 s', () => {
    // 200 L at 20 °C, 80 g/s in, 2.4e-7 kg/(s·Pa) out: p = p∞ + (p1 − p∞) e^(−t/τ), p∞ 3.333 bar, τ 9.903 s.
    const kgPerM3FreeAir = 101_325 / (287.0529 * 293.15)
    const slices = 2000
    const sliceBar = 2 / slices
    let timeS = 0
    for (let slice = 0; slice < slices; slice++) {
      const fromPa = (8 - slice * sliceBar) * 1e5
      const toPa = fromPa - sliceBar * 1e5
      const outKgPerS = (2.4e-7 * (fromPa + toPa)) / 2
      const sliceS = receiverTime.fn({
        volumeM3: 0.2,
        inflowM3PerS: 0.08 / kgPerM3FreeAir,
        outflowM3PerS: outKgPerS / kgPerM3FreeAir,
        fromGaugePa: fromPa - 101_325,
        toGaugePa: toPa - 101_325,
        atmospherePa: 101_325,
      }).timeS
      timeS += sliceS ?? Number.NaN
    }
    const restPa = 0.08 / 2.4e-7
    const tauS = 0.2 / (287.0529 * 293.15 * 2.4e-7)
    expect(timeS).toBeCloseTo(tauS * Math.log((8e5 - restPa) / (6e5 - restPa)), 5)
    expect(Math.abs(timeS - 5.542)).toBeLessThan(0.0005)
  })

  it('agrees with its differential equation, stepped by Runge and Kutta', () => {
    // dp/dt = (R T/V)(ṁ_in − c p): the same tank, integrated apart from any closed form.
    const slopePaPerS = (pa: number) => ((287.0529 * 293.15) / 0.2) * (0.08 - 2.4e-7 * pa)
    const stepS = 1e-4
    let pa = 8e5
    let timeS = 0
    while (pa > 6e5) {
      const one = slopePaPerS(pa)
      const two = slopePaPerS(pa + (stepS / 2) * one)
      const three = slopePaPerS(pa + (stepS / 2) * two)
      const four = slopePaPerS(pa + stepS * three)
      const next = pa + (stepS / 6) * (one + 2 * two + 2 * three + four)
      timeS += next > 6e5 ? stepS : (stepS * (pa - 6e5)) / (pa - next)
      pa = next
    }
    const tauS = 0.2 / (287.0529 * 293.15 * 2.4e-7)
    const restPa = 0.08 / 2.4e-7
    expect(timeS / (tauS * Math.log((8e5 - restPa) / (6e5 - restPa)))).toBeCloseTo(1, 8)
    // With constant flows the relation is that equation solved: 1e-9.
    const { timeS: closedS } = receiverTime.fn({
      volumeM3: 0.2,
      inflowM3PerS: 0.01,
      outflowM3PerS: 0.05,
      fromGaugePa: 7e5,
      toGaugePa: 5e5,
      atmospherePa: 101_325,
    })
    let constantPa = 7e5
    let steps = 0
    while (constantPa > 5e5 + 1e-6) {
      constantPa -= ((0.05 - 0.01) * 101_325 * 1e-3) / 0.2
      steps += 1
    }
    const overshootS = (5e5 - constantPa) / (((0.05 - 0.01) * 101_325) / 0.2)
    expect((closedS ?? 0) / (steps * 1e-3 - overshootS)).toBeCloseTo(1, 9)
  })

  it('never gets where its flows do not lead', () => {
    const still = { volumeM3: 1, inflowM3PerS: 0.1, outflowM3PerS: 0.1, atmospherePa: 101_325 }
    const never = { timeS: null, reached: 'never' }
    expect(receiverTime.fn({ ...still, fromGaugePa: 7e5, toGaugePa: 6e5 })).toEqual(never)
    expect(receiverTime.fn({ ...still, outflowM3PerS: 0.2, fromGaugePa: 6e5, toGaugePa: 7e5 })).toEqual(never)
    expect(receiverTime.fn({ ...still, fromGaugePa: 7e5, toGaugePa: 7e5 })).toEqual({
      timeS: 0,
      reached: 'reached',
    })
    const filling = receiverTime.fn({ ...still, inflowM3PerS: 0.2, fromGaugePa: 6e5, toGaugePa: 7e5 })
    expect(filling.timeS).toBeCloseTo(1e5 / 101_325 / 0.1, 9)
  })
})
