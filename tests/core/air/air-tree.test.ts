import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type AirElement, lineEndAbsPa } from '../../../shared/core/air/air-element.ts'
import { solveAirSystem } from '../../../shared/core/air/air-system.ts'
import { type AirBranch, type SolvedBranch, solveAirTree } from '../../../shared/core/air/air-tree.ts'
import { componentOfLoss } from '../../../shared/core/air/component-outlet.ts'
import { toolEnd } from '../../../shared/core/air/operating-point.ts'
import { type SiteAirInput, siteAir } from '../../../shared/core/air/site-air.ts'

const SEEDED = { seed: 6358, numRuns: 150 }
const PSI_PA = 6894.757293168361
const CFM_M3_PER_S = 0.3048 ** 3 / 60
const INCH_M = 0.0254
const FOOT_M = 0.3048

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const hose = (boreIn: number, lengthFt: number, couplings: number): AirElement => ({
  kind: 'hose',
  boreM: boreIn * INCH_M,
  lengthM: lengthFt * FOOT_M,
  couplings,
  roughnessM: 0,
})
const siteOf = (change: Partial<SiteAirInput> = {}) =>
  siteAir({
    freeAirDeliveryM3PerS: 185 * CFM_M3_PER_S,
    compressorGaugePa: 100 * PSI_PA,
    altitudeM: 0,
    temperatureK: null,
    relativeHumidity: 0,
    engine: null,
    ...change,
  })
const seventy = toolEnd(70 * CFM_M3_PER_S, 90 * PSI_PA, 1)
const TWO: AirBranch = {
  elements: [hose(1, 50, 1)],
  end: [
    { elements: [hose(0.75, 50, 1)], end: seventy },
    { elements: [hose(0.75, 100, 2)], end: seventy },
  ],
}
const solveTwo = (freeAirCfm: number) => {
  const found = solveAirSystem({
    site: siteOf({ freeAirDeliveryM3PerS: freeAirCfm * CFM_M3_PER_S }),
    setGaugePa: 100 * PSI_PA,
    unloadGaugePa: null,
    root: TWO,
    path: [0],
    ratedGaugePa: 90 * PSI_PA,
  })
  if (!found.ok) throw new Error(found.reason)
  return found
}
const psi = (gaugePa: number | undefined) => Number(((gaugePa ?? 0) / PSI_PA).toFixed(2))

// Golden, and a second program's as well: it solved the same two branches by nested halving.
describe('two tools of 70 cfm on one compressor', () => {
  it('of 185 cfm', () => {
    const found = solveTwo(185)
    expect(psi(found.steps[0]?.outletGaugePa)).toBe(97.88)
    expect(found.tools.map((tool) => psi(tool.gaugePa))).toEqual([95.45, 93.15])
    expect((found.flowM3PerS / CFM_M3_PER_S).toFixed(1)).toBe('145.7')
    expect(found.limitedBy).toBe('tool')
  })

  it('of 125 cfm, which sags', () => {
    const found = solveTwo(125)
    expect(psi(found.compressorGaugePa)).toBe(83.81)
    expect(found.tools.map((tool) => psi(tool.gaugePa))).toEqual([79.8, 77.77])
    expect(found).toMatchObject({ limitedBy: 'compressor', sags: true })
  })
})

const anyHose: fc.Arbitrary<AirElement> = fc.record({
  kind: fc.constant('hose' as const),
  boreM: between(0.012, 0.05),
  lengthM: between(1, 60),
  couplings: fc.integer({ min: 0, max: 4 }),
})
const anyTool = fc.record({
  ratedKgPerS: between(0.005, 0.15),
  ratedAbsPa: between(5e5, 1e6),
  exponent: between(0.8, 1.6),
})
const leaf: fc.Arbitrary<AirBranch> = fc.record({
  elements: fc.array(anyHose, { maxLength: 3 }),
  end: anyTool,
})
const fork = (below: fc.Arbitrary<AirBranch>): fc.Arbitrary<AirBranch> =>
  fc.record({
    elements: fc.array(anyHose, { maxLength: 2 }),
    end: fc.array(below, { minLength: 1, maxLength: 3 }),
  })
const anyTree = fork(fc.oneof(leaf, fork(leaf)))
const anySupply = fc.record({ setAbsPa: between(4e5, 1.3e6), capacityKgPerS: between(0.01, 0.4) })
const K = 293.15

const everyBranch = (branch: SolvedBranch): readonly SolvedBranch[] => [
  branch,
  ...branch.branches.flatMap(everyBranch),
]

describe('a tree of lines', () => {
  it('keeps its mass at every node, and its pressure falls from node to node', () => {
    fc.assert(
      fc.property(anyTree, anySupply, (tree, supply) => {
        const { root } = solveAirTree(tree, supply, K)
        expect(root.massFlowKgPerS).toBeLessThanOrEqual(supply.capacityKgPerS * (1 + 1e-12))
        for (const branch of everyBranch(root)) {
          expect(branch.outletAbsPa).toBeLessThanOrEqual(branch.inletAbsPa)
          expect(branch.outletAbsPa).toBeGreaterThan(0)
          if (branch.branches.length === 0) continue
          const out = branch.branches.reduce((sum, each) => sum + each.massFlowKgPerS, 0)
          expect(Math.abs(out - branch.massFlowKgPerS)).toBeLessThanOrEqual(1e-9 * branch.massFlowKgPerS)
        }
      }),
      SEEDED,
    )
  })

  it('with one branch is the chain', () => {
    fc.assert(
      fc.property(leaf, fc.array(anyHose, { maxLength: 2 }), anySupply, (only, common, supply) => {
        const tree = solveAirTree({ elements: common, end: [only] }, supply, K)
        const chain = solveAirTree({ ...only, elements: [...common, ...only.elements] }, supply, K)
        const end = tree.root.branches[0]
        expect(Math.abs((end?.outletAbsPa ?? 0) / chain.root.outletAbsPa - 1)).toBeLessThan(1e-9)
        expect(Math.abs(tree.root.massFlowKgPerS / chain.root.massFlowKgPerS - 1)).toBeLessThan(1e-9)
      }),
      SEEDED,
    )
  })

  it('shares equally between equal branches', () => {
    fc.assert(
      fc.property(leaf, fc.integer({ min: 2, max: 4 }), anySupply, (one, count, supply) => {
        const { root } = solveAirTree(
          { elements: [], end: Array.from({ length: count }, () => one) },
          supply,
          K,
        )
        for (const branch of root.branches) {
          expect(Math.abs(branch.massFlowKgPerS * count - root.massFlowKgPerS)).toBeLessThanOrEqual(
            1e-9 * root.massFlowKgPerS,
          )
        }
      }),
      SEEDED,
    )
  })

  it('gives no tool more for another one that joins, nor less for more pressure or capacity', () => {
    fc.assert(
      fc.property(anyTree, leaf, anySupply, between(1, 1.5), (tree, more, supply, factor) => {
        const ends = (root: AirBranch, given: typeof supply) =>
          everyBranch(solveAirTree(root, given, K).root).flatMap((each) =>
            each.branches.length === 0 ? [each.outletAbsPa] : [],
          )
        if ('ratedKgPerS' in tree.end) return
        const before = ends(tree, supply)
        const joined = ends({ ...tree, end: [...tree.end, more] }, supply)
        const fed = ends(tree, {
          setAbsPa: supply.setAbsPa * factor,
          capacityKgPerS: supply.capacityKgPerS * factor,
        })
        for (const [index, pa] of before.entries()) {
          expect(joined[index]).toBeLessThanOrEqual(pa * (1 + 1e-9))
          expect(fed[index]).toBeGreaterThanOrEqual(pa * (1 - 1e-9))
        }
      }),
      SEEDED,
    )
  })

  it('says which branch chokes, and never gives what is no number', () => {
    const thin: AirBranch = { elements: [hose(0.25, 200, 2)], end: toolEnd(0.1, 90 * PSI_PA, 0) }
    const { root } = solveAirTree(
      { elements: [], end: [thin, { elements: [hose(1, 50, 2)], end: seventy }] },
      { setAbsPa: 8e5, capacityKgPerS: 0.3 },
      K,
    )
    expect(root.branches.map((each) => each.isChoked)).toEqual([true, false])
    for (const each of everyBranch(root)) {
      expect(Number.isFinite(each.massFlowKgPerS) && Number.isFinite(each.outletAbsPa)).toBe(true)
    }
  })
})

describe('elements in the line', () => {
  const inlet = 8e5
  const end = (element: AirElement, flow = 0.06) => lineEndAbsPa([element], flow, inlet, K) ?? 0

  it('a regulator lets through what it is set to and no more', () => {
    expect(end({ kind: 'regulator', setAbsPa: 6e5 })).toBe(6e5)
    expect(end({ kind: 'regulator', setAbsPa: 9e5 })).toBe(inlet)
  })

  it('a component described by its loss at a flow loses that, and four times as much of p1² − p2² at twice the flow', () => {
    const component = componentOfLoss({ lossPa: 3 * PSI_PA, massFlowKgPerS: 0.06, inletAbsPa: inlet })
    const lost = (flow: number) => inlet ** 2 - end({ kind: 'lubricator', ...component }, flow) ** 2
    expect(inlet - end({ kind: 'lubricator', ...component })).toBeCloseTo(3 * PSI_PA, 4)
    expect(lost(0.12) / lost(0.06)).toBeCloseTo(4, 9)
  })

  it('a globe valve loses more than a gate valve, a narrow coupling more than a wide one', () => {
    const valve = (coefficient: number) => end({ kind: 'valve', boreM: INCH_M, coefficient })
    expect(valve(7.8)).toBeLessThan(valve(0.3))
    const coupled = (couplingCoefficient: number) =>
      end({ kind: 'hose', boreM: INCH_M, lengthM: 15, couplings: 2, couplingCoefficient })
    expect(coupled(2.15)).toBeLessThan(coupled(0.41))
  })
})

describe('a site', () => {
  it('counts altitude once: the volume stays, the mass falls with the density', () => {
    const low = siteOf()
    const high = siteOf({ altitudeM: 2000 })
    expect(high.capacityM3PerS).toBe(low.capacityM3PerS)
    expect(high.capacityKgPerS / low.capacityKgPerS).toBeCloseTo(0.785, 3)
  })

  it('lets an engine without a turbo give out first: at 2000 m 0.82 of the power for 0.90 of the work', () => {
    const share = siteOf({ altitudeM: 2000, engine: 'aspirated' })
    expect(share.isEngineLimited).toBe(true)
    expect(share.capacityM3PerS / (185 * CFM_M3_PER_S)).toBeCloseTo(0.82 / 0.9, 2)
    expect(siteOf({ altitudeM: 2000, engine: 'turbo' }).isEngineLimited).toBe(false)
    expect(siteOf({ engine: 'aspirated' }).isEngineLimited).toBe(false)
  })

  it('takes another 4.4 % for air of 35 °C and 80 %', () => {
    const dry = siteOf({ temperatureK: 308.15 })
    const damp = siteOf({ temperatureK: 308.15, relativeHumidity: 0.8 })
    expect(1 - damp.capacityKgPerS / dry.capacityKgPerS).toBeCloseTo(0.044, 3)
  })
})
