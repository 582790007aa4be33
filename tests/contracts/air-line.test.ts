import { describe, expect, test } from 'vitest'
import { parseCrossing } from '../../shared/contracts/crossing.ts'
import type { Issue } from '../../shared/core/outcome.ts'
import { type CrossingDocument, demoDocument, planOf } from '../support/crossings.ts'

const FILE = demoDocument('firm-clay-service')
const AIR = FILE.air as CrossingDocument
const withAir = (change: CrossingDocument): CrossingDocument => ({ ...FILE, air: { ...AIR, ...change } })
const COMPRESSOR = { freeAirDelivery: '185 cfm', pressure: '100 psi' }
const HOSE = { bore: '3/4 in', length: '50 ft' }
const issuesOf = (change: CrossingDocument): readonly Issue[] => {
  const parsed = parseCrossing(withAir(change))
  return parsed.ok ? [] : parsed.issues
}

describe('an air line that cannot be', () => {
  test.each([
    ['a bore of zero', { hoses: [{ bore: '0 in', length: '50 ft' }] }, 'air.hoses.0.bore', 'out-of-range'],
    [
      'an unknown reference state',
      { compressor: { ...COMPRESSOR, reference: 'sea' } },
      'air.compressor.reference',
      'unknown-choice',
    ],
    [
      'a set pressure nobody would run a tool on',
      { compressor: { ...COMPRESSOR, pressure: '7 psi' } },
      'air.compressor.pressure',
      'ask',
    ],
    [
      'an unloading pressure below the set one',
      { compressor: { ...COMPRESSOR, unloadPressure: '90 psi' } },
      'air.compressor.unloadPressure',
      'inputs-conflict',
    ],
    ['an oiler with half its figures', { oiler: { loss: '3 psi' } }, 'air.oiler', 'inputs-conflict'],
    [
      'an oiler and none',
      { lubricator: false, oiler: { loss: '3 psi', at: '185 cfm' } },
      'air.oiler',
      'inputs-conflict',
    ],
    [
      'a coupling wider than its hose',
      { hoses: [{ ...HOSE, couplingBore: '1 in' }] },
      'air.hoses.0.couplingBore',
      'inputs-conflict',
    ],
    [
      'a loop',
      {
        branches: [
          { name: 'a', from: 'b' },
          { name: 'b', from: 'a' },
          { name: 'c', hoses: [HOSE] },
        ],
      },
      'air.branches.0.from',
      'inputs-conflict',
    ],
    [
      'branches four deep',
      {
        branches: [
          { name: 'a' },
          { name: 'b', from: 'a' },
          { name: 'c', from: 'b' },
          { name: 'd', from: 'c' },
        ],
      },
      'air.branches.3.from',
      'inputs-conflict',
    ],
    [
      'a branch off nothing',
      { branches: [{ name: 'a', from: 'x' }] },
      'air.branches.0.from',
      'unknown-choice',
    ],
    [
      'two of one name',
      { branches: [{ name: 'a' }, { name: 'a' }] },
      'air.branches.1.name',
      'inputs-conflict',
    ],
    [
      'a tool where another branch starts',
      {
        branches: [
          { name: 'a', tool: { airDemand: '50 cfm' } },
          { name: 'b', from: 'a' },
        ],
      },
      'air.branches.0.tool',
      'inputs-conflict',
    ],
    [
      'no place for the crossing’s own tool',
      { branches: [{ name: 'a', tool: { airDemand: '50 cfm' } }] },
      'air.branches',
      'inputs-conflict',
    ],
    [
      'both a number of tools and branches',
      { tools: 2, branches: [{ name: 'a' }] },
      'air.tools',
      'inputs-conflict',
    ],
  ])('%s', (_name, change, path, code) => {
    expect(issuesOf(change)).toContainEqual(expect.objectContaining({ path, code }))
  })

  test('a low pressure is taken once it says what it is', () => {
    const [asked] = issuesOf({ compressor: { ...COMPRESSOR, pressure: '7 psi' } })
    expect(asked?.candidates?.map((each) => each.value)).toEqual(['7 psig', '7 bar'])
    for (const pressure of ['7 psig', '7 bar']) {
      expect(issuesOf({ compressor: { ...COMPRESSOR, pressure } })).toEqual([])
    }
  })
})

describe('an air line with everything in it', () => {
  const whole = {
    compressor: { ...COMPRESSOR, unloadPressure: '120 psi', reference: 'scfm', engine: 'turbo' },
    separator: { conductance: '60 L/(s bar)', criticalRatio: 0.4 },
    valves: [{ kind: 'ball', bore: '1 in' }],
    regulator: '98 psi',
    hoses: [
      { bore: '1 in', length: '50 ft', couplings: 1, couplingBore: '0.8 in', ratedPressure: '300 psi' },
    ],
    oiler: { loss: '2 psi', at: '100 cfm' },
    whip: { bore: '3/4 in', length: '6 ft' },
    receiver: '20 gal',
    humidity: '70 %',
    temperature: '50 F',
    altitude: '2000 ft',
  }

  test('is planned, with a rung for each element', () => {
    const { air } = planOf(withAir(whole))
    expect(air.ladder.map((step) => step.element)).toEqual([
      'separator-1',
      'valve-1',
      'regulator-1',
      'hose-1',
      'lubricator-1',
      'whip-1',
    ])
    expect(air.band?.lowGaugePa).toBeLessThanOrEqual(air.toolGaugePa)
    expect(air.band?.highGaugePa).toBeGreaterThanOrEqual(air.toolGaugePa)
    expect(air.mostAtToolGaugePa).toBeLessThanOrEqual(98 * 6894.76)
    expect(air.water?.atMachineKgPerS).toBeGreaterThan(0)
    expect(air.receiver?.bridges).toBe('stop')
  })

  test('that can see more than a hose is rated for is held', () => {
    const weak = { ...whole, hoses: [{ ...HOSE, ratedPressure: '110 psi' }] }
    const { release } = planOf(withAir(weak))
    expect(release.reasons).toContainEqual(
      expect.objectContaining({ code: 'over-hose-rating', kind: 'rule' }),
    )
  })

  test('that gives a tool more than most are made for is held until its rating is given', () => {
    const strong = {
      ...whole,
      regulator: '150 psi',
      compressor: { freeAirDelivery: '900 cfm', pressure: '150 psi' },
    }
    const codes = (tool: object) =>
      planOf({ ...withAir(strong), tool: { diameter: '2.5 in', ...tool } }).release.reasons.map(
        ({ code }) => code,
      )
    expect(codes({})).toContain('tool-rating-not-given')
    expect(codes({ ratedPressure: '160 psi' })).not.toContain('tool-rating-not-given')
    expect(codes({ ratedPressure: '100 psi' })).toContain('over-rated-pressure')
  })

  test('with branches says what each tool gets, and which is starved', () => {
    const thin = { bore: '3/8 in', length: '100 ft' }
    const { air, cautions } = planOf(
      withAir({
        hoses: [{ bore: '1 in', length: '50 ft' }],
        branches: [
          { name: 'left', hoses: [HOSE] },
          { name: 'right', hoses: [thin], tool: { airDemand: '90 cfm', ratedPressure: '90 psi' } },
        ],
      }),
    )
    expect(air.tools).toMatchObject([
      { branch: 'left', isOurs: true },
      { branch: 'right', isOurs: false, state: 'starved' },
    ])
    expect(cautions).toContainEqual(expect.objectContaining({ id: 'tool-starves' }))
  })

  test('with one branch is the plain line', () => {
    const chain = planOf(withAir({ hoses: [HOSE, HOSE] })).air
    const tree = planOf(withAir({ hoses: [HOSE], branches: [{ name: 'only', hoses: [HOSE] }] })).air
    expect(Math.abs(tree.toolGaugePa / chain.toolGaugePa - 1)).toBeLessThan(1e-9)
  })
})
