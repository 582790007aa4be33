import { describe, expect, test } from 'vitest'
import { A_CROSSING, run } from './run-in-process.ts'

const stdin = JSON.stringify({
  ...A_CROSSING,
  line: { length: '100 ft' },
  ground: [{ uscs: 'CL', sptN: 5, pocketPenetrometer: '2 tsf', stones: 'few' }],
})

describe('ground', () => {
  test('says what disagrees, what matters most and where a pit helps', async () => {
    const { code, stdout } = await run(['ground', '-'], { stdin })
    expect(code).toBe(0)
    expect(stdout).toMatch(
      /pocket penetrometer +\d+ blows +planned by this\n +blow count +5 blows +says softer/,
    )
    expect(stdout).toMatch(/does not agree/)
    expect(stdout).toMatch(/What matters most\n {2}bad day now: [\d.]+ ft\/min/)
    expect(stdout).toMatch(/With a pit at /)
    expect(stdout).toMatch(/plausible, not validated/)
  })

  test('in Spanish and SI', async () => {
    const { stdout } = await run(['ground', '-', '--units', 'si', '--lang', 'es'], { stdin })
    expect(stdout).toMatch(/Lo que más importa/)
    expect(stdout).toMatch(/m\/min/)
  })

  test('as one JSON document', async () => {
    const { stdout } = await run(['ground', '-', '--json'], { stdin })
    const found = JSON.parse(stdout)
    expect(found.schema).toBe('underlane/ground@1')
    expect(found.ground[0].isDisputed).toBe(true)
    expect(found.tools).toBeNull()
  })

  test('a plan says what past bores taught it', async () => {
    const pastBores = [{ family: 'clay', length: '20 ft', hammerTime: '20 min' }]
    const { stdout } = await run(['plan', '-'], { stdin: JSON.stringify({ ...A_CROSSING, pastBores }) })
    expect(stdout).toMatch(/Learned from past bores\n {2}Past bores in clay: 1 counted, 0 of them/)
  })

  test('a list of tools that is not there is refused', async () => {
    const { code } = await run(['ground', '-', '--tools', 'nowhere.json'], { stdin })
    expect(code).toBe(2)
  })
})
