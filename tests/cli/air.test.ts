import { describe, expect, test } from 'vitest'
import { A_CROSSING, run } from './run-in-process.ts'

const stdin = JSON.stringify({
  ...A_CROSSING,
  tool: { diameter: '4 in', airDemand: '120 cfm', ratedPressure: '90 psi' },
  air: {
    compressor: { freeAirDelivery: '185 cfm', pressure: '100 psi' },
    hoses: [{ bore: '3/4 in', length: '200 ft' }],
  },
})

describe('air', () => {
  test('says what the tool gets, what would help and how far it goes', async () => {
    const { code, stdout } = await run(['air', '-', '--want', '80 psi'], { stdin })
    expect(code).toBe(0)
    expect(stdout).toMatch(/What the tools get\n {2}at the tool +\d+ psi/)
    expect(stdout).toMatch(/Hose of 1 in in place of 3\/4 in\. +\d+ psi/)
    expect(stdout).toMatch(/How far it goes at 80 psi\n {2}longest hose +\d+ ft/)
  })

  test('a line that cannot is told so in words of its own, and far is said with how far was asked', async () => {
    const weak = { ...JSON.parse(stdin), air: { ...JSON.parse(stdin).air, tools: 2 } }
    weak.air.compressor = { freeAirDelivery: '60 cfm', pressure: '100 psi' }
    const starved = await run(['air', '-', '--want', '90 psi'], { stdin: JSON.stringify(weak) })
    expect(starved.stdout).toMatch(/longest hose +not even with none\n +most tools +not even one\n/)
    expect(starved.stdout).toMatch(/highest site +not even at sea level\n/)
    const strong = {
      ...weak,
      air: { ...weak.air, compressor: { freeAirDelivery: '1600 cfm', pressure: '100 psi' } },
    }
    strong.air.hoses = [{ bore: '2 in', length: '50 ft' }]
    const { stdout: said } = await run(['air', '-', '--want', '30 psi'], { stdin: JSON.stringify(strong) })
    expect(said).toMatch(/longest hose +more than 980 ft\n/)
    expect(said).toMatch(/highest site +more than 13000 ft\n/)
  })

  test('of two tools on one end, what each takes', async () => {
    const both = { ...JSON.parse(stdin), air: { ...JSON.parse(stdin).air, tools: 2 } }
    const { stdout: said } = await run(['air', '-', '--json'], { stdin: JSON.stringify(both) })
    const { air } = JSON.parse(said)
    expect(air.tools[0].flowM3PerS * 2).toBeCloseTo(Math.min(air.demandM3PerS, air.capacityM3PerS), 4)
  })

  test('in Spanish and SI', async () => {
    const { stdout } = await run(['air', '-', '--units', 'si', '--lang', 'es'], { stdin })
    expect(stdout).toMatch(/Qué ayudaría, lo mejor primero/)
    expect(stdout).toMatch(/bar/)
  })

  test('as one JSON document', async () => {
    const { code, stdout } = await run(['air', '-', '--json', '--by', 'pressure'], { stdin })
    expect(code).toBe(0)
    const found = JSON.parse(stdout)
    expect(found.schema).toBe('underlane/air@1')
    expect(found.reach.longestHoseM.why).toBe('found')
    const gains = found.fixes.slice(1).map((each: { gainPa: number }) => each.gainPa)
    expect(gains).toEqual([...gains].sort((a: number, b: number) => b - a))
  })

  test('a pressure it cannot read is refused by name', async () => {
    const { code, stderr } = await run(['air', '-', '--want', '80'], { stdin })
    expect(code).toBe(2)
    expect(stderr).toContain('--want')
  })
})
