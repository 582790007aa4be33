import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { componentOutlet } from '../../../shared/core/air/component-outlet.ts'
import { airViscosityPaS } from '../../../shared/core/air/dry-air.ts'
import { darcyFrictionFactor, FRICTION_METHODS } from '../../../shared/core/air/friction-methods.ts'
import { hoseFrictionLoss } from '../../../shared/core/air/hose-friction-loss.ts'
import { hoseOutlet } from '../../../shared/core/air/hose-outlet.ts'
import { isothermalOutlet } from '../../../shared/core/air/isothermal-outlet.ts'

const SEEDED = { seed: 19_390_207, numRuns: 400 }
const PSI_PA = 6894.757293168361
const CFM_M3_PER_S = 0.3048 ** 3 / 60

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const hose = fc.record({
  boreM: between(0.01, 0.05),
  lengthM: between(1, 120),
  roughnessM: between(0, 1e-4),
  couplings: fc.integer({ min: 0, max: 12 }),
  massFlowKgPerS: between(1e-4, 0.15),
  inletAbsPa: between(3e5, 1.5e6),
  temperatureK: between(240, 330),
})
type Hose = Parameters<typeof hoseOutlet>[0]
/** Loss, with a choking hose as the greatest there is. */
const lossPa = (given: Hose): number => {
  const found = hoseOutlet(given)
  return found.ok ? given.inletAbsPa - found.outletAbsPa : Number.POSITIVE_INFINITY
}

describe('a hose', () => {
  it('loses more with more flow', () => {
    fc.assert(
      fc.property(hose, between(1.001, 3), (given, more) => {
        const greater = lossPa({ ...given, massFlowKgPerS: given.massFlowKgPerS * more })
        const lesser = lossPa(given)
        expect(greater > lesser || (greater === lesser && lesser === Number.POSITIVE_INFINITY)).toBe(true)
      }),
      SEEDED,
    )
  })

  it('loses less with a wider bore', () => {
    fc.assert(
      fc.property(hose, between(1.01, 2), (given, wider) => {
        const lesser = lossPa({ ...given, boreM: given.boreM * wider })
        const greater = lossPa(given)
        // Where a wider bore slips from turbulent to laminar the loss falls all the more.
        expect(lesser < greater || lesser === Number.POSITIVE_INFINITY).toBe(true)
      }),
      SEEDED,
    )
  })

  it('is the sum of its pieces', () => {
    fc.assert(
      fc.property(hose, between(0.05, 0.95), (given, share) => {
        const whole = hoseOutlet({ ...given, couplings: 0 })
        const first = hoseOutlet({ ...given, couplings: 0, lengthM: given.lengthM * share })
        if (!first.ok || !whole.ok) return
        const rest = {
          ...given,
          couplings: 0,
          lengthM: given.lengthM * (1 - share),
          inletAbsPa: first.outletAbsPa,
        }
        const second = hoseOutlet(rest)
        // Right at the choke the last bits decide whether the second piece passes.
        if (!second.ok) return
        expect(Math.abs(second.outletAbsPa - whole.outletAbsPa)).toBeLessThan(1e-9 * given.inletAbsPa)
      }),
      SEEDED,
    )
  })

  it('satisfies the equation it solves', () => {
    fc.assert(
      fc.property(
        between(1e5, 1.5e6),
        between(1, 3000),
        between(0, 5000),
        (inletAbsPa, massFluxKgPerSM2, resistance) => {
          const gasEnergyJPerKg = 84_150
          const found = isothermalOutlet({ inletAbsPa, massFluxKgPerSM2, gasEnergyJPerKg, resistance })
          if (!found.ok) return
          const inertia = massFluxKgPerSM2 ** 2 * gasEnergyJPerKg
          const left = inletAbsPa ** 2 - found.outletAbsPa ** 2
          const right = inertia * (resistance + 2 * Math.log(inletAbsPa / found.outletAbsPa))
          expect(Math.abs(left - right)).toBeLessThan(1e-9 * inletAbsPa ** 2)
          expect(found.outletAbsPa).toBeGreaterThanOrEqual(Math.sqrt(inertia))
        },
      ),
      SEEDED,
    )
  })

  it('gives numbers everywhere inside its hard bounds', () => {
    const edges = <Value>(...values: readonly Value[]) => fc.constantFrom(...values)
    const given = fc.record({
      boreM: edges(0.002, 0.01, 0.0254, 1),
      lengthM: edges(0, 1e-6, 15, 10_000),
      freeAirM3PerS: edges(0, 1e-9, 0.001, 0.05, 100),
      pressureGaugePa: edges(0, 1, 7e5, 1e7),
      altitudeM: edges(-1000, 0, 9000),
      temperatureK: edges(200, 293.15, 400),
      roughnessM: edges(0, 1e-5, 5e-4),
      couplings: edges(0, 2, 1000),
    })
    fc.assert(
      fc.property(given, (each) => {
        const { lossPa: loss, outletGaugePa, delivery } = hoseFrictionLoss.fn(each)
        expect(Number.isFinite(loss) && Number.isFinite(outletGaugePa)).toBe(true)
        expect(loss).toBeGreaterThanOrEqual(0)
        expect(outletGaugePa).toBeGreaterThanOrEqual(0)
        if (delivery === 'choked') expect(loss).toBe(each.pressureGaugePa)
      }),
      { ...SEEDED, numRuns: 3000 },
    )
  })

  it('that cannot pass the flow keeps no pressure and says so', () => {
    const given = {
      boreM: 0.0127,
      lengthM: 60,
      freeAirM3PerS: 0.0873,
      pressureGaugePa: 689_476,
      altitudeM: 0,
      temperatureK: 293.15,
      roughnessM: 1e-5,
      couplings: 2,
    }
    expect(hoseFrictionLoss.fn(given)).toEqual({ lossPa: 689_476, outletGaugePa: 0, delivery: 'choked' })
  })
})

describe('values from print for the bare functions', () => {
  // fluids, test suite of compressible flow: density 11.3 kg/m³ at 1 MPa, f 0.00185, 1000 m of 0.5 m pipe.
  const gasEnergyJPerKg = 1e6 / 11.3
  const resistance = (0.00185 * 1000) / 0.5
  const areaM2 = (Math.PI * 0.5 ** 2) / 4

  it('isothermal flow: 145.484757264 kg/s leave 0.9 MPa', () => {
    const found = isothermalOutlet({
      inletAbsPa: 1e6,
      massFluxKgPerSM2: 145.484757264 / areaM2,
      gasEnergyJPerKg,
      resistance,
    })
    expect(found.ok && Math.abs(found.outletAbsPa / 9e5 - 1)).toBeLessThan(1e-8)
  })

  it('isothermal choke at 389699.7317645518 Pa', () => {
    const chokeFlux = 389_699.7317645518 / Math.sqrt(gasEnergyJPerKg)
    const at = (share: number) =>
      isothermalOutlet({ inletAbsPa: 1e6, massFluxKgPerSM2: chokeFlux * share, gasEnergyJPerKg, resistance })
    const justBelow = at(1 - 1e-8)
    expect(justBelow.ok && Math.abs(justBelow.outletAbsPa / 389_699.73 - 1)).toBeLessThan(1e-3)
    expect(at(1 + 1e-8)).toEqual({ ok: false, reason: 'choked' })
  })

  it('Crane 7-22: 3762 scfh at most leave the pipe for the open air, within half a per cent', () => {
    const outletGaugePsi = (standardCfh: number) => {
      const temperatureK = 310.928
      const densityKgPerM3 = 101_325 / (287.0529 * 288.706)
      const found = hoseOutlet({
        boreM: 0.546 * 0.0254,
        lengthM: 3.048,
        roughnessM: 0.0018 * 0.0254,
        couplings: 1,
        massFlowKgPerS: (standardCfh / 60) * CFM_M3_PER_S * densityKgPerM3,
        inletAbsPa: 101_325 + 19.3 * PSI_PA,
        temperatureK,
      })
      return found.ok ? (found.outletAbsPa - 101_325) / PSI_PA : Number.NEGATIVE_INFINITY
    }
    expect(outletGaugePsi(3762 * 0.995)).toBeGreaterThan(0)
    expect(outletGaugePsi(3762 * 1.005)).toBeLessThan(0)
  })

  it('ISO 6358: C 1e-8, b 0.35 chokes at 0.008295 kg/s from 7 bar', () => {
    const component = { conductanceM3PerSPa: 1e-8, criticalRatio: 0.35 }
    const at = (massFlowKgPerS: number) =>
      componentOutlet(component, { massFlowKgPerS, inletAbsPa: 7e5, temperatureK: 293.15 })
    expect(at(0.0082945).ok).toBe(true)
    expect(at(0.0082955).ok).toBe(false)
  })

  it('ISO 6358: C 3 dm³/(s·bar) passes 600 L/min from 6 bar with about 0.55 bar lost', () => {
    const component = { conductanceM3PerSPa: 3e-8, criticalRatio: 0.35 }
    const found = componentOutlet(component, {
      massFlowKgPerS: 0.01 * 1.185,
      inletAbsPa: 7.01325e5,
      temperatureK: 293.15,
    })
    const lostBar = found.ok ? (7.01325e5 - found.outletAbsPa) / 1e5 : 0
    expect(Math.abs(lostBar - 0.55)).toBeLessThan(0.005)
  })

  it('Sutherland: the standard atmosphere’s viscosity, 1.7894e-5 at 15 °C and 1.7260e-5 at 2 °C', () => {
    expect(Math.abs(airViscosityPaS(288.15) - 1.7894e-5)).toBeLessThan(0.5e-9)
    expect(Math.abs(airViscosityPaS(275.15) - 1.726e-5)).toBeLessThan(0.5e-9)
  })
})

describe('friction factors', () => {
  // Worst departures from Colebrook over Re 5e3–1e7 and roughness 0–0.05, by a second program.
  const WORST = {
    colebrook: 1e-12,
    serghides: 0.00004,
    haaland: 0.0145,
    'swamee-jain': 0.031,
    churchill: 0.031,
  }

  it.each(FRICTION_METHODS)('%s departs from Colebrook no more than is said of it', (method) => {
    fc.assert(
      fc.property(between(Math.log(5e3), Math.log(1e7)), between(0, 0.05), (logReynolds, roughness) => {
        const reynolds = Math.exp(logReynolds)
        const exact = darcyFrictionFactor(reynolds, roughness, 'colebrook')
        const departure = Math.abs(darcyFrictionFactor(reynolds, roughness, method) / exact - 1)
        expect(departure).toBeLessThanOrEqual(WORST[method])
      }),
      SEEDED,
    )
  })

  it.each(FRICTION_METHODS)('%s is a number above zero from Re 1 to 1e12', (method) => {
    fc.assert(
      fc.property(between(0, Math.log(1e12)), between(0, 0.25), (logReynolds, roughness) => {
        const factor = darcyFrictionFactor(Math.exp(logReynolds), roughness, method)
        expect(Number.isFinite(factor) && factor > 0).toBe(true)
      }),
      SEEDED,
    )
  })
})
