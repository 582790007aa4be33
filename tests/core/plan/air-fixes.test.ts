import { describe, expect, test } from 'vitest'
import { airFixes, rankedFixes } from '../../../shared/core/plan/air-fixes.ts'
import { airReach } from '../../../shared/core/plan/air-reach.ts'
import { planCrossing } from '../../../shared/core/plan/plan-crossing.ts'
import { type CrossingDocument, demoDocument, inputOf, planOf } from '../../support/crossings.ts'

const PSI_PA = 6894.757293168361
const FILE = demoDocument('firm-clay-service')
const COMPRESSOR = { freeAirDelivery: '185 cfm', pressure: '100 psi' }
const withAir = (air: CrossingDocument): CrossingDocument => ({
  ...FILE,
  tool: { diameter: '4 in', airDemand: '120 cfm', ratedPressure: '90 psi' },
  air: { compressor: COMPRESSOR, lubricator: true, ...air },
})
const THIN = withAir({
  hoses: [
    { bore: '3/4 in', length: '100 ft' },
    { bore: '3/4 in', length: '100 ft' },
  ],
})
const fixesOf = (file: CrossingDocument, fleet: Parameters<typeof airFixes>[2] = []) =>
  airFixes(inputOf(file), planOf(file), fleet)
const raising = (fixes: ReturnType<typeof airFixes>) => fixes.filter((fix) => fix.code !== 'fit-regulator')

describe('what would help', () => {
  test('a long thin line: a wider hose, a shorter run and a second line, each with what it brings', () => {
    const fixes = fixesOf(THIN)
    const codes = fixes.map((fix) => fix.code)
    expect(codes).toEqual(expect.arrayContaining(['next-hose', 'shorter-run', 'parallel-line']))
    expect(codes).not.toContain('one-tool')
    for (const fix of raising(fixes)) {
      expect(fix.gainPa).toBeCloseTo(fix.toolGaugePa - planOf(THIN).air.toolGaugePa, 6)
      expect(fix.savedS).toBeGreaterThan(0)
      expect(fix.savedMinorUnits).not.toBeNull()
    }
  })

  test('ranked by minutes, pressure or money, best first', () => {
    const fixes = raising(fixesOf(THIN))
    const pressures = rankedFixes(fixes, 'pressure').map((fix) => fix.gainPa)
    expect(pressures).toEqual([...pressures].sort((a, b) => b - a))
    const minutes = rankedFixes(fixes, 'minutes').map((fix) => fix.savedS ?? 0)
    expect(minutes).toEqual([...minutes].sort((a, b) => b - a))
  })

  test('two tools on one machine: one at a time, or a machine from the shop', () => {
    const file = withAir({ hoses: [{ bore: '1 in', length: '50 ft' }], tools: 2 })
    const shop = [{ name: 'yard machine', freeAirDeliveryM3PerS: 0.177, gaugePa: 100 * PSI_PA }]
    const fixes = fixesOf(file, shop)
    expect(fixes.map((fix) => fix.code)).toEqual(expect.arrayContaining(['one-tool', 'other-compressor']))
    expect(fixes.find((fix) => fix.code === 'other-compressor')?.values.name).toBe('yard machine')
  })

  test('a big machine on a small tool: regulate down, before anything else', () => {
    const file = { ...withAir({ hoses: [{ bore: '1 in', length: '50 ft' }] }), tool: { diameter: '2 in' } }
    expect(rankedFixes(fixesOf(file), 'minutes')[0]?.code).toBe('fit-regulator')
    const regulated = withAir({ hoses: [{ bore: '1 in', length: '50 ft' }], regulator: '90 psi' })
    expect(fixesOf({ ...regulated, tool: { diameter: '2 in' } }).map((fix) => fix.code)).not.toContain(
      'fit-regulator',
    )
  })
})

describe('how far it goes', () => {
  const input = inputOf(THIN)
  const at = (change: CrossingDocument): number => {
    const plan = planCrossing(inputOf(withAir(change)))
    return plan.ok ? plan.value.air.toolGaugePa / PSI_PA : 0
  }

  test('the longest hose gives just the pressure wanted', () => {
    const { longestHoseM } = airReach(input, 70 * PSI_PA)
    const half = `${((longestHoseM.value ?? 0) / 2).toFixed(5)} m`
    const hoses = [
      { bore: '3/4 in', length: half },
      { bore: '3/4 in', length: half },
    ]
    expect(at({ hoses })).toBeCloseTo(70, 2)
  })

  test('the highest site gives just the pressure wanted', () => {
    const file = withAir({ hoses: [{ bore: '1 in', length: '50 ft' }], tools: 1 })
    const { highestSiteM } = airReach(inputOf(file), 92 * PSI_PA)
    if (highestSiteM.value === null) throw new Error(highestSiteM.why)
    expect(
      at({ hoses: [{ bore: '1 in', length: '50 ft' }], altitude: `${highestSiteM.value.toFixed(3)} m` }),
    ).toBeCloseTo(92, 2)
  })

  test('one tool more than the most is one too many', () => {
    const hoses = [{ bore: '1-1/4 in', length: '50 ft' }]
    const { mostTools } = airReach(inputOf(withAir({ hoses })), 60 * PSI_PA)
    const most = mostTools.value ?? 0
    expect(most).toBeGreaterThan(0)
    expect(at({ hoses, tools: most })).toBeGreaterThanOrEqual(60)
    expect(at({ hoses, tools: most + 1 })).toBeLessThan(60)
  })

  test('what cannot be has a reason in place of a figure', () => {
    const { longestHoseM, mostTools } = airReach(input, 130 * PSI_PA)
    expect(longestHoseM).toEqual({ value: null, why: 'not-even-now' })
    expect(mostTools.why).toBe('not-even-now')
    expect(airReach(input, 5 * PSI_PA).highestSiteM.why).toBe('beyond')
  })
})
